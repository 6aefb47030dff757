package geom_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
)

func TestSegmentDistanceToSegment(t *testing.T) {
	at := func(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }
	for _, c := range []struct {
		why  string
		a, b geom.Segment
		want float64
	}{
		{"crossing", geom.Segment{A: at(-1, 0), B: at(1, 0)}, geom.Segment{A: at(0, -1), B: at(0, 1)}, 0},
		{"touching in a T", geom.Segment{A: at(-1, 0), B: at(1, 0)}, geom.Segment{A: at(0, 0), B: at(0, 1)}, 0},
		{"side by side", geom.Segment{A: at(0, 0), B: at(10, 0)}, geom.Segment{A: at(5, 3), B: at(20, 3)}, 3},
		{"in line", geom.Segment{A: at(0, 0), B: at(10, 0)}, geom.Segment{A: at(14, 0), B: at(20, 0)}, 4},
		{"lines that would cross farther on", geom.Segment{A: at(0, 0), B: at(10, 0)}, geom.Segment{A: at(13, 4), B: at(13, 9)}, 5},
		{"two points", geom.Segment{A: at(0, 0), B: at(0, 0)}, geom.Segment{A: at(3, 4), B: at(3, 4)}, 5},
	} {
		assert.InDelta(t, c.want, c.a.DistanceToSegment(c.b), 1e-12, c.why)
		assert.InDelta(t, c.want, c.b.DistanceToSegment(c.a), 1e-12, c.why)
	}
}

// Points stepped along both segments are never nearer than the distance, and
// some pair is within two steps of it.
func TestSegmentDistanceAgainstSteps(t *testing.T) {
	const steps = 200
	rapid.Check(t, func(t *rapid.T) {
		point := func() geom.Point {
			return geom.Point{X: rapid.Float64Range(-100, 100).Draw(t, "x"), Y: rapid.Float64Range(-100, 100).Draw(t, "y")}
		}
		a, b := geom.Segment{A: point(), B: point()}, geom.Segment{A: point(), B: point()}
		along := func(s geom.Segment, k int) geom.Point { return s.A.Add(s.B.Sub(s.A).Scale(float64(k) / steps)) }
		least := math.Inf(1)
		for i := range steps + 1 {
			for k := range steps + 1 {
				least = min(least, along(a, i).Distance(along(b, k)))
			}
		}
		got := a.DistanceToSegment(b)
		assert.LessOrEqual(t, got, least+1e-9)
		assert.GreaterOrEqual(t, got, least-(a.A.Distance(a.B)+b.A.Distance(b.B))/steps)
	})
}
