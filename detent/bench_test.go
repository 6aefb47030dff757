package detent

import (
	"fmt"
	"math"
	"testing"

	"stopwright/detent/plan"
)

// crowd is a plate with n seats at equal steps of a full turn on one ring of
// the given radius, in a base with room for it.
func crowd(n int, radius float64) plan.Plan {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "A", Radius: radius}}
	p.Turntable.Diameter = 2*radius + 100
	p.Base = plan.Base{Shape: plan.Disc, Diameter: 2*radius + 200, Thickness: 18, Material: p.Base.Material}
	p.Stops = make([]plan.Stop, n)
	for i := range p.Stops {
		p.Stops[i].Angle = -180 + 360*(float64(i)+0.5)/float64(n)
	}
	return p
}

// roomyRadius is the least ring radius (mm) at which n equal steps keep twice
// the web rule.
func roomyRadius(n int) float64 {
	p := plan.Default()
	return (p.Seat.Mouth() + 2*p.Rules.Web) / (2 * math.Sin(math.Pi/float64(n)))
}

// BenchmarkSolve times a plate where every web holds, whatever its size, and
// one where every seat overlaps its neighbours and so has findings to tell.
func BenchmarkSolve(b *testing.B) {
	for _, n := range []int{9, 720, 10_000} {
		for _, c := range []struct {
			name   string
			radius float64
		}{
			{"roomy", roomyRadius(n)},
			{"crowded", 2.25 * float64(n) / (2 * math.Pi)}, // the arc of a step is half a mouth
		} {
			b.Run(fmt.Sprintf("%s/%d", c.name, n), func(b *testing.B) {
				p := crowd(n, c.radius)
				b.ReportAllocs()
				for b.Loop() {
					Solve(p)
				}
			})
		}
	}
}
