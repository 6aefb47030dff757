package check

import "stopwright/detent/plate"

// knockOutWide fires when the hole to push a catch out is as wide as the bore
// that holds it, or wider: no floor is left for the catch to stand on.
var knockOutWide = Check{
	ID:       "knock-out-wide",
	Severity: Error,
	run: onCatches(func(pl *plate.Plate, _ plate.Click) (Finding, bool) {
		p := pl.Pockets[0]
		return Finding{Value: p.KnockOut, Limit: p.Body, Unit: mm}, p.KnockOut > p.Body-Slack
	}),
	say: say("text"),
}
