package cutline_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/cutline"
	"stopwright/detent/geom"
	"stopwright/detent/squares"
)

// marked returns the marks that a line leaves on a board laid with its own zero
// datum mm left of the pivot, each off by noise.
func marked(l cutline.Line, datum float64, noise func() float64, leans ...geom.Angle) []cutline.Mark {
	var out []cutline.Mark
	for _, a := range leans {
		x, _ := l.Crossing(a)
		out = append(out, cutline.Mark{Lean: a, X: datum + x + noise()})
	}
	return out
}

func none() float64 { return 0 }

// solve is Gauss's elimination of the normal equations with pivots: another
// routine than the one that Find uses.
func solve(marks []cutline.Mark) [3]float64 {
	var m [3][4]float64
	for _, k := range marks {
		s, c := math.Sincos(k.Lean.Radians())
		row := [3]float64{1, 1 / c, s / c}
		for i := range 3 {
			for j := range 3 {
				m[i][j] += row[i] * row[j]
			}
			m[i][3] += row[i] * k.X
		}
	}
	for col := range 3 {
		top := col
		for i := col; i < 3; i++ {
			if math.Abs(m[i][col]) > math.Abs(m[top][col]) {
				top = i
			}
		}
		m[col], m[top] = m[top], m[col]
		for i := range 3 {
			if i != col {
				k := m[i][col] / m[col][col]
				for j := range 4 {
					m[i][j] -= k * m[col][j]
				}
			}
		}
	}
	return [3]float64{m[0][3] / m[0][0], m[1][3] / m[1][1], m[2][3] / m[2][2]}
}

func TestFindGetsBackWhatMadeTheMarks(t *testing.T) {
	is := cutline.Line{Offset: 1.5, Fence: 12}
	f, ok := cutline.Find(marked(is, 200, none, -45, -22.5, 0, 36))
	require.True(t, ok)
	assert.InDelta(t, 1.5, f.Offset, rounding)
	assert.InDelta(t, 12, f.Fence, rounding)
	assert.InDelta(t, 200, f.Datum, rounding)
	assert.True(t, f.Judged)
	assert.InDelta(t, 0, f.OffsetStd, rounding, "true marks leave no doubt")
	three, ok := cutline.Find(marked(is, 200, none, -45, 0, 36))
	require.True(t, ok)
	assert.InDelta(t, 1.5, three.Offset, rounding)
	assert.False(t, three.Judged, "three marks leave nothing over to judge by")
}

func TestFindAgreesWithAnotherSolver(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 50 {
		marks := marked(cutline.Line{Offset: r.NormFloat64(), Fence: 10 * r.NormFloat64()}, 100, r.NormFloat64, -50, -31, -8, 0, 15, 42, 60)
		f, ok := cutline.Find(marks)
		require.True(t, ok)
		want := solve(marks)
		const near = 1e-8 // mm: normal equations lose half the digits
		assert.InDelta(t, want[0], f.Datum, near)
		assert.InDelta(t, want[1], f.Offset, near)
		assert.InDelta(t, want[2], f.Fence, near)
	}
}

// TestStandardErrorsCover: intervals said to hold the truth 95 times in 100 hold
// it 93 to 97 times in 100, over 2,000 boards marked with a known error. By
// chance alone the share would stray by 0.5 in 100.
func TestStandardErrorsCover(t *testing.T) {
	const trials, noise = 2000, 0.15 // mm
	r := rand.New(rand.NewPCG(7, 8))
	is := cutline.Line{Offset: -0.8, Fence: 4}
	offsets, fences := 0, 0
	for range trials {
		f, ok := cutline.Find(marked(is, 150, func() float64 { return noise * r.NormFloat64() }, -45, -36, -22.5, 0, 22.5, 36, 45))
		require.True(t, ok)
		t95 := squares.Within95(4)
		if math.Abs(f.Offset-is.Offset) <= t95*f.OffsetStd {
			offsets++
		}
		if math.Abs(f.Fence-is.Fence) <= t95*f.FenceStd {
			fences++
		}
	}
	for _, held := range []int{offsets, fences} {
		assert.GreaterOrEqual(t, held, trials*93/100)
		assert.LessOrEqual(t, held, trials*97/100)
	}
}

func TestTooFewOrTooCloseTogether(t *testing.T) {
	is := cutline.Line{Offset: 1, Fence: 5}
	for why, leans := range map[string][]geom.Angle{
		"two marks":           {0, 30},
		"three at two angles": {0, 30, 30},
		"as steep left as right and none between": {-30, 30, 30, -30},
		"beyond the steepest does not count":      {0, 30, 88},
	} {
		_, ok := cutline.Find(marked(is, 0, none, leans...))
		assert.False(t, ok, why)
	}
	close, ok := cutline.Find(marked(is, 0, none, -5, 0, 5))
	require.True(t, ok)
	assert.True(t, close.Weak(), "over 5 degrees the offset is lost in the marks' own error")
	wide, ok := cutline.Find(marked(is, 0, none, -45, 0, 45))
	require.True(t, ok)
	assert.False(t, wide.Weak())
	// Of three marks offset·(√2 - 1) is the mean of two less the third.
	assert.InDelta(t, math.Sqrt(1.5)/(math.Sqrt2-1), wide.OffsetGain, rounding)
	assert.InDelta(t, math.Sqrt(0.5), wide.FenceGain, rounding)
}

// TestMarkNext tries every lean in turn and keeps the one that leaves least
// doubt.
func TestMarkNext(t *testing.T) {
	leans := []geom.Angle{-45, -30, -15, 0, 15, 30, 45, 60, 90}
	for _, have := range [][]geom.Angle{{-5, 0, 5}, {-45, 0, 45}, {0, 10, 20, 30}} {
		marks := marked(cutline.Line{}, 0, none, have...)
		best, least := -1, math.Inf(1)
		for i, a := range leans[:8] {
			f, ok := cutline.Find(append(marks[:len(marks):len(marks)], cutline.Mark{Lean: a}))
			require.True(t, ok)
			if v := f.OffsetGain*f.OffsetGain + f.FenceGain*f.FenceGain; best < 0 || v < least*(1-1e-6) {
				best, least = i, v
			}
		}
		got, ok := cutline.MarkNext(marks, leans)
		require.True(t, ok)
		assert.Equal(t, leans[best], leans[got], "after %v", have)
	}
	// Among many sets of marks, whichever is chosen leaves as little doubt as any.
	r := rand.New(rand.NewPCG(10, 11))
	for range 200 {
		have := make([]geom.Angle, 3+r.IntN(3))
		for i := range have {
			have[i] = geom.Angle(r.IntN(121) - 60)
		}
		marks := marked(cutline.Line{}, 0, none, have...)
		doubt := func(a geom.Angle) float64 {
			f, ok := cutline.Find(append(marks[:len(marks):len(marks)], cutline.Mark{Lean: a}))
			if !ok {
				return math.Inf(1)
			}
			return f.OffsetGain*f.OffsetGain + f.FenceGain*f.FenceGain
		}
		if math.IsInf(doubt(7.5), 1) || doubt(7.5) > 1e4 {
			continue // the three that weigh next to nothing would count
		}
		least := math.Inf(1)
		for _, a := range leans[:8] {
			least = math.Min(least, doubt(a))
		}
		got, ok := cutline.MarkNext(marks, leans)
		require.True(t, ok)
		require.InEpsilon(t, least, doubt(leans[got]), 0.02, "after %v: the three change a doubt by less", have)
	}
	_, ok := cutline.MarkNext(nil, []geom.Angle{90})
	assert.False(t, ok)
	next, ok := cutline.MarkNext(marked(cutline.Line{}, 0, none, 0), leans)
	require.True(t, ok)
	assert.NotEqual(t, geom.Angle(0), leans[next], "another angle than the one there is")
}
