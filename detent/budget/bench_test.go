package budget_test

import (
	"context"
	"testing"

	"stopwright/detent/budget"
)

// stop is what a stop is typically made of after zeroing.
var stop = budget.Sum{
	{Shape: budget.Disc, Size: 0.5},
	{Shape: budget.Disc, Size: 0.5},
	{Shape: budget.Disc, Size: 0.05},
	{Shape: budget.Disc, Size: 0.05},
	{Shape: budget.Rectangular, Size: 0.1},
	{Shape: budget.Rectangular, Size: 0.1},
}

func BenchmarkHalfWidth(b *testing.B) {
	for b.Loop() {
		stop.Distribution().HalfWidth(0.95)
	}
}

// BenchmarkRun makes 10^6 trials of nine stops, each of a seat, the table's play
// and where the ball rests: 9·10^6 stop-samples of three errors, with mean,
// deviation and intervals.
func BenchmarkRun(b *testing.B) {
	m := budget.Model{Outputs: 9, Work: func(d *budget.Draw, yield func(int, []float64)) {
		y := d.Column()
		for i := range 9 {
			d.Fill(y, budget.Term{Shape: budget.Disc, Size: 0.5})
			d.Add(y, budget.Term{Shape: budget.Disc, Size: 0.05})
			d.Add(y, budget.Term{Shape: budget.Rectangular, Size: 0.1})
			yield(i, y)
		}
	}}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := budget.Run(context.Background(), m, budget.Options{Seed: 1, Most: 1e6}); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(9e6*float64(b.N)/b.Elapsed().Seconds(), "stop-samples/s")
}
