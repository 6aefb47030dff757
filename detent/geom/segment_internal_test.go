package geom

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// Where a segment crosses a circle is on both, and there are as many crossings
// as changes between inside and outside along it.
func TestCrossingsLieOnCircleAndSegment(t *testing.T) {
	const (
		near   = 1e-9 // mm at 100 mm: rounding
		within = 1e-6 // mm: too near to touching to be told apart by its ends
	)
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(-100, 100)
		s := Segment{Point{at.Draw(t, "ax"), at.Draw(t, "ay")}, Point{at.Draw(t, "bx"), at.Draw(t, "by")}}
		radius := rapid.Float64Range(0.001, 150).Draw(t, "radius")
		found := s.crossCircle(radius)
		for _, p := range found {
			require.InDelta(t, radius, p.Norm(), near)
			require.InDelta(t, 0, s.DistanceToPoint(p), near)
		}
		a, b, least := s.A.Norm()-radius, s.B.Norm()-radius, s.Nearest(Point{}).Norm()-radius
		switch {
		case min(max(a, -a), max(b, -b), max(least, -least)) < within || s.A.Distance(s.B) < within:
		case (a < 0) != (b < 0):
			require.Len(t, found, 1, "from inside to outside")
		case a > 0 && least < 0:
			require.Len(t, found, 2, "in and out again")
		default:
			require.Empty(t, found)
		}
	})
}
