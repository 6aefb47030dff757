package check

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// fittingTurns fires when the slot of an end stop or a clamp runs so far round
// that less than rules.web is left between its ends: it would cut the middle out
// of the base. A table that turns all the way round can have neither.
var fittingTurns = Check{
	ID:       "fitting-turns",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		rule := pl.Plan.Rules.Web
		for k, f := range pl.Features {
			if f.Fitting != plate.EndStopSlot && f.Fitting != plate.ClampSlot {
				continue
			}
			if left := bridgeOf(f); left <= Slack || left < rule-Slack {
				report(Finding{Features: []int{k}, Value: left, Limit: rule, Unit: mm})
			}
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		args := numbers(pl, f)
		args["Feature"] = pl.Features[f.Features[0]]
		if f.Value <= 0 {
			return "round", args
		}
		return "text", args
	},
}

// bridgeOf returns the material (mm) left between the ends of a curved slot, by
// the chord of the gap between them; infinite while the slot is less than half
// the way round.
func bridgeOf(f plate.Feature) float64 {
	a := f.Core.(geom.Arc)
	switch {
	case a.Sweep < geom.FullTurn/2:
		return inf
	case a.Sweep >= geom.FullTurn:
		return -2 * f.Half
	}
	return a.Start().Distance(a.End()) - 2*f.Half
}
