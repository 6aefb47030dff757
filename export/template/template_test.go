package template_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/template"
	"stopwright/export/tile"
)

// What the rendered pages must come to, mm.
const (
	centreTrue = 0.1
	barTrue    = 0.05
	joinTrue   = 0.2
)

func info() drawing.Info { return drawing.Info{Words: words.English(), Date: "2026-11-20"} }

// plate300 is a plan whose seats' part is a 300 mm disc, seen from its underside.
func plate300(t testing.TB) *plate.Plate {
	t.Helper()
	p := plan.Default()
	p.Arrangement.CatchIn = plan.PartBase
	p.Turntable.Diameter = 300
	p.Catches[0].Radius = 105 // no line runs through a cross that is looked for
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 22.5, BothSides: true}, {Angle: 36}, {Angle: 60, BothSides: true}, {Angle: 100}, {Angle: 150, BothSides: true}}
	p.Travel = plan.Span{From: -180, To: 180}
	require.NoError(t, plan.Validate(p))
	return plate.New(p)
}

func pagesOf(t testing.TB, pl *plate.Plate, c tile.Correction) []drawing.Page {
	t.Helper()
	pages, err := tile.Pages(template.Sheet(pl, pl.SeatsPart, info()), drawing.A4, c, words.English())
	require.NoError(t, err)
	return pages
}

// circles returns the middles of the circles of a layer and radius on a page,
// where they are meant to be printed.
func circles(p drawing.Page, l drawing.Layer, radius float64) []geom.Point {
	var out []geom.Point
	for _, e := range p.Entities {
		if c, ok := e.Shape.(drawing.Circle); ok && e.Layer == l && c.Radius == radius {
			out = append(out, geom.Point{X: c.Centre.X * p.Stretch.X, Y: c.Centre.Y * p.Stretch.Y})
		}
	}
	return out
}

// off is where looking for a mark begins, beside it, so that it has to be found.
var off = geom.Point{X: 0.3, Y: -0.2}

// TestJoinedSheetsAreTheReport paints the four sheets of a 300 mm plate, joins
// them by the crosses that are found in the paint, and compares the seats found
// there with where the report has them.
func TestJoinedSheetsAreTheReport(t *testing.T) {
	pl := plate300(t)
	pages := pagesOf(t, pl, tile.Correction{})
	require.Len(t, pages, 5, "a map and four sheets")
	paint := painted(t, pages)[1:]
	pages = pages[1:]

	const ring = 2.0
	crosses := make([][]geom.Point, 4)
	for i, p := range pages {
		for _, at := range circles(p, drawing.Lettering, ring) {
			crosses[i] = append(crosses[i], paint[i].centre(at.Add(off), ring))
		}
		require.Len(t, crosses[i], 4, "two crosses to each of two neighbours")
	}
	// A sheet's crosses are drawn left, right, below, above. Sheet 1 is the upper
	// left one: its first two are shared with sheet 2, on its right, the others
	// with sheet 3, below; sheet 2 shares its last two with sheet 4.
	move := make([]geom.Point, 4)
	join := func(a, b int, ofA, ofB []geom.Point) {
		move[b] = move[a].Add(ofA[0]).Sub(ofB[0])
		gap := move[a].Add(ofA[1]).Distance(move[b].Add(ofB[1]))
		assert.Less(t, gap, joinTrue, "the second cross of sheets %d and %d", a+1, b+1)
	}
	join(0, 1, crosses[0][:2], crosses[1][:2])
	join(0, 2, crosses[0][2:], crosses[2][2:])
	join(1, 3, crosses[1][2:], crosses[3][2:])
	gap := move[2].Add(crosses[2][0]).Distance(move[3].Add(crosses[3][0]))
	assert.Less(t, gap, joinTrue, "sheets 3 and 4 fit once all others are joined")

	radius := pl.Plan.Seat.Diameter / 2
	pivot := geom.Point{}
	var found []geom.Point
	for i, p := range pages {
		for _, at := range circles(p, drawing.Seats, radius) {
			found = append(found, paint[i].centre(at.Add(off), radius).Add(move[i]))
		}
		for _, at := range circles(p, drawing.Pivot, pl.Plan.Turntable.PivotBore/2) {
			pivot = paint[i].centre(at.Add(off), pl.Plan.Turntable.PivotBore/2).Add(move[i])
		}
	}
	require.GreaterOrEqual(t, len(found), len(pl.Seats))
	seen := map[string]bool{}
	for _, at := range found {
		at = at.Sub(pivot)
		for _, s := range pl.Seats {
			want := plate.AtDrill(pl.SeatsPart, s.Centre)
			if at.Distance(want) < 2 {
				seen[s.Tag] = true
				assert.Less(t, at.Distance(want), centreTrue, "%s", s.Tag)
			}
		}
	}
	assert.Len(t, seen, len(pl.Seats), "every seat is on some sheet")
}

func TestBarsAreTrue(t *testing.T) {
	pl := plate300(t)
	for _, c := range []tile.Correction{{}, {X: 149, Y: 202}} {
		pages := pagesOf(t, pl, c)[1:2]
		s, err := c.Stretch()
		require.NoError(t, err)
		r := painted(t, pages)[0]
		// Only the ends of a bar are ticked this far off it.
		const edge, side, foot, pad, reach = 10.0, 9.0, 24.0, 3.0, 2.2
		y := int((edge + foot - pad - reach) * s.Y * perMM)
		x := int((edge + side - pad - reach) * s.X * perMM)
		assert.InDelta(t, tile.BarX*s.X, r.span(func(i int) float64 { return r.ink(i, y) }, int((edge+side+tile.BarX+2)*perMM*s.X)), barTrue)
		low := int((edge + foot) * s.Y * perMM)
		assert.InDelta(t, tile.BarY*s.Y, r.span(func(i int) float64 { return r.ink(x, low+i) }, int(210*s.Y*perMM)), barTrue)
	}
}

// TestMiddlesAreOpen: nothing is printed where the punch is set.
func TestMiddlesAreOpen(t *testing.T) {
	pl := plate300(t)
	pages := pagesOf(t, pl, tile.Correction{})[1:2]
	r := painted(t, pages)[0]
	seats := circles(pages[0], drawing.Seats, pl.Plan.Seat.Diameter/2)
	require.NotEmpty(t, seats)
	for _, at := range seats {
		var dark float64
		for x := -10; x <= 10; x++ {
			for y := -10; y <= 10; y++ {
				dark += r.ink(int(at.X*perMM)+x, int(at.Y*perMM)+y)
			}
		}
		assert.Zero(t, dark, "0.4 mm round a centre")
	}
}

func TestEveryCentreHasItsCross(t *testing.T) {
	p := plan.Default()
	p.Collar = &plan.Collar{Clearance: 0.5, OutsideDiameter: 310, Thickness: 18, Screws: plan.Screws{Count: 8, Circle: 285, Diameter: 4.5}}
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 36, BothSides: true}}
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.Hole, X: 60, Y: -40, Diameter: 5},
		{Part: plan.PartBase, Kind: plan.Slot, X: -60, Y: -30, X2: -60, Y2: -70, Width: 8},
	}
	pl := plate.New(p)
	for part, want := range map[plan.Part]int{
		plan.PartBase:      1 + 3 + 1 + 8, // pivot, seats, hole, the collar's screws
		plan.PartTurntable: 1 + 1,         // pivot, pocket
		plan.PartCollar:    8,
	} {
		n := 0
		for _, e := range template.Drawing(pl, part, words.English()).Entities {
			if e.Layer == drawing.Centres {
				n++
			}
		}
		assert.Equal(t, 4*want, n, string(part))
	}
}

func TestSheetsNameTheFace(t *testing.T) {
	for part, want := range map[plan.Part]string{plan.PartBase: "Base, top face up", plan.PartTurntable: "Turntable, underside up"} {
		assert.Equal(t, want, template.Sheet(plate300(t), part, info()).What)
	}
}

func TestPagesOfEveryPart(t *testing.T) {
	pl := plate300(t)
	pages, err := template.Pages(pl, info(), drawing.A3, tile.Correction{})
	require.NoError(t, err)
	maps := 0
	for _, p := range pages {
		for _, e := range p.Entities {
			if s, ok := e.Shape.(drawing.Text); ok && strings.HasPrefix(s.Text, "Map of the sheets") {
				maps++
			}
		}
	}
	assert.Equal(t, 2, maps, "base and turntable begin with a map each")
	_, err = template.Pages(pl, info(), drawing.A4, tile.Correction{X: 140})
	require.ErrorContains(t, err, "140 mm")
}

// TestTagsKeepApart: where seats crowd, tags are left out rather than written
// over each other.
func TestTagsKeepApart(t *testing.T) {
	pl := plate.New(equal(720))
	var boxes []drawing.Bounds
	tags := 0
	for _, e := range template.Drawing(pl, pl.SeatsPart, words.English()).Entities {
		if s, ok := e.Shape.(drawing.Text); ok {
			var one drawing.Drawing
			one.Add(e.Layer, s)
			b := one.Bounds()
			for _, o := range boxes {
				apart := b.Min.X > o.Max.X || o.Min.X > b.Max.X || b.Min.Y > o.Max.Y || o.Min.Y > b.Max.Y
				require.True(t, apart, "%s", s.Text)
			}
			boxes = append(boxes, b)
			tags++
		}
	}
	assert.Greater(t, tags, 100, "but many have room")
}

// equal is a plan of n equal stops on a plate that has room for them.
func equal(n int) plan.Plan {
	p := plan.Default()
	p.Title = fmt.Sprintf("%d equal stops", n)
	p.Turntable.Diameter, p.Base.Width, p.Base.Depth, p.Catches[0].Radius = 2000, 2200, 2200, 900
	for i := range n {
		p.Stops = append(p.Stops, plan.Stop{Angle: 360 * float64(i) / float64(n)})
	}
	return p
}

func BenchmarkTemplate720Seats(b *testing.B) {
	pl := plate.New(equal(720))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := template.Pages(pl, info(), drawing.A3, tile.Correction{X: 149}); err != nil {
			b.Fatal(err)
		}
	}
}
