package detent

import (
	"context"
	"testing"

	"stopwright/detent/budget"
)

// BenchmarkStudy makes 10^6 trials of a plate of nine stops, each as drilled and
// after zeroing, and of how far off the worst of them is: seats, catch, pivot and
// rest, with means, deviations and intervals.
func BenchmarkStudy(b *testing.B) {
	pl := Solve(crowd(9, 105)).Plate
	m := sampleModel(pl)
	for b.Loop() {
		if _, err := budget.Run(context.Background(), m, budget.Options{Seed: 1, Most: sampleMost}); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(9*sampleMost*float64(b.N)/b.Elapsed().Seconds(), "stop-samples/s")
}
