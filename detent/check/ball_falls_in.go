package check

import (
	"stopwright/detent/ball"
	"stopwright/detent/plate"
)

// ballFallsIn fires when the seat swallows the ball: its mouth is as wide as
// the ball or wider, so that no rim can lift the ball out again. A ball kept up
// by a shallow floor is not flagged.
var ballFallsIn = Check{
	ID:       "ball-falls-in",
	Severity: Error,
	run: eachClick(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		return Finding{Value: pl.Plan.Seat.Mouth(), Limit: pl.Plan.Catch.BallDiameter, Unit: mm}, k.State() == ball.FallsIn
	}),
	say: sayClick("text"),
	fix: betterSeat,
}
