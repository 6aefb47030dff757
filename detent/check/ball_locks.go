package check

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// ballLocks fires when contact angle and friction angle together reach 90
// degrees: no turning of the table lifts the ball out, however strong the hand.
var ballLocks = Check{
	ID:       "ball-locks",
	Severity: Error,
	run: eachClick(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		h, ok := k.Home()
		friction := geom.FromRadians(math.Atan(pl.Plan.Shop.Friction))
		return Finding{Value: (h.Angle + friction).Degrees(), Limit: 90, Unit: deg}, ok && k.State() == ball.Locks
	}),
	say: sayClick("text"),
	fix: betterSeat,
}
