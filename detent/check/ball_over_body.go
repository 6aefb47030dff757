package check

import "stopwright/detent/plate"

// ballOverBody fires when the ball is as wide as the body it is said to run in,
// or wider. It does not ask how thick the body's wall is: that is the catch
// maker's affair.
var ballOverBody = Check{
	ID:       "ball-over-body",
	Severity: Error,
	run: onCatches(func(pl *plate.Plate, _ plate.Click) (Finding, bool) {
		c := pl.Plan.Catch
		return Finding{Value: c.BallDiameter, Limit: c.BodyDiameter, Unit: mm}, c.BallDiameter > c.BodyDiameter-Slack
	}),
	say: say("text"),
}
