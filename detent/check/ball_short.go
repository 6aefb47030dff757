package check

import "stopwright/detent/plate"

// ballShort fires when the balls stop short of what they should rest on: the
// housing lets them out no further, and they rattle between the rims. Value is
// how far they can sink below the face, limit how far they would have to. A ball
// that cannot reach the face at all is ball-cannot-reach's.
var ballShort = Check{
	ID:       "ball-short",
	Severity: Error,
	run: onCatches(func(_ *plate.Plate, k plate.Click) (Finding, bool) {
		h, ok := k.Home()
		return Finding{Value: h.Drop, Limit: h.Drop + h.Short, Unit: mm}, ok && h.Short > Slack
	}),
	say: say("text"),
	fix: betterSeat,
}
