package geom

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// sinCosTolerance covers the roundings of the conversion to radians and of the
// sine itself, for values of at most 1: two units in the last place.
const sinCosTolerance = 2.5e-16

// One unit in the last place to either side of half a turn.
var (
	over180  = Angle(math.Nextafter(180, 360))
	under180 = Angle(math.Nextafter(180, 0))
	negZero  = Angle(math.Copysign(0, -1))
)

func TestWrap(t *testing.T) {
	for _, c := range []struct {
		in, want Angle
		why      string
	}{
		{0, 0, "in range"},
		{negZero, 0, "-0 is never reported"},
		{180, 180, "the closed end"},
		{-180, 180, "the open end is the closed end"},
		{under180, under180, "one ulp inside stays as it is"},
		{over180, over180 - 360, "one ulp outside comes in at the other end"},
		{-under180, -under180, "one ulp inside the open end"},
		{-over180, 360 - over180, "one ulp outside the open end"},
		{360, 0, "a full turn"},
		{-360, 0, "a full turn back, not -0"},
		{540, 180, "a turn and a half"},
		{-540, 180, "a turn and a half back"},
		{350, -10, "the short way"},
		{-350, 10, "the short way back"},
		{3610, 10, "many turns"},
		{5e-324, 5e-324, "the smallest angle there is"},
	} {
		got := c.in.Wrap()
		assert.Equal(t, c.want, got, c.why)
		assert.Equal(t, math.Signbit(float64(c.want)), math.Signbit(float64(got)), c.why)
	}
	for _, a := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		assert.True(t, math.IsNaN(Angle(a).Wrap().Degrees()), "%v has no direction", a)
	}
}

func TestTurn(t *testing.T) {
	under360 := Angle(math.Nextafter(360, 0))
	for _, c := range []struct {
		in, want Angle
		why      string
	}{
		{0, 0, "the closed end"},
		{negZero, 0, "-0 is never reported"},
		{360, 0, "the open end"},
		{-360, 0, "a full turn back, not -0"},
		{under360, under360, "one ulp inside"},
		{-90, 270, "back from zero"},
		{725, 5, "two turns"},
		{-1e-20, 0, "too small to be told from a full turn"},
	} {
		got := c.in.Turn()
		assert.Equal(t, c.want, got, c.why)
		assert.False(t, math.Signbit(float64(got)), c.why)
	}
}

func TestWrapAndTurnKeepTheDirection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		// Quarter degrees are exact in binary, so that whole turns are too.
		a := Angle(rapid.IntRange(-10_000, 10_000).Draw(t, "quarters")) / 4
		w, u := a.Wrap(), a.Turn()
		require.True(t, w > -180 && w <= 180, "%v", w)
		require.True(t, u >= 0 && u < 360, "%v", u)
		require.Zero(t, math.Mod(float64(a-w), 360))
		require.Zero(t, math.Mod(float64(a-u), 360))
	})
}

func TestRadiansAndBack(t *testing.T) {
	assert.Equal(t, math.Pi, Angle(180).Radians(), "half a turn")
	assert.Equal(t, Angle(180), FromRadians(math.Pi), "half a turn back")
	assert.Equal(t, Angle(-90), FromRadians(-math.Pi/2), "a quarter turn back")
	assert.Equal(t, Angle(12.5), Angle(-12.5).Abs())
	assert.Equal(t, 12.5, Angle(12.5).Degrees())
}

func TestSinCosIsExact(t *testing.T) {
	r3, r2 := math.Sqrt(3)/2, math.Sqrt2/2
	for _, c := range []struct {
		a        Angle
		sin, cos float64
	}{
		{0, 0, 1},
		{30, 0.5, r3},
		{45, r2, r2},
		{60, r3, 0.5},
		{90, 1, 0},
		{120, r3, -0.5},
		{135, r2, -r2},
		{150, 0.5, -r3},
		{180, 0, -1},
		{210, -0.5, -r3},
		{225, -r2, -r2},
		{240, -r3, -0.5},
		{270, -1, 0},
		{300, -r3, 0.5},
		{315, -r2, r2},
		{330, -0.5, r3},
	} {
		for _, turns := range []Angle{0, -360, 360, -720, 36_000} {
			sin, cos := (c.a + turns).SinCos()
			assert.Equal(t, c.sin, sin, "sin %v", c.a+turns)
			assert.Equal(t, c.cos, cos, "cos %v", c.a+turns)
			assert.False(t, sin == 0 && math.Signbit(sin), "-0: sin %v", c.a+turns)
			assert.False(t, cos == 0 && math.Signbit(cos), "-0: cos %v", c.a+turns)
		}
	}
	sin, cos := Angle(math.NaN()).SinCos()
	assert.True(t, math.IsNaN(sin) && math.IsNaN(cos), "no angle")
}

func TestSinCosAgainstSeries(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(-360, 360).Draw(t, "degrees")
		sin, cos := Angle(a).SinCos()
		wantSin, wantCos := bigSinCos(a)
		require.InDelta(t, wantSin, sin, sinCosTolerance)
		require.InDelta(t, wantCos, cos, sinCosTolerance)
	})
}

func TestSinCosMirrors(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := Angle(rapid.Float64Range(0, 360).Draw(t, "degrees"))
		sin, cos := a.SinCos()
		mirrorSin, mirrorCos := (-a).SinCos()
		require.Equal(t, -sin+0, mirrorSin, "a pattern of stops on both sides is symmetric to the last bit")
		require.Equal(t, cos, mirrorCos)
	})
}
