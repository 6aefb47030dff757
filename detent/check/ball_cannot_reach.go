package check

import (
	"stopwright/detent/ball"
	"stopwright/detent/plate"
)

// ballCannotReach fires when the balls stand out of their part no further than
// the gap between the faces: they never touch a seat. Value is how far they
// stand out, limit the gap.
var ballCannotReach = Check{
	ID:       "ball-cannot-reach",
	Severity: Error,
	run: onCatches(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		p := pl.Plan
		return Finding{Value: p.Catch.Protrusion, Limit: p.FaceGap, Unit: mm}, k.State() == ball.CannotReach
	}),
	say: say("text"),
}
