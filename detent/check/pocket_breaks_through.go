package check

import "stopwright/detent/plate"

// pocketBreaksThrough fires when the catches' pockets are deeper than their part
// is thick, with the pad and the carrier behind it where there are some: the
// catches would stand out of the other side. A pocket exactly as deep is not
// flagged.
var pocketBreaksThrough = Check{
	ID:       "pocket-breaks-through",
	Severity: Error,
	run: onCatches(func(pl *plate.Plate, _ plate.Click) (Finding, bool) {
		depth, thickness := pl.Pockets[0].BodyDepth, plate.PocketRoom(pl.Plan)
		return Finding{Value: depth, Limit: thickness, Unit: mm}, depth > thickness+Slack
	}),
	say: say("text"),
}
