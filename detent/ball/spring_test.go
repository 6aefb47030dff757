package ball_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/ball"
)

// Shigley's Mechanical Engineering Design, 10th edition, Example 10-1, as given
// there in inches and pounds. The formulas know no unit, so the inches go in as
// they are.
func TestSpringOfShigleyInInches(t *testing.T) {
	c := ball.Coil{Wire: 0.037, Mean: 0.400, ActiveTurns: 10.5, Modulus: 11.85e6}
	assert.InDelta(t, 10.8, c.Index(), 0.05)
	assert.InDelta(t, 1.124, c.Bergstrasser(), 5e-4)
	assert.InDelta(t, 4.13, c.Rate(), 5e-3)
	assert.InDelta(t, 146, c.Stress(6.46)/1000, 0.5, "kpsi")
	assert.InDelta(t, 1.56, 6.46/c.Rate(), 5e-3)
	assert.InDelta(t, 0.500, c.Solid(), 1e-3)
}

// musicWire is the shear modulus of Shigley's Example 10-1, MPa: 11.85 Mpsi.
const musicWire = 81703

func TestSpringOfShigleyInMillimetres(t *testing.T) {
	const (
		poundForce = 4.4482216152605 // N, exact
		kpsi       = 6.894757293168  // MPa
	)
	c := ball.Coil{Wire: 0.9398, Mean: 10.16, ActiveTurns: 10.5, Modulus: musicWire}
	assert.InDelta(t, 0.72347, c.Rate(), 5e-6)
	assert.InDelta(t, 146, c.Stress(6.46*poundForce)/kpsi, 0.5)
	assert.InDelta(t, 12.7, c.Solid(), 0.02)

	loose, err := c.Loose(50)
	require.NoError(t, err)
	// 50 mm long, fitted at 40: 10 mm of preload; 3 mm more when flush.
	fitted, err := loose.Fitted(40, 3)
	require.NoError(t, err)
	assert.InDelta(t, 7.2347, fitted.Free, 5e-5)
	assert.InDelta(t, 9.4051, fitted.Flush, 5e-5)
	assert.InDelta(t, 3, fitted.Travel, rounding)
	assert.InDelta(t, 0.72347, fitted.Rate(), 5e-6)
}

func TestSpringForceAndWork(t *testing.T) {
	s := ball.Spring{Free: 8, Flush: 20, Travel: 2} // 6 N/mm
	for out, force := range map[float64]float64{-1: 20, 0: 20, 0.5: 17, 2: 8, 3: 8} {
		assert.InDelta(t, force, s.Force(out), rounding, "%g mm out", out)
	}
	// Areas under the straight line and its level ends, by hand.
	for span, work := range map[[2]float64]float64{
		{0, 2}: 28, {2, 0}: -28, {0.5, 1.5}: 14, {-1, 0}: 20, {-1, 1}: 20 + 17, {1, 4}: 11 + 16, {3, 5}: 16, {-3, -1}: 40, {5, -1}: -(20 + 28 + 24),
	} {
		assert.InDelta(t, work, s.Work(span[0], span[1]), rounding, "%v", span)
	}
}

func TestSpringFromRate(t *testing.T) {
	s, err := ball.SpringFromRate(6, 8, 2)
	require.NoError(t, err)
	assert.Equal(t, ball.Spring{Free: 8, Flush: 20, Travel: 2}, s)
}

func TestMeasuredSpring(t *testing.T) {
	// With a kitchen scale: 17 N when the ball stands out 0.5 mm, 11 N at 1.5.
	for name, readings := range map[string][2]ball.Reading{
		"longer first":  {{Length: 1.5, Force: 11}, {Length: 0.5, Force: 17}},
		"shorter first": {{Length: 0.5, Force: 17}, {Length: 1.5, Force: 11}},
	} {
		loose, err := ball.Measured(readings[0], readings[1])
		require.NoError(t, err, name)
		s, err := loose.Fitted(2, 2)
		require.NoError(t, err, name)
		assert.InDelta(t, 8, s.Free, rounding, name)
		assert.InDelta(t, 20, s.Flush, rounding, name)
	}
	loose, err := ball.Measured(ball.Reading{Length: 30}, ball.Reading{Length: 20, Force: 5})
	require.NoError(t, err)
	assert.Equal(t, ball.Loose{FreeLength: 30, Rate: 0.5}, loose, "no force at the free length")
}

func TestSpringsThatAreNone(t *testing.T) {
	coil := ball.Coil{Wire: 0.5, Mean: 5, ActiveTurns: 7, Modulus: musicWire} // 5 mm when solid
	fails := func(err error, says ...string) {
		t.Helper()
		require.Error(t, err)
		for _, s := range says {
			assert.ErrorContains(t, err, s)
		}
	}
	_, err := ball.SpringFromRate(-1, 8, 2)
	fails(err, "spring rate is -1, must be 0 to 1e+06 N/mm")
	_, err = ball.SpringFromRate(1, -8, 0)
	fails(err, "free force is -8", "protrusion is 0, must be 0.001 to 100000 mm")

	_, err = ball.Coil{}.Loose(10)
	fails(err, "wire diameter is 0", "mean coil diameter", "active turns", "shear modulus")
	_, err = coil.Loose(4.9)
	fails(err, "free length is 4.9, must be 5 to 100000 mm")

	_, err = ball.Measured(ball.Reading{Length: -1, Force: 1}, ball.Reading{Length: 1, Force: -1})
	fails(err, "length of the first reading is -1", "force of the second reading is -1")
	_, err = ball.Measured(ball.Reading{Length: 5, Force: 3}, ball.Reading{Length: 5, Force: 4})
	fails(err, "are no spring")
	_, err = ball.Measured(ball.Reading{Length: 5, Force: 3}, ball.Reading{Length: 4, Force: 3})
	fails(err, "the shorter must press harder")

	loose, err := coil.Loose(12)
	require.NoError(t, err)
	_, err = loose.Fitted(12.1, 2)
	fails(err, "lie slack")
	_, err = loose.Fitted(6.9, 2)
	fails(err, "must be at least 7 mm")
	_, err = loose.Fitted(7, 2)
	require.NoError(t, err, "just not solid when flush")
	_, err = loose.Fitted(12, 2)
	require.NoError(t, err, "just not slack")
	_, err = loose.Fitted(7, 0)
	fails(err, "protrusion is 0")
}
