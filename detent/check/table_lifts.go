package check

import "stopwright/detent/plate"

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
	say: say("text"),
}
