package check

import (
	"stopwright/detent/ball"
	"stopwright/detent/plate"
)

// ballCannotReach fires when the ball stands out of its part no further than
// the gap between the faces: it never touches a seat.
var ballCannotReach = Check{
	ID:       "ball-cannot-reach",
	Severity: Error,
	run: eachClick(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		p := pl.Plan
		return Finding{Value: p.Catch.Protrusion, Limit: p.FaceGap, Unit: mm}, k.State() == ball.CannotReach
	}),
	say: sayClick("text"),
}
