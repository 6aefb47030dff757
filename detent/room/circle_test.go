package room

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/geom"
)

// Ring radii for seats of 4.5 mm and webs of 2 mm: exact mathematics, as printed
// to a millimetre in tables of this trade.
func TestSmallestRing(t *testing.T) {
	for _, c := range []struct {
		why   string
		stops []geom.Angle
		want  float64
	}{
		{"the mitres of a crown moulding: 30 and 31.6", []geom.Angle{0, 30, 31.6}, 233},
		{"31.6 and 33.9", []geom.Angle{0, 31.6, 33.9, -45}, 162},
		{"22.5 and 30", []geom.Angle{22.5, 30, 0}, 50},
		{"whole turns count for nothing", []geom.Angle{22.5, 390}, 50},
		{"across the seam of a turn", []geom.Angle{-3.75, 3.75, 180}, 50},
		{"half a turn apart the ring is half a pitch", []geom.Angle{90, -90}, 3.5},
		{"one place is no pair", []geom.Angle{180, -180}, 0},
		{"nothing", nil, 0},
	} {
		assert.Equal(t, c.want, RoundUp(SmallestRing(c.stops, 6.5)), c.why)
	}
	assert.InDelta(t, 232.7717, SmallestRing([]geom.Angle{30, 31.6}, 6.5), 5e-5)
	assert.InDelta(t, 161.9337, SmallestRing([]geom.Angle{31.6, 33.9}, 6.5), 5e-5)
	assert.InDelta(t, 49.6918, SmallestRing([]geom.Angle{22.5, 30}, 6.5), 5e-5)
}

func TestGapForIsRingForTurnedRound(t *testing.T) {
	for _, apart := range []geom.Angle{0.01, 1.6, 60, 179.9} {
		assert.InDelta(t, apart.Degrees(), GapFor(RingFor(apart, 6.5), 6.5).Degrees(), tiny*100)
	}
	assert.Greater(t, GapFor(3, 6.5), geom.FullTurn, "no angle is enough")
}

func TestRoundUp(t *testing.T) {
	assert.Equal(t, 50.0, RoundUp(49.6))
	assert.Equal(t, 49.5, RoundUp(49.5))
	assert.Equal(t, 49.5, RoundUp(49.5+Slack/8), "rounding above a step")
	assert.Equal(t, 50.0, RoundUp(49.5+1e-6))
}

func TestAfterWidestGap(t *testing.T) {
	assert.Equal(t, []geom.Angle{300, 370, 380}, afterWidestGap([]geom.Angle{10, 20, 300}))
	assert.Equal(t, []geom.Angle{0, 120, 240}, afterWidestGap([]geom.Angle{0, 120, 240}), "of equal gaps the one at the seam")
	assert.Nil(t, afterWidestGap(nil))
}
