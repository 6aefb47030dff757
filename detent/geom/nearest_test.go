package geom

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The nearest point of an arc lies on it, and as far away as the arc is.
func TestNearestOfAnArc(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := Arc{
			Radius: rapid.Float64Range(0.1, 1000).Draw(t, "radius"),
			From:   Angle(rapid.Float64Range(-720, 720).Draw(t, "from")),
			Sweep:  Angle(rapid.Float64Range(0, 400).Draw(t, "sweep")),
		}
		p := Polar(rapid.Float64Range(0, 1000).Draw(t, "distance"), Angle(rapid.Float64Range(-180, 180).Draw(t, "azimuth")))
		near := a.Nearest(p)
		const slack = 1e-8 // mm: rounding at a metre
		require.InDelta(t, a.DistanceToPoint(p), p.Distance(near), slack)
		require.InDelta(t, 0, a.DistanceToPoint(near), slack)
	})
}
