package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// fittingWeb fires when less than rules.web is left between a fitting and
// another opening of its part, or they run into each other. One finding a
// fitting: of the openings listed before it, the one with least. Two of the
// maker's own features are not flagged, and seats and pockets are web-thin's
// and feature-overlap's.
var fittingWeb = Check{
	ID:       "fitting-web",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		rule := pl.Plan.Rules.Web
		for k, f := range pl.Features {
			if f.Fitting == "" {
				continue
			}
			other, least := -1, rule-Slack
			for i, g := range pl.Features[:k] {
				if g.Part != f.Part {
					continue
				}
				if web := f.Between(g); web < least {
					other, least = i, web
				}
			}
			if other >= 0 {
				report(Finding{Features: []int{k, other}, Value: least, Limit: rule, Unit: mm})
			}
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		args := numbers(pl, f)
		args["Feature"], args["Other"] = pl.Features[f.Features[0]], pl.Features[f.Features[1]]
		if f.Value <= 0 {
			args["Overlap"] = words.MM(-f.Value)
			return "broken", args
		}
		return "text", args
	},
}
