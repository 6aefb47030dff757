package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// edgeThin fires when less than rules.edge is left between a seat and the outer
// edge of its part or the pivot bore, or the seat breaks out there.
var edgeThin = Check{
	ID:       "edge-thin",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		rule := pl.Plan.Rules.Edge
		for i := range pl.Seats {
			edge := min(pl.ToEdge(i), pl.ToBore(i))
			if edge >= rule-Slack {
				continue
			}
			report(Finding{
				Angles: anglesOf(pl, i), Seats: []int{i},
				Value: edge, Limit: rule, Unit: mm,
			})
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		key := "edge"
		if f.Value == pl.ToBore(f.Seats[0]) {
			key = "bore"
		}
		if f.Value <= 0 {
			key += "-broken"
		}
		return key, seatArgs(pl, f)
	},
}
