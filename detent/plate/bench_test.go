package plate

import (
	"fmt"
	"testing"

	"stopwright/detent/plan"
)

// BenchmarkTruth times what trueness adds to a plate: stops of one catch, and 64
// catches each on a ring of its own.
func BenchmarkTruth(b *testing.B) {
	for _, n := range []int{9, 720} {
		p := plan.Default()
		for i := range n {
			p.Stops = append(p.Stops, plan.Stop{Angle: -180 + 360*float64(i)/float64(n)})
		}
		benchTruth(b, fmt.Sprint("stops/", n), p)
	}
	p := plan.Default()
	p.Catches = nil
	for i := range plan.MaxCatches {
		name := fmt.Sprint("c", i)
		p.Catches = append(p.Catches, plan.Placement{Name: name, Radius: 40 + float64(i)})
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(i), Catches: []string{name}})
	}
	benchTruth(b, "rings/64", p)
}

func benchTruth(b *testing.B, name string, p plan.Plan) {
	pl := New(p)
	b.Run(name, func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			pl.truth()
		}
	})
	b.Run(name+"/remedies", func(b *testing.B) {
		last := len(pl.Stops) - 1
		e, _ := pl.Trueness.Zeroed(last)
		for b.Loop() {
			pl.Cheapest(last, e.Interval95/2)
		}
	})
}
