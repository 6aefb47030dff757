package check

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// ballLocks fires when contact angle and friction angle together reach 90
// degrees: no turning of the table lifts the ball out, however strong the hand.
// A steep rim that the ball never reaches, because its housing holds it back, is
// not flagged. Value is the sum of the two angles where it is greatest.
var ballLocks = Check{
	ID:       "ball-locks",
	Severity: Error,
	run: onCatches(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		contact, _ := k.Steepest()
		friction := geom.FromRadians(math.Atan(pl.Plan.Shop.Friction))
		return Finding{Value: (contact + friction).Degrees(), Limit: 90, Unit: deg}, k.State() == ball.Locks
	}),
	say: say("text"),
	fix: betterSeat,
}
