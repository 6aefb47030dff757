package cutline_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/cutline"
	"stopwright/detent/geom"
)

// lowest finds the least value of a convex function by cutting the interval in
// three: another way than the one under test.
func lowest(f func(float64) float64) float64 {
	lo, hi := -1e5, 1e5
	for range 400 {
		a, b := lo+(hi-lo)/3, hi-(hi-lo)/3
		if f(a) <= f(b) {
			hi = b
		} else {
			lo = a
		}
	}
	return f(lo)
}

func TestBestIsAsLowAsTheLowest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := anyLine(t)
		leans := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) geom.Angle {
			return geom.Angle(rapid.IntRange(-80, 80).Draw(t, "lean"))
		}), 1, 8).Draw(t, "leans")
		fence := func(f float64) float64 { return cutline.Line{Offset: l.Offset, Fence: f}.Travel(leans).Wander() }
		if best, ok := l.BestFence(leans); ok {
			assert.InDelta(t, lowest(fence), fence(best), rounding)
		} else {
			assert.InDelta(t, fence(-50), fence(70), rounding, "any distance serves")
		}
		offset := func(e float64) float64 { return cutline.Line{Offset: e, Fence: l.Fence}.Travel(leans).Wander() }
		if best, ok := l.BestOffset(leans); ok {
			assert.InDelta(t, lowest(offset), offset(best), rounding)
		} else {
			assert.InDelta(t, offset(-50), offset(70), rounding, "any offset serves")
		}
	})
}

func TestBestClosedForms(t *testing.T) {
	best, ok := cutline.Line{Fence: 12}.BestFence([]geom.Angle{-45, 0, 30})
	require.True(t, ok)
	assert.InDelta(t, 0, best, rounding, "a line through the pivot wants the fence on it")
	best, ok = cutline.Line{Offset: 2, Fence: 12}.BestFence([]geom.Angle{-45, 0, 45})
	require.True(t, ok)
	assert.LessOrEqual(t, math.Abs(best), 2*(math.Sqrt2-1)/1+rounding, "alike on both sides")
	assert.InDelta(t, 2*(math.Sqrt2-1), cutline.Line{Offset: 2, Fence: best}.Travel([]geom.Angle{-45, 0, 45}).Wander(), rounding)
	// With 0 and 45 alone, e + 0 = e·√2 + f.
	best, _ = cutline.Line{Offset: 2}.BestFence([]geom.Angle{0, 45})
	assert.InDelta(t, 2-2*math.Sqrt2, best, rounding)
	_, ok = cutline.Line{Offset: 2}.BestFence([]geom.Angle{20, 20})
	assert.False(t, ok, "one angle leaves it open")
	_, ok = cutline.Line{Fence: 2}.BestOffset([]geom.Angle{-20, 20})
	assert.False(t, ok, "as steep left as right: the offset moves both alike")
	_, ok = cutline.Line{Fence: 2}.BestFence([]geom.Angle{120})
	assert.False(t, ok, "no crossing at all")
}

func TestBestStaysWhereItIsWhenThatIsAsGood(t *testing.T) {
	// From -36 to 36 with an offset, no fence distance near 0 is the worst: the
	// wander is level there, and a fence that is on the level stays.
	leans := []geom.Angle{-36, 0, 36}
	for _, now := range []float64{-0.2, 0, 0.3} {
		best, ok := cutline.Line{Offset: 2, Fence: now}.BestFence(leans)
		require.True(t, ok)
		was := cutline.Line{Offset: 2, Fence: now}.Travel(leans).Wander()
		is := cutline.Line{Offset: 2, Fence: best}.Travel(leans).Wander()
		assert.LessOrEqual(t, is, was+rounding)
	}
}

func TestSensitivityIsTheSlope(t *testing.T) {
	const by = 1e-3 // mm: small against the lengths below, large against rounding
	leans := []geom.Angle{-45, -10, 0, 30, 45}
	for _, l := range []cutline.Line{{Offset: 2, Fence: 12}, {Offset: -1, Fence: 3}, {Offset: 0, Fence: 0}, {Offset: 3, Fence: -40}} {
		s := l.Sensitivity(leans)
		was := l.Travel(leans).Wander()
		slope := func(offset, fence float64) float64 {
			return (cutline.Line{Offset: l.Offset + offset, Fence: l.Fence + fence}.Travel(leans).Wander() - was) / by
		}
		const near = 1e-5
		assert.InDelta(t, slope(by, 0), s.ToolRight, near)
		assert.InDelta(t, slope(-by, 0), s.ToolLeft, near)
		assert.InDelta(t, slope(0, by), s.FenceAway, near)
		assert.InDelta(t, slope(0, -by), s.FenceNear, near)
	}
	assert.Zero(t, cutline.Line{Offset: 2}.Sensitivity(nil))
}
