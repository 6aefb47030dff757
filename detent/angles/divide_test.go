package angles

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
)

func TestTurn(t *testing.T) {
	for _, c := range []struct {
		start geom.Angle
		n     int
		want  []geom.Angle
		why   string
	}{
		{0, 1, []geom.Angle{0}, "one part"},
		{0, 4, []geom.Angle{0, 90, 180, -90}, "quarters, within half a turn either way"},
		{22.5, 4, []geom.Angle{22.5, 112.5, -157.5, -67.5}, "begun elsewhere"},
		{-180, 2, []geom.Angle{180, 0}, "180 is written with plus"},
		{360, 3, []geom.Angle{0, 120, -120}, "begun a turn on"},
		{0.1, 2, []geom.Angle{0.1, -179.9}, "tenths stay tenths"},
	} {
		got, err := Turn(c.start, c.n)
		require.NoError(t, err, c.why)
		assert.Equal(t, c.want, got, c.why)
	}
}

// Seven parts of a turn, 360/7 each, mirror one another to the last bit.
func TestTurnMirrors(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, Most).Draw(t, "parts")
		got, err := Turn(0, n)
		require.NoError(t, err)
		require.Len(t, got, n)
		for i := 1; i < n; i++ {
			if other := got[n-i]; got[i] != 180 {
				require.Equal(t, got[i], -other)
			}
		}
	})
}

func TestArc(t *testing.T) {
	for _, c := range []struct {
		from, to geom.Angle
		n        int
		want     []geom.Angle
		why      string
	}{
		{0, 60, 4, []geom.Angle{0, 15, 30, 45, 60}, "both ends are stops"},
		{-0.1, 0.2, 3, []geom.Angle{-0.1, 0, 0.1, 0.2}, "tenths stay tenths, and 0 is 0"},
		{45, 0, 2, []geom.Angle{45, 22.5, 0}, "downwards"},
		{10, 20, 1, []geom.Angle{10, 20}, "one part has two ends"},
		{30, 30, 5, []geom.Angle{30}, "no arc"},
	} {
		got, err := Arc(c.from, c.to, c.n)
		require.NoError(t, err, c.why)
		assert.Equal(t, c.want, got, c.why)
		assert.False(t, slices.ContainsFunc(got, negativeZero), c.why)
	}
}

func negativeZero(a geom.Angle) bool { return a == 0 && math.Signbit(a.Degrees()) }

func TestSteps(t *testing.T) {
	for _, c := range []struct {
		from, to, step geom.Angle
		want           []geom.Angle
		why            string
	}{
		{0, 45, 15, []geom.Angle{0, 15, 30, 45}, "ends on the last step"},
		{0, 50, 15, []geom.Angle{0, 15, 30, 45}, "ends before"},
		{0, 0.3, 0.1, []geom.Angle{0, 0.1, 0.2, 0.3}, "tenths are counted as tenths"},
		{-0.2, 0.2, 0.2, []geom.Angle{-0.2, 0, 0.2}, "0 is 0"},
		{10, -10, 7.5, []geom.Angle{10, 2.5, -5}, "downwards"},
		{0, 180, geom.Angle(180.0 / 7), []geom.Angle{0, 180.0 / 7, 360.0 / 7, 540.0 / 7, 720.0 / 7, 900.0 / 7, 1080.0 / 7, 180}, "a step that was rounded reaches the end"},
		{5, 5, 1, []geom.Angle{5}, "no range"},
		{0, 1, 400, []geom.Angle{0}, "a step beyond the range"},
	} {
		got, err := Steps(c.from, c.to, c.step)
		require.NoError(t, err, c.why)
		require.Len(t, got, len(c.want), c.why)
		for i := range got {
			assert.InDelta(t, c.want[i].Degrees(), got[i].Degrees(), math.Abs(c.want[i].Degrees())*0x1p-52, c.why)
		}
		assert.False(t, slices.ContainsFunc(got, negativeZero), c.why)
	}
}

func TestStepsAtTheMost(t *testing.T) {
	got, err := Steps(0, 99.99, 0.01)
	require.NoError(t, err)
	assert.Len(t, got, Most)
	_, err = Steps(0, 100, 0.01)
	assert.ErrorContains(t, err, "step must be above")
}

func TestSetsRefuse(t *testing.T) {
	nan, inf := geom.Angle(math.NaN()), geom.Angle(math.Inf(1))
	for _, c := range []struct {
		make func() ([]geom.Angle, error)
		want string
	}{
		{func() ([]geom.Angle, error) { return Turn(361, 4) }, "from must be -360 to 360, not 361"},
		{func() ([]geom.Angle, error) { return Turn(nan, 4) }, "from must be -360 to 360, not NaN"},
		{func() ([]geom.Angle, error) { return Turn(0, 0) }, "parts must be 1 to 10000, not 0"},
		{func() ([]geom.Angle, error) { return Turn(0, Most+1) }, "parts must be 1 to 10000, not 10001"},
		{func() ([]geom.Angle, error) { return Arc(0, inf, 4) }, "to must be -360 to 360, not +Inf"},
		{func() ([]geom.Angle, error) { return Arc(0, 60, Most) }, "parts must be 1 to 9999, not 10000"},
		{func() ([]geom.Angle, error) { return Steps(-400, 0, 1) }, "from must be -360 to 360, not -400"},
		{func() ([]geom.Angle, error) { return Steps(0, 60, 0) }, "step must be above 0, not 0"},
		{func() ([]geom.Angle, error) { return Steps(0, 60, -5) }, "step must be above 0, not -5"},
		{func() ([]geom.Angle, error) { return Steps(0, 60, nan) }, "step must be above 0, not NaN"},
		{func() ([]geom.Angle, error) { return Steps(0, 60, inf) }, "step must be above 0, not +Inf"},
	} {
		got, err := c.make()
		assert.EqualError(t, err, c.want)
		assert.Empty(t, got)
	}
}
