package check

import "stopwright/detent/plate"

// seatBottoms fires when the floor of the seats, or the cone or relief hole in
// it, holds the balls up before they rest on rim or cone: they are not held by
// what was cut to hold them. Value is the seats' depth, limit the depth that
// would do. A ball that its housing holds up higher still is ball-short's.
var seatBottoms = Check{
	ID:       "seat-bottoms",
	Severity: Error,
	run: onCatches(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		h, ok := k.Home()
		seat := pl.Plan.Seat
		least, floor := plate.LeastDepth(pl.Plan, seat)
		fires := ok && h.Short <= Slack && floor && seat.Depth < least-Slack
		return Finding{Value: seat.Depth, Limit: least, Unit: mm}, fires
	}),
	say: say("text"),
	fix: betterDepth,
}
