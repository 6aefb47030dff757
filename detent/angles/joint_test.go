package angles_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/angles"
	"stopwright/detent/geom"
)

func TestJoints(t *testing.T) {
	const mm = 1e-9 // rounding
	assert.InDelta(t, 60*math.Sqrt2, angles.JointLength(60, 4), mm, "a square frame: the diagonal of the stock")
	assert.InDelta(t, 120, angles.JointLength(60, 3), mm, "a triangle: cut at 60° from square")

	// An octagon whose joints are 50 mm long: 0.4 mm at the closing corner needs
	// every cut true to 0.0286°.
	const fourDecimals = 0.00005
	assert.InDelta(t, 0.0286, angles.AllowedOff(50, 8, 0.4).Degrees(), fourDecimals)
	gap, ok := angles.ClosingGap(50, 8, 0.0286)
	assert.True(t, ok)
	assert.InDelta(t, 0.4, gap, 0.001)
	gap, ok = angles.CornerGap(50, 0.0286)
	assert.True(t, ok)
	assert.InDelta(t, 0.05, gap, 0.001, "a small angle: an eighth of it at one corner")

	for n := 3; n <= 16; n++ {
		for _, wanted := range []float64{0, 0.1, 1} {
			length := angles.JointLength(60, n)
			back, _ := angles.ClosingGap(length, n, angles.AllowedOff(length, n, wanted))
			assert.InDelta(t, wanted, back, mm, "%d sides", n)
			back, _ = angles.CornerGap(length, -angles.AllowedOff(length, 1, wanted))
			assert.InDelta(t, wanted, back, mm, "%d sides, either way off", n)
		}
	}
}

func TestCutsThatDoNotMeet(t *testing.T) {
	_, ok := angles.CornerGap(50, 45)
	assert.False(t, ok)
	_, ok = angles.ClosingGap(50, 9, geom.Angle(-5))
	assert.False(t, ok)
	_, ok = angles.ClosingGap(50, 9, 4.99)
	assert.True(t, ok)
}
