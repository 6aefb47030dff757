package check

import (
	"stopwright/detent/ball"
	"stopwright/detent/plate"
)

// ballFallsIn fires when the seats swallow the balls: the mouth is as wide as
// the ball or wider, and no rim or cone lifts it out again, though a flat floor
// may keep it up. A wide mouth that narrows below the ball, by a chamfer, a
// countersink or the drill's point, is not flagged. Value is the mouth, limit
// the ball.
var ballFallsIn = Check{
	ID:       "ball-falls-in",
	Severity: Error,
	run: onCatches(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		mouth := 2 * k.Contour().Mouth()
		h, ok := k.Home()
		_, held := k.Contour().FloorClearance()
		onFloor := ok && h.Rest == ball.Floor && !held
		return Finding{Value: mouth, Limit: pl.Plan.Catch.BallDiameter, Unit: mm}, k.State() == ball.FallsIn || onFloor
	}),
	say: say("text"),
	fix: betterSeat,
}
