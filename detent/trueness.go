package detent

import (
	"context"

	"stopwright/detent/budget"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// Sampled is what trials say of the stops: many plates drilled in thought, each
// with errors of its own, and each set to zero at the reference. It checks the
// formulas of [plate.Trueness], and says what they cannot: how all stops do
// together on one plate, which share its reference's errors.
type Sampled struct {
	Trials  int
	Settled bool // known to two significant digits of each standard deviation

	// By stop; nil where the ball does not click. The reference's zeroed
	// estimates are all 0.
	Drilled, Zeroed []budget.Estimate

	// AllWithin95 is how near 95 of 100 plates have every stop, after zeroing.
	AllWithin95 geom.Angle
	// AllWithinTarget is the share of plates, 0 to 1, that have every stop within
	// the target.
	AllWithinTarget float64
}

// How the stops are sampled.
const (
	sampleSeed   = 20081 // any number; with it a plan's report is always the same
	sampleMost   = 1_000_000
	sampleDigits = 2
	// sampleWork limits stops times trials, so that thousands of stops do not
	// take minutes.
	sampleWork = 100_000_000
)

// studyTrueness samples every stop of a plate.
func studyTrueness(ctx context.Context, r *Report) error {
	pl := r.Plate
	n := len(pl.Stops)
	if n == 0 {
		return nil
	}
	if _, clicks := pl.Trueness.Drilled(0); !clicks {
		return nil
	}
	most := max(1, min(sampleMost, sampleWork/n))
	result, err := budget.Run(ctx, sampleModel(pl), budget.Options{Seed: sampleSeed, Most: most, Digits: sampleDigits})
	if err != nil {
		return err
	}
	worst := result.Estimates[2*n]
	r.Sampled = &Sampled{
		Trials: result.Trials, Settled: result.Settled,
		Drilled: result.Estimates[:n:n], Zeroed: result.Estimates[n : 2*n : 2*n],
		AllWithin95:     geom.Angle(worst.Quantile(0.95)),
		AllWithinTarget: worst.Below(pl.Plan.Shop.Target),
	}
	return nil
}

// sampleModel draws one plate a trial. Its outputs are the stops as drilled, the
// stops after zeroing, and the largest of the latter either way.
func sampleModel(pl *plate.Plate) budget.Model {
	stops := make([]plate.StopDraw, len(pl.Stops))
	for i := range stops {
		stops[i] = pl.StopDraw(i)
	}
	n, zero := len(stops), pl.Trueness.Reference
	return budget.Model{Outputs: 2*n + 1, Work: func(d *budget.Draw, yield func(int, []float64)) {
		here, reference, worst := d.Column(), d.Column(), d.Column()
		stops[zero].Draw(d, reference)
		clear(worst)
		for i, s := range stops {
			if i == zero {
				yield(i, reference)
				clear(here)
				yield(n+i, here)
				continue
			}
			s.Draw(d, here)
			yield(i, here)
			for k, zeroed := range here {
				zeroed -= reference[k]
				here[k] = zeroed
				worst[k] = max(worst[k], zeroed, -zeroed)
			}
			yield(n+i, here)
		}
		yield(2*n, worst)
	}}
}
