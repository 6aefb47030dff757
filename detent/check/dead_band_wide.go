package check

import "stopwright/detent/plate"

// deadBandWide fires when friction can hold the table farther from a stop than
// the maker's target: seat and track miss each other sideways, and the bottom of
// the click is a bowl and not a V. Value and limit are to either side.
var deadBandWide = Check{
	ID:       "dead-band-wide",
	Severity: Warning,
	run: eachClick(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		band, target := k.Dead.RestsAngle.Degrees(), pl.Plan.Shop.Target
		return Finding{Value: band, Limit: target, Unit: deg}, k.HasDead && band > target+Slack
	}),
	say: sayClick("text"),
}
