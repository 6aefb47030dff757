package ball_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/ball"
)

// The test by which hardness is defined: the force that presses a ball of 11.28
// mm in to half its diameter, where its outline is 100 mm².
func TestDentOfTheJankaTest(t *testing.T) {
	jankaBall := 2 * math.Sqrt(100/math.Pi)
	require.InDelta(t, 11.28, jankaBall, 5e-3, "the diameter is given to two places")
	for _, hardness := range []float64{1700, 5600, 6400} { // white pine, yellow birch, sugar maple
		dent, ok := ball.TrackDent(hardness, jankaBall, hardness)
		require.True(t, ok)
		assert.InDelta(t, jankaBall/2, dent.Depth, rounding)
		assert.InDelta(t, 100, math.Pi*dent.Radius*dent.Radius, 1e-6)

		_, ok = ball.TrackDent(1.001*hardness, jankaBall, hardness)
		assert.False(t, ok, "pressed in beyond its half")
	}
}

func TestDentOfACatch(t *testing.T) {
	// 18.8 N on yellow birch: 56 N/mm², c = √(18.8/56π) = 0.326896 mm.
	dent, ok := ball.TrackDent(18.8, 6, 5600)
	require.True(t, ok)
	assert.InDelta(t, 0.326896, dent.Radius, sixDigits)
	assert.InDelta(t, 0.017863, dent.Depth, sixDigits)

	none, ok := ball.TrackDent(0, 6, 5600)
	require.True(t, ok)
	assert.Zero(t, none)
	_, ok = ball.TrackDent(10, 0, 5600)
	assert.False(t, ok, "no ball")
	_, ok = ball.TrackDent(10, 6, 0)
	assert.False(t, ok, "no hardness")
}
