package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// tableLifts fires when the balls together press the turntable up harder than
// its load presses it down: it floats, and nothing about it is true any more.
// Exactly in balance is not flagged.
var tableLifts = Check{
	ID:       "table-lifts",
	Severity: Warning,
	run: func(pl *plate.Plate, report func(Finding)) {
		if lift, load := plate.Lift(pl.Clicks), plate.Load(pl.Plan); lift > load+Slack {
			report(Finding{Angles: allStops(pl), Value: lift, Limit: load, Unit: newton})
		}
	},
	say: func(_ *plate.Plate, f Finding) (string, words.Args) {
		return "text", words.Args{"Force": words.N(f.Value), "ForceLimit": words.N(f.Limit)}
	},
}
