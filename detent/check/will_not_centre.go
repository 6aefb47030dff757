package check

import (
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// willNotCentre fires when the balls that drop together pull the table home with
// no more torque than the loaded table resists with: it stays where it is let
// go, short of the stop. Balls that do not click at all are told of elsewhere.
var willNotCentre = Check{
	ID:       "will-not-centre",
	Severity: Warning,
	run: onHolds(func(_ *plate.Plate, h plate.Hold) (Finding, bool) {
		return Finding{Value: h.Centring, Limit: h.Drag, Unit: nm}, h.Clicks && !centres(h)
	}),
	say: say("text"),
	fix: seatThat(func(_ plan.Plan, c plate.SeatChoice) bool { return centres(c.Hold) }),
}

func centres(h plate.Hold) bool { return h.Centring > h.Drag+Slack }
