package drawing_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

// TestRepairIsDrawnAsAtTheDrill: the new seat stands beside the old one on the
// side that the holes of the chart say, in both views of the part.
func TestRepairIsDrawnAsAtTheDrill(t *testing.T) {
	for _, in := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		p := plan.NewPlan()
		p.Arrangement.CatchIn = in
		p.Stops = []plan.Stop{{Angle: -30}, {Angle: 0}, {Angle: 40}}
		r := detent.Solve(p)
		for _, move := range []float64{0.9, -0.9} {
			x := r.RepairsOf(1, move)[0]
			holes := x.Holes(r.Plate)
			d := drawing.Repair(r.Plate, x)
			var centres []geom.Point
			for _, e := range d.Entities {
				if c, ok := e.Shape.(drawing.Circle); ok && e.Layer == drawing.Seats {
					centres = append(centres, c.Centre)
				}
			}
			require.Len(t, centres, 1)
			assert.InDelta(t, 0, centres[0].Distance(holes[1].At.Sub(holes[0].At)), 1e-9)
			for _, e := range d.Entities {
				if a, ok := e.Shape.(drawing.Polygon); ok { // the arrow's tip
					tip := a.Points[0]
					assert.Positive(t, tip.Dot(centres[0]), "it points the way the seat moves")
				}
			}
		}
	}
}

func TestRepairOfThePatternDrawsThePart(t *testing.T) {
	p := plan.NewPlan()
	p.Travel = plan.Span{From: -50, To: 50}
	p.Stops = []plan.Stop{{Angle: -30}, {Angle: 0}, {Angle: 40}}
	r := detent.Solve(p)
	d := drawing.Repair(r.Plate, r.Clean())
	seats, holes := 0, 0
	for _, e := range d.Entities {
		switch e.Layer {
		case drawing.Seats:
			seats++
		case drawing.Holes:
			if _, ok := e.Shape.(drawing.Circle); ok {
				holes++
			}
		}
	}
	assert.Equal(t, 3, seats, "the new ones")
	assert.Equal(t, 3, holes, "the old ones stay")
}
