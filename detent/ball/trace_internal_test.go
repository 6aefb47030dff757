package ball

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
)

// meeting is by how much two neighbouring pieces may differ in height where
// they meet, mm for each unit of slope: rounding of the crossing.
const meeting = 1e-12

func TestPiecesMeetWithoutAStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		part := func(name string, lo, hi float64) float64 {
			return rapid.Float64Range(lo, hi).Draw(t, name) * float64(rapid.IntRange(0, 1).Draw(t, "with "+name))
		}
		s := Seat{
			Form:        Form(rapid.IntRange(0, 1).Draw(t, "form")),
			Diameter:    rapid.Float64Range(0.5, 7.5).Draw(t, "diameter"),
			Chamfer:     part("chamfer", 0.02, 2),
			Depth:       part("depth", 0.02, 1.5),
			Relief:      part("relief", 0.1, 7),
			DrillPoint:  geom.Angle(rapid.SampledFrom([]float64{90, 118, 135, 180}).Draw(t, "point")),
			Countersink: geom.Angle(rapid.SampledFrom([]float64{60, 82, 90, 120}).Draw(t, "countersink")),
		}
		c, err := NewContour(6, s)
		require.NoError(t, err)
		require.Zero(t, c.spans[0].from)
		if c.FallsIn() {
			return
		}
		for i := range c.spans {
			end := c.end(i)
			here := c.inSpan(i, end)
			next := c.touch(end)
			steep := max(here.sin/here.cos, next.sin/next.cos)
			require.LessOrEqual(t, math.Abs(here.z-next.z), meeting*(1+steep), "%v to %v at %g", here.rest, next.rest, end)
			require.GreaterOrEqual(t, next.sin-here.sin, -meeting*(1+steep), "the angle only jumps up, or there would be a corner to fall off")
		}
	})
}
