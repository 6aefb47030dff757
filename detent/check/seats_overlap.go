package check

import "stopwright/detent/plate"

// seatsOverlap fires when two seats touch or run into each other: web at or
// below 0. The ball would drop between them. Two stops served by one and the
// same seat are not flagged.
var seatsOverlap = Check{
	ID:       "seats-overlap",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		found := make(pairs, len(pl.Seats))
		for i, s := range pl.Seats {
			if s.Web <= Slack {
				found.offer(i, pair{web: s.Web, seat: s.Nearest})
			}
		}
		found.report(pl, 0, report)
	},
	say: sayPair,
	fix: widerRing,
}
