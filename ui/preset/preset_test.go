package preset_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/ui/preset"
)

// TestEveryCatchWorksWithEverySeatMadeForIt: the presets go together, and with
// the default plate nothing is wrong but what notes say.
func TestEveryCatchWorksWithEverySeatMadeForIt(t *testing.T) {
	for _, c := range preset.Catches() {
		p := plan.Default()
		c.Apply(&p)
		require.NoError(t, plan.Validate(p), "%s %v", c.Key, c.Args)
		p.Turntable.Thickness = 24 // the longest go through the default board, and the check says so
		for _, s := range preset.Seats(p.Catch.BallDiameter) {
			q := p
			s.Apply(&q)
			q.Stops = []plan.Stop{{Angle: 0}, {Angle: 30}}
			require.NoError(t, plan.Validate(q), "%s %v", s.Key, s.Args)
			for _, f := range detent.Solve(q).Findings {
				assert.NotEqual(t, check.Error, f.Severity, "%s %v with %s: %s", c.Key, c.Args, s.Key, f.ID)
			}
			assert.Less(t, q.Seat.Mouth(), q.Catch.BallDiameter, "the ball does not fall in")
			assert.Less(t, q.Seat.ReliefDiameter, q.Seat.Diameter)
		}
		assert.Greater(t, p.Catch.FlushForce, p.Catch.FreeForce, "a spring pushes harder the more it is pressed")
		assert.Less(t, p.Catch.Protrusion, p.Catch.BallDiameter/2, "the housing holds the ball by more than its middle")
		assert.Less(t, p.Catch.BodyLength, p.Turntable.Thickness+6, "it fits a part, or nearly")
	}
}

// TestSeatsOfAnyBall: sizes stay what a plan may hold.
func TestSeatsOfAnyBall(t *testing.T) {
	for _, ball := range []float64{0.3, 1, 3.175, 25.4, 100} {
		for _, s := range preset.Seats(ball) {
			p := plan.Default()
			p.Catch.BallDiameter = ball
			s.Apply(&p)
			assert.NoError(t, plan.Validate(p), "%s for %v mm", s.Key, ball)
		}
	}
}

// TestAConeHoldsTheBallBelowItsRim: else it would be a rim after all.
func TestAConeHoldsTheBallBelowItsRim(t *testing.T) {
	const ball = 6.0
	seats := preset.Seats(ball)
	cone := plan.Default()
	seats[len(seats)-1].Apply(&cone)
	require.Equal(t, plan.Countersunk, cone.Seat.Form)
	const contact = 0.70711 * ball // diameter at which a ball touches a 90° cone: d cos 45°
	assert.Greater(t, cone.Seat.Diameter, contact)
	assert.Less(t, cone.Seat.ReliefDiameter, contact)
}
