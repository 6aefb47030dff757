package check

import "stopwright/detent/plate"

// willNotCentre fires when the ball pulls the table home with no more torque
// than the loaded table resists with: it stays where it is let go, short of the
// stop. A ball that does not click at all is told of elsewhere.
var willNotCentre = Check{
	ID:       "will-not-centre",
	Severity: Warning,
	run: eachClick(func(_ *plate.Plate, k plate.Click) (Finding, bool) {
		t, ok := k.Torques()
		return Finding{Value: t.Centring, Limit: k.Drag, Unit: nm}, ok && t.Centring <= k.Drag+Slack
	}),
	say: sayClick("text"),
}
