package dxf

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

// Every way to make room for mitres that do not fit on one ring, as another
// program reads its file: all the seats, each a hole of its own, with at least
// the web that the maker wants between any two.
func TestRoomReadBack(t *testing.T) {
	p := plan.NewPlan()
	p.Turntable.Diameter, p.Catches[0].Radius = 240, 100
	p.Travel = plan.Span{From: -60, To: 60}
	p.Stops = []plan.Stop{{Angle: 0}}
	for _, a := range []float64{15, 22.5, 30, 31.6, 45} {
		p.Stops = append(p.Stops, plan.Stop{Angle: a, BothSides: true})
	}
	rooms, err := detent.MakeRoom(t.Context(), p)
	require.NoError(t, err)
	fit := 0
	for _, r := range rooms {
		if !r.Fits {
			continue
		}
		fit++
		d := drawing.Part(detent.Solve(r.Plan).Plate, plan.PartBase, drawing.AsAtDrill)
		var holes [][2]float64
		for _, e := range readBack(t, d).Entities {
			if e.Layer == string(drawing.Seats) && e.Kind == "CIRCLE" {
				require.InDelta(t, p.Seat.Diameter/2, e.Radius, sameMM)
				holes = append(holes, e.Points[0])
			}
		}
		require.Len(t, holes, 11, r.Kind)
		least := math.Inf(1)
		for i, a := range holes {
			for _, b := range holes[:i] {
				least = math.Min(least, math.Hypot(a[0]-b[0], a[1]-b[1])-p.Seat.Mouth())
			}
		}
		assert.GreaterOrEqual(t, least, p.Rules.Web-sameMM, r.Kind)
		assert.InDelta(t, r.Web, least, 2*sameMM, r.Kind)
	}
	assert.GreaterOrEqual(t, fit, 2)
}
