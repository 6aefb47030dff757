package check

import "stopwright/detent/plate"

// ballShort fires when the ball stops short of the seat's rim or cone: its
// housing lets it out no further, and it rattles between the rims. Value is how
// far it can sink below the face, limit how far it would have to. A ball that
// cannot reach the face at all is ball-cannot-reach's.
var ballShort = Check{
	ID:       "ball-short",
	Severity: Error,
	run: eachClick(func(_ *plate.Plate, k plate.Click) (Finding, bool) {
		h, ok := k.Home()
		return Finding{Value: h.Drop, Limit: h.Drop + h.Short, Unit: mm}, ok && h.Short > Slack
	}),
	say: sayClick("text"),
	fix: betterSeat,
}
