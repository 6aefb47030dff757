package check

import (
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// stopStiff fires when leaving a stop takes more than a hand comfortably gives:
// the torque of the balls that drop there and of the table's drag, as a force at
// the turntable's rim.
var stopStiff = Check{
	ID:       "stop-stiff",
	Severity: Warning,
	run: onHolds(func(pl *plate.Plate, h plate.Hold) (Finding, bool) {
		return Finding{Value: h.Push(pl.Plan), Limit: plate.ComfortablePush, Unit: newton}, h.Clicks && !easy(pl.Plan, h)
	}),
	say: say("text"),
	fix: seatThat(func(p plan.Plan, c plate.SeatChoice) bool { return easy(p, c.Hold) }),
}

func easy(p plan.Plan, h plate.Hold) bool { return h.Push(p) <= plate.ComfortablePush+Slack }
