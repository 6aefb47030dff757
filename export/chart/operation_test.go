package chart_test

import (
	"encoding/csv"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/plate"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// fitted is a plan with a collar and every fitting.
func fitted() plan.Plan {
	p := plantest.Equal(9)
	p.Travel = plan.Span{From: 0, To: 320}
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	p.Seat.ReliefDiameter, p.Seat.Chamfer = 2.5, 0.25
	m := &p.Making
	m.KnockOut, m.Screws = 4, plan.ScrewHoles{Pilot: 2.8, PilotDepth: 12, Head: 9, HeadDepth: 3}
	m.Dust.Width, m.Registration.Diameter, m.Fence.Width, m.WearRing.Width = 6, 6, 6.6, 24
	m.EndStops.Diameter, m.Clamp.Diameter, m.Clamp.Radius = 6, 8, 30
	m.Carrier.Width, m.Carrier.PadThickness = 24, 2
	return p
}

func operations(t *testing.T, p plan.Plan) []chart.Operation {
	t.Helper()
	require.NoError(t, plan.Validate(p))
	return chart.Operations(plate.New(p), words.English())
}

// kinds lists the operations on one part in their order.
func kinds(all []chart.Operation, part plan.Part) []chart.Kind {
	var out []chart.Kind
	for _, o := range all {
		if o.Part == part {
			out = append(out, o.Kind)
		}
	}
	return out
}

func TestOperationsInOrder(t *testing.T) {
	all := operations(t, fitted())
	for part, want := range map[plan.Part][]chart.Kind{
		plan.PartBase: {
			chart.Mark, chart.Coupon, chart.Pivot, chart.Recess, chart.SpotAll, chart.PilotHoles, chart.Final, chart.Chamfer,
			chart.GaugeSeats, chart.Drilling, chart.Drilling, chart.Slots, chart.Slots, chart.Slots, chart.Slots, chart.CutOut,
		},
		plan.PartTurntable: {
			chart.Mark, chart.Coupon, chart.Pivot, chart.Counterbore, chart.Body, chart.KnockOut, chart.SpotAll,
			chart.Drilling, chart.Drilling, chart.Drilling, chart.CutOut,
		},
		plan.PartCollar:  {chart.Mark, chart.SpotAll, chart.Drilling, chart.Drilling, chart.Recess, chart.CutOut},
		plan.PartCarrier: {chart.Mark, chart.Coupon, chart.Body, chart.SpotAll, chart.Drilling, chart.CutOut},
	} {
		assert.Equal(t, want, kinds(all, part), part)
	}
	last := all[len(all)-1]
	assert.Equal(t, chart.CutOut, last.Kind, "the outline comes last")

	for _, o := range operations(t, plan.Default()) {
		assert.NotContains(t, []chart.Kind{chart.Final, chart.SpotAll, chart.GaugeSeats}, o.Kind, "a plan without stops has no seat to drill")
	}
}

// The settings are the seat's and the pocket's: the drill's point is what the
// depth stop has more than the depth, (D/2)·cot(118°/2) by the handbook.
func TestOperationsHaveTheirSettings(t *testing.T) {
	p := fitted()
	found := 0
	for _, o := range operations(t, p) {
		if o.Part != plan.PartBase && o.Part != plan.PartTurntable {
			continue
		}
		switch o.Kind {
		case chart.Final:
			found++
			assert.Equal(t, 4.5, o.Tool.Diameter)
			assert.InDelta(t, 6+2.25/math.Tan(59*math.Pi/180), o.Tool.Stop, 1e-9)
			assert.Equal(t, 3000.0, o.Speed.RPM)
		case chart.PilotHoles:
			found++
			assert.Equal(t, [2]float64{2.5, 0}, [2]float64{o.Tool.Diameter, o.Tool.Stop}, "right through")
		case chart.Counterbore:
			found++
			assert.Equal(t, [3]float64{9.5, 1.5, 1.5}, [3]float64{o.Tool.Diameter, o.Tool.Depth, o.Tool.Stop}, "a flat floor: the stop is the depth")
		case chart.Body:
			found++
			assert.Equal(t, [2]float64{8.1, 13.5}, [2]float64{o.Tool.Diameter, o.Tool.Depth})
		}
		for _, h := range o.Holes {
			assert.NotEmpty(t, h.Tag)
		}
		assert.NotContains(t, o.Say(words.English()), "[")
		assert.NotContains(t, o.Say(words.English()), "{{")
	}
	assert.Equal(t, 4, found)
}

// Every seat is drilled where the report has it, and gauged from the zero seat
// by the chord and the pin.
func TestOperationsAreAtTheReportsPlaces(t *testing.T) {
	const same = 1e-6 // mm: what a sheet promises
	p := fitted()
	pl := plate.New(p)
	for _, o := range operations(t, p) {
		if o.Part != pl.SeatsPart || (o.Kind != chart.Final && o.Kind != chart.GaugeSeats) {
			continue
		}
		require.Len(t, o.Holes, len(pl.Seats))
		zero := plate.AtDrill(pl.SeatsPart, pl.Seats[pl.Datum()].Centre)
		for i, h := range o.Holes {
			at := plate.AtDrill(pl.SeatsPart, pl.Seats[i].Centre)
			assert.InDelta(t, 0, at.Distance(h.At), same)
			if o.Kind == chart.GaugeSeats && i != pl.Datum() {
				assert.InDelta(t, at.Distance(zero)+4.5, h.Outside, same, "pins as wide as the seats")
			}
		}
	}
}

// A tick stays with its hole while stops come and go beside it, and is left over
// where the hole has moved or gone.
func TestTicksBelongToPlaces(t *testing.T) {
	p := plantest.Equal(9)
	tick := ""
	for _, o := range operations(t, p) {
		if o.Kind == chart.Final {
			tick = o.Tick(o.Holes[3])
		}
	}
	assert.Equal(t, "final base 90.93,-52.50", tick)

	more := p.Clone()
	more.Stops = append(more.Stops, plan.Stop{Angle: 5})
	assert.Empty(t, chart.Stray([]string{tick}, operations(t, more)), "other numbers, the same hole")
	moved := p.Clone()
	moved.Catches[0].Radius = 104
	assert.Equal(t, []string{tick}, chart.Stray([]string{tick}, operations(t, moved)), "another hole")
	gone := p.Clone()
	gone.Stops = slices.Delete(gone.Stops, 3, 4)
	assert.Equal(t, []string{tick}, chart.Stray([]string{tick}, operations(t, gone)))

	seen := map[string]bool{}
	for _, o := range operations(t, fitted()) {
		if o.Kind == chart.Drilling || o.Kind == chart.Slots || o.Kind == chart.Recess {
			continue // these come with several tools to a part, each for holes of its own
		}
		for _, name := range o.Ticks() {
			assert.False(t, seen[name], "%s names one thing", name)
			seen[name] = true
		}
	}
}

func TestToggled(t *testing.T) {
	log := []string{"a"}
	assert.Equal(t, []string{"a", "b"}, chart.Toggled(log, []string{"b"}))
	assert.Equal(t, []string{"a", "b", "c"}, chart.Toggled(log, []string{"a", "b", "c"}), "what is missing is added")
	assert.Empty(t, chart.Toggled(log, []string{"a"}), "all set: all taken off")
	assert.Equal(t, []string{"a"}, log, "the log given is left alone")
}

func TestTheBillListsWhatIsNeeded(t *testing.T) {
	p := fitted()
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Radius: 105, Azimuth: 350})
	b := chart.BillOf(plate.New(p), words.English())
	line := func(pieces []chart.Piece, name string) chart.Piece {
		i := slices.IndexFunc(pieces, func(x chart.Piece) bool { return x.Name == name })
		require.GreaterOrEqual(t, i, 0, name)
		return pieces[i]
	}
	assert.Equal(t, chart.Piece{Count: 1, Name: "Turntable", Size: "280 mm × 308 mm × 18 mm", Note: "Birch plywood"},
		line(b.Parts, "Turntable"), "10 mm all round, and the pins for turning over stand in the stock")
	assert.Equal(t, 2, line(b.Parts, "Catch carrier").Count, "one a catch")
	assert.Equal(t, 2, line(b.Hardware, "Ball catch").Count)
	assert.Equal(t, 8, line(b.Hardware, "Collar screw").Count)
	assert.Contains(t, line(b.Hardware, "Collar screw").Note, "#9", "a 4.5 mm hole clears a #9 wood screw, 0.177 inch, not a #10 of 4.83 mm")
	p.Making.Screws.Pilot = 0
	assert.Contains(t, line(chart.BillOf(plate.New(p), words.English()).Hardware, "Collar screw").Note, "M4", "ISO 273: 4.5 mm is M4, medium fit")
	p.Making.Screws.Size = "M4 × 30"
	assert.Equal(t, "M4 × 30", line(chart.BillOf(plate.New(p), words.English()).Hardware, "Collar screw").Size, "the maker's own words")

	sizes := map[string]int{}
	for _, d := range b.Tools {
		sizes[d.Size]++
	}
	for size, n := range sizes {
		assert.Equal(t, 1, n, "%s is listed once", size)
	}
	assert.Contains(t, sizes, "⌀2.8 mm, point 118°")
}

// A program that reads spreadsheets finds the parts list and every operation.
func TestCSVHoldsTheWork(t *testing.T) {
	p := fitted()
	p.Ticks = []string{"coupon base"}
	var out strings.Builder
	c := chartOf(t, p)
	require.NoError(t, chart.WriteCSV(&out, c))
	r := csv.NewReader(strings.NewReader(out.String()))
	r.FieldsPerRecord = -1
	rows, err := r.ReadAll()
	require.NoError(t, err)
	want, got, done := 0, 0, 0
	for _, o := range c.Work {
		want += len(o.Ticks())
	}
	at := slices.IndexFunc(rows, func(row []string) bool { return row[0] == "Operations in order" })
	require.Positive(t, at)
	for _, row := range rows[at+2:] {
		require.Len(t, row, len(rows[at+1]))
		got++
		if row[10] == "x" {
			done++
			assert.Equal(t, "Try in scrap", row[1])
		}
	}
	assert.Equal(t, want, got)
	assert.Equal(t, 1, done)
	assert.GreaterOrEqual(t, slices.IndexFunc(rows, func(row []string) bool { return row[0] == "Parts and cutting list" }), 0)
}

// What is ticked is crossed on the sheet.
func TestTicksAreCrossedOnTheSheet(t *testing.T) {
	lines := func(ticks ...string) int {
		p := fitted()
		p.Ticks = ticks
		n := 0
		for _, page := range chart.Pages(chartOf(t, p), drawing.A4) {
			n += len(page.Entities)
		}
		return n
	}
	assert.Equal(t, lines()+2, lines("coupon base"))
	assert.Equal(t, lines(), lines("coupon moon"), "a tick that belongs to nothing marks nothing")
}

func BenchmarkWork720(b *testing.B) {
	pl := plate.New(plantest.Equal(720))
	c := words.English()
	for b.Loop() {
		chart.Operations(pl, c)
		chart.BillOf(pl, c)
	}
}

func BenchmarkPages720(b *testing.B) {
	c := chartOf(b, plantest.Equal(720))
	for b.Loop() {
		chart.Pages(c, drawing.A4)
	}
}

// A countersink that widens a rim hangs with its tip in the hole: set from its
// tip on the face, it goes down by half the mouth, not by the width of the
// chamfer, which would not reach the rim.
func TestChamferIsSetFromTheTip(t *testing.T) {
	p := fitted()
	tried := 0
	for _, o := range operations(t, p) {
		if o.Kind != chart.Chamfer {
			continue
		}
		tried++
		assert.Equal(t, p.Seat.Diameter+0.5, o.Tool.Diameter)
		assert.InDelta(t, (p.Seat.Diameter+0.5)/2, o.Tool.Stop, 1e-12, "a cone of 90 degrees is half as deep as wide")
		assert.Greater(t, o.Tool.Stop, p.Seat.Diameter/2, "the cone is wider than the hole where it meets the face")
		assert.Equal(t, 0.25, o.Tool.Depth)
	}
	assert.Equal(t, 2, tried, "the base and the wear ring")
}
