package check

import "stopwright/detent/plate"

// pocketBreaksThrough fires when a catch's pocket is deeper than its part is
// thick: the catch would stand out of the other side. A pocket exactly as deep
// is not flagged.
var pocketBreaksThrough = Check{
	ID:       "pocket-breaks-through",
	Severity: Error,
	run: eachClick(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		depth, thickness := pl.Pockets[k.Catch].BodyDepth, plate.ThicknessOf(pl.Plan, pl.CatchPart)
		return Finding{Value: depth, Limit: thickness, Unit: mm}, depth > thickness+Slack
	}),
	say: sayClick("text"),
}
