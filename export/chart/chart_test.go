package chart_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/plate"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// exact is the rounding of a few operations on lengths of a few hundred mm.
const exact = 1e-9

// Chord constants for a circle of diameter 1, as the handbooks print them.
var chordConstants = map[int]float64{
	3: 0.8660254038, 4: 0.7071067812, 5: 0.5877852523, 6: 0.5, 7: 0.4338837391, 8: 0.3826834324,
	9: 0.3420201433, 10: 0.3090169944, 11: 0.2817325568, 12: 0.2588190451, 13: 0.2393156643,
	15: 0.2079116908, 17: 0.1837495178,
}

// printed is half of the last digit of the constants.
const printed = 0.5e-10

func TestChordsAgreeWithTheHandbook(t *testing.T) {
	for n, constant := range chordConstants {
		p := plantest.Equal(n)
		d := 2 * p.Catches[0].Radius
		for _, r := range chartOf(t, p).Sheets[0].Seats {
			g := r.FromNeighbour
			assert.InDelta(t, constant*d, g.Chord, printed*d+exact, "%d stops, seat %s", n, r.Tag)
			assert.InDelta(t, constant*d+p.Seat.Diameter, g.Outside, printed*d+exact, "outside two pins of the drill's size")
			assert.InDelta(t, constant*d-p.Seat.Diameter, g.Inside, printed*d+exact, "between them")
		}
	}
}

func TestOneHandbookTableIsWrong(t *testing.T) {
	d := 2 * plan.Default().Catches[0].Radius
	g := chartOf(t, plantest.Equal(15)).Sheets[0].Seats[3].FromNeighbour
	assert.Greater(t, math.Abs(g.Chord-0.2070*d), 0.1, "a published 0.2070 for 15 holes is a misprint of 0.2079")
}

func TestDepthStop(t *testing.T) {
	for _, c := range []struct {
		why              string
		set              func(s *plan.Seat)
		depth, depthStop float64
		standard         string
		pin              float64
		balls            bool
	}{
		{"a blind hole goes deeper by the drill's point", func(*plan.Seat) {}, 6, 6 + 2.25/math.Tan(59*math.Pi/180), "metric", 4.5, false},
		{"a flat end has no point", func(s *plan.Seat) { s.DrillPoint = 180 }, 6, 6, "metric", 4.5, false},
		{"right through needs no stop", func(s *plan.Seat) { s.Depth = 0 }, 0, 0, "metric", 4.5, false},
		{"3/16 inch is a drill, though no metric one", func(s *plan.Seat) { s.Diameter = 4.7625 }, 6, 6 + 4.7625/2/math.Tan(59*math.Pi/180), "fraction", 4.7625, false},
		{"4.55 is neither", func(s *plan.Seat) { s.Diameter = 4.55 }, 6, 6 + 2.275/math.Tan(59*math.Pi/180), "", 4.55, false},
		{"a countersink stops at its own depth; balls rest in it", func(s *plan.Seat) { s.Form = plan.Countersunk }, 2.25, 2.25, "metric", 6, true},
		{"a flat-nosed countersink stops short of its tip", func(s *plan.Seat) { s.Form, s.Depth = plan.Countersunk, 1.5 }, 1.5, 1.5, "metric", 6, true},
		{"a pin fits the relief of a countersink", func(s *plan.Seat) { s.Form, s.ReliefDiameter = plan.Countersunk, 2.5 }, 2.25, 2.25, "metric", 2.5, false},
	} {
		p := plantest.Equal(9)
		c.set(&p.Seat)
		s := chartOf(t, p).Sheets[0]
		assert.InDelta(t, c.depth, s.Drill.Depth, exact, c.why)
		assert.InDelta(t, c.depthStop, s.Drill.Stop, exact, c.why)
		assert.Equal(t, c.standard, s.Drill.Standard(), c.why)
		assert.InDelta(t, c.pin, s.Pins.Diameter, exact, c.why)
		assert.Equal(t, c.balls, s.Pins.Balls, c.why)
		assert.InDelta(t, 105+(c.pin+8)/2, s.Pins.OverPivot(105), exact, "half a pin and half the pivot's pin beyond the ring radius")
	}
}

// TestPlacesAreTheReports holds the chart to the report, and the report's view
// to a mirror written here as a matrix, for every arrangement.
func TestPlacesAreTheReports(t *testing.T) {
	for _, a := range plantest.Arrangements {
		p := mitres(a)
		r := detent.Solve(p)
		c := chartOf(t, p)
		require.Len(t, c.Sheets, 2)
		seats, catches := c.Sheets[0], c.Sheets[1]
		assert.Equal(t, a.CatchIn, catches.Part)
		assert.NotEqual(t, a.CatchIn, seats.Part)
		mirror := 1.0
		if a.CatchIn == plan.PartBase { // the turntable lies underside up
			mirror = -1
			assert.Equal(t, plate.Underside, seats.Face)
		}
		for i, s := range r.Plate.Seats {
			row := seats.Seats[i]
			drill := plate.AtDrill(r.Plate.SeatsPart, s.Centre)
			assert.InDelta(t, drill.X, row.At.X, exact, "%v %s", a, s.Tag)
			assert.InDelta(t, drill.Y, row.At.Y, exact, "%v %s", a, s.Tag)
			assert.InDelta(t, mirror*s.Centre.X, row.At.X, exact)
			assert.InDelta(t, s.Centre.Y, row.At.Y, exact)
			back := geom.Polar(row.Radius, row.Azimuth)
			assert.InDelta(t, 0, back.Distance(row.At), exact, "radius and azimuth lead to X and Y")
			assert.Greater(t, row.Azimuth, geom.Angle(-180))
			assert.LessOrEqual(t, row.Azimuth, geom.Angle(180))
		}
		for i, k := range r.Plate.Pockets {
			assert.InDelta(t, -mirror*k.Centre.X, catches.Pockets[i].At.X, exact, "the catches' part shows its other face")
		}
		clockwise := a.PositiveTurn == plan.Clockwise
		assert.Equal(t, clockwise == (mirror > 0), seats.Turn == plan.Clockwise, "a turn seen from below goes the other way: %v", a)
		assert.Equal(t, clockwise == (mirror < 0), catches.Turn == plan.Clockwise)
	}
}

func TestNeighbourIsTheOneBeforeClockwise(t *testing.T) {
	for _, a := range plantest.Arrangements {
		rows := chartOf(t, mitres(a)).Sheets[0].Seats
		for i, r := range rows {
			best, at := 361.0, -1
			for j, o := range rows { // brute force
				back := float64((r.Azimuth - o.Azimuth).Turn())
				if i != j && o.Radius == r.Radius && back < best {
					best, at = back, j
				}
			}
			assert.Equal(t, at, r.FromNeighbour.From, "%v %s", a, r.Tag)
			if at >= 0 {
				assert.Equal(t, rows[at].Tag, r.FromNeighbour.Tag)
				assert.InDelta(t, 2*r.Radius*math.Sin(best/2*math.Pi/180), r.FromNeighbour.Chord, exact)
			}
		}
	}
}

func TestPinsThatRunIntoEachOther(t *testing.T) {
	for _, c := range []struct {
		apart float64
		fits  bool
		why   string
	}{
		{4.6, true, "clear"}, {4.4, false, "the pins overlap"},
	} {
		p := plantest.Equal(1)
		p.Stops = append(p.Stops, plan.Stop{Angle: 2 * math.Asin(c.apart/2/105) * 180 / math.Pi})
		assert.Equal(t, c.fits, chartOf(t, p).Sheets[0].Seats[1].FromZero.Fits, c.why)
	}
}

func TestTheZeroSeatIsNotMeasuredFromItself(t *testing.T) {
	s := chartOf(t, mitres(plantest.Arrangements[3])).Sheets[0]
	require.Equal(t, geom.Angle(0), s.Seats[s.Datum].Stops[0])
	assert.Equal(t, -1, s.Seats[s.Datum].FromZero.From)
	assert.Equal(t, -1, chartOf(t, plantest.Equal(1)).Sheets[0].Seats[0].FromNeighbour.From, "alone on its ring")
	assert.Equal(t, -1, chartOf(t, plantest.Equal(0)).Sheets[0].Datum, "no seat")
}

func TestASeatListsEveryStopItServes(t *testing.T) {
	p := plantest.Equal(0)
	p.Catches = []plan.Placement{{Name: "A", Radius: 105}, {Name: "B", Azimuth: 120, Radius: 105}}
	p.Stops = []plan.Stop{{Angle: 0, Catches: []string{"A", "B"}}, {Angle: 120, Catches: []string{"A", "B"}}}
	var shared []string
	for _, r := range chartOf(t, p).Sheets[0].Seats {
		if len(r.Stops) > 1 {
			shared = append(shared, fmt.Sprint(r.Stops))
		}
	}
	assert.Equal(t, []string{"[0 120]"}, shared, "A's seat for 120 is B's for 0")
}

func TestOnly(t *testing.T) {
	c := chartOf(t, mitres(plantest.Arrangements[0]))
	assert.Len(t, c.Only(plan.PartBase).Sheets, 1)
	assert.Len(t, c.Only(plan.PartTurntable).Sheets, 1)
	assert.Empty(t, c.Only(plan.PartCollar).Sheets, "a collar has neither seats nor catches")
	assert.Empty(t, chart.Pages(c.Only(plan.PartCollar), drawing.A4))
}
