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

// piled is a plate whose n stops are all served by one seat and all lie outside
// the travel.
func piled(n int) plan.Plan {
	p := crowd(n, 105)
	for i := range p.Stops {
		p.Stops[i].Angle = 90 + 1e-8*float64(i)
	}
	p.Travel = plan.Span{}
	return p
}

// BenchmarkSolve times a plate where every web holds, whatever its size, one
// where every seat overlaps its neighbours and so has findings to tell, and one
// where all stops come down to one seat and one finding.
func BenchmarkSolve(b *testing.B) {
	for _, n := range []int{9, 720, 10_000} {
		for _, c := range []struct {
			name string
			plan plan.Plan
		}{
			{"roomy", crowd(n, roomyRadius(n))},
			{"crowded", crowd(n, 2.25*float64(n)/(2*math.Pi))}, // the arc of a step is half a mouth
			{"piled", piled(n)},
		} {
			b.Run(fmt.Sprintf("%s/%d", c.name, n), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					Solve(c.plan)
				}
			})
		}
	}
}

// BenchmarkRoom times making room: for the mitres of a moulding, for steps of a
// vernier, and for a dividing head.
func BenchmarkRoom(b *testing.B) {
	for _, c := range []struct {
		stops      int
		from, step float64
		travel     plan.Span
	}{
		{9, -5, 1.7, plan.Span{From: -60, To: 60}},
		{72, -45, 1.3, plan.Span{From: -60, To: 60}},
		{360, 0, 1, plan.Span{From: -360, To: 360}},
	} {
		p := plan.NewPlan()
		p.Travel = c.travel
		for i := range c.stops {
			p.Stops = append(p.Stops, plan.Stop{Angle: c.from + c.step*float64(i)})
		}
		b.Run(fmt.Sprint(c.stops), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := MakeRoom(b.Context(), p); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkSolveManyCatches times a plate on whose one ring 64 catches pass as
// many seats as a plan may have, nearly all of them falsely.
func BenchmarkSolveManyCatches(b *testing.B) {
	p := crowd(plan.MaxSeats, roomyRadius(plan.MaxSeats))
	radius := p.Catches[0].Radius
	for len(p.Catches) < plan.MaxCatches {
		c := plan.NewPlacement(p)
		c.Azimuth, c.Radius = 5.6*float64(len(p.Catches)), radius
		p.Catches = append(p.Catches, c)
	}
	b.ReportAllocs()
	for b.Loop() {
		Solve(p)
	}
}
