package ball_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/ball"
)

// On a sharp rim the contact angle is greatest at home, sin α = a/r, and the
// ball locks exactly where it and the friction angle reach 90 degrees.
func TestSteepest(t *testing.T) {
	for _, c := range []struct {
		why            string
		mouth, gap     float64
		wantSin        float64 // of the steepest contact
		reaches, locks bool
	}{
		{why: "a rim at three quarters of the ball", mouth: 4.5, wantSin: 0.75, reaches: true},
		{why: "a rim so steep that friction holds it: asin 0.99 + atan 0.2 > 90°", mouth: 5.94, wantSin: 0.99, reaches: true, locks: true},
		{why: "a gap the ball does not cross", mouth: 4.5, gap: 3},
	} {
		k, err := ball.NewClick(ball.Setup{
			BallDiameter: 6, Seat: ball.Seat{Form: ball.Drilled, Diameter: c.mouth},
			Spring: ball.Spring{Free: 8, Flush: 20, Travel: 2.9}, FaceGap: c.gap, RingRadius: 100, Friction: 0.2,
		})
		require.NoError(t, err, c.why)
		angle, ok := k.Steepest()
		assert.Equal(t, c.reaches, ok, c.why)
		assert.Equal(t, c.locks, k.State() == ball.Locks, c.why)
		if ok {
			assert.InDelta(t, math.Asin(c.wantSin)*180/math.Pi, angle.Degrees(), 1e-9, c.why) // degrees: rounding
		}
	}
}
