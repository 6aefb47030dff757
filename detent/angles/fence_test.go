package angles

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/geom"
)

// mitres is a plan for frames, both sides: what a maker of a mitre table lists.
var mitres = []geom.Angle{-45, -36, -30, -22.5, -15, 0, 15, 22.5, 30, 36, 45}

func TestFromFence(t *testing.T) {
	for _, c := range []struct {
		angle  geom.Angle
		others []geom.Angle
		square geom.Angle
		sides  int // 0: not asked about
		why    string
	}{
		{67.5, nil, 22.5, 8, "eight sides, read from the fence"},
		{-67.5, mitres, -22.5, 8, "the other way"},
		{75, mitres, 15, 12, "twelve sides"},
		{54, mitres, 36, 5, "five sides"},
		{82.5, nil, 7.5, 24, "the most sides"},
		{64.3, nil, 180.0 / 7, 7, "read to a tenth: 64.286"},
		{64.29, nil, 180.0 / 7, 7, "to a hundredth"},
		{67.55, nil, 22.5, 8, "just within the tolerance"},
		{67.56, nil, 0, 0, "just beyond it"},
		{60, mitres, 0, 0, "itself the mitre of three sides"},
		{45, nil, 0, 0, "the same from fence and square"},
		{45.01, nil, 0, 0, "four sides either way"},
		{22.5, nil, 0, 0, "from square already"},
		{90, nil, 0, 0, "along the fence: no frame"},
		{112.5, nil, 0, 0, "past the fence"},
		{50, nil, 0, 0, "40° mitres no frame"},
		{84, nil, 0, 0, "6° mitres 30 sides, more than are cut"},

		{67.5, []geom.Angle{0, 22.5, 45}, 0, 0, "carries on equal steps"},
		{67.5, []geom.Angle{45, 0, 22.5, -22.5}, 0, 0, "in whatever order"},
		{-67.5, []geom.Angle{0, -22.5, -45}, 0, 0, "equal steps downwards"},
		{67.5, []geom.Angle{90, 112.5, 135}, 0, 0, "carries them on from above"},
		{67.5, []geom.Angle{45, 90}, 0, 0, "midway between its neighbours"},
		{72, []geom.Angle{0, 144}, 0, 0, "a fifth of a turn between two others"},
		{64.29, []geom.Angle{0, 25.71, 77.14, 51.43 - 0.005, 38.57}, 0, 0, "a series typed to hundredths"},
		{67.5, []geom.Angle{22.5, 45}, 22.5, 8, "two stops make no series yet"},
		{67.5, []geom.Angle{0, 20, 45}, 22.5, 8, "unequal steps"},
		{67.5, []geom.Angle{0, 22.5, 30, 45}, 22.5, 8, "the step is not that of the neighbours"},
		{67.5, []geom.Angle{67.5}, 22.5, 8, "the same stop again explains nothing"},
	} {
		square, sides, ok := FromFence(c.angle, c.others)
		assert.Equal(t, c.sides > 0, ok, "%v: %s", c.angle, c.why)
		assert.Equal(t, c.square, square, "%v: %s", c.angle, c.why)
		if ok {
			assert.Equal(t, c.sides, sides, "%v: %s", c.angle, c.why)
		}
	}
}

// Every mitre but those of three and four sides is recognised when it is read
// from the fence, and none when it is not.
func TestFromFenceEveryFrame(t *testing.T) {
	for n := MinSides; n <= MaxSides; n++ {
		square, sides, ok := FromFence(90-Mitre(n), nil)
		if n <= 4 || n == 6 { // 30° and 45° are mitres themselves, 60° is that of three sides
			assert.False(t, ok, "%d sides", n)
			continue
		}
		assert.True(t, ok, "%d sides", n)
		assert.Equal(t, Mitre(n), square)
		assert.Equal(t, n, sides)
		_, _, ok = FromFence(Mitre(n), nil)
		assert.False(t, ok, "%d sides from square", n)
	}
}

func TestFromFenceLeavesTheListAlone(t *testing.T) {
	others := []geom.Angle{45, 0, 22.5}
	FromFence(67.5, others)
	assert.Equal(t, []geom.Angle{45, 0, 22.5}, others)
}
