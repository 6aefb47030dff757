package budget_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/budget"
)

// seriesError is how far a probability may be off for where the series is cut:
// the worst sums, one large term and very small ones, are true to this.
// normal95 is how many standard deviations hold 95 in 100 of a normal
// distribution to either side of its middle: Φ⁻¹(0.975), exact mathematics.
const normal95 = 1.959963984540054

const seriesError = 2e-6

func one(s budget.Shape, size float64) budget.Sum { return budget.Sum{{Shape: s, Size: size}} }

func times(n int, t budget.Term) budget.Sum {
	var s budget.Sum
	for range n {
		s = append(s, t)
	}
	return s
}

// unit is a rectangle of standard deviation 1.
var unit = budget.Term{Shape: budget.Rectangular, Size: math.Sqrt(3)}

// The exact half widths of the additive models of JCGM 101:2008 9.2, and the
// digits it prints.
func TestAdditiveModels(t *testing.T) {
	fourth := budget.Term{Shape: budget.Rectangular, Size: 10 * math.Sqrt(3)}
	for _, c := range []struct {
		why        string
		sum        budget.Sum
		std, exact float64
		worst      float64
	}{
		{"9.2.2: four normal errors", times(4, budget.Term{Shape: budget.Normal, Size: 1}), 2, 2 * normal95, math.Inf(1)},
		{"9.2.3: four rectangles", times(4, unit), 2, 3.8794, 4 * math.Sqrt(3)},
		{"9.2.4: one of them ten times as wide", append(times(3, unit), fourth), math.Sqrt(103), 17.016, 13 * math.Sqrt(3)},
	} {
		t.Run(c.why, func(t *testing.T) {
			const printed = 0.0006 // the exact column is given to four decimals, the last to three
			assert.InDelta(t, c.std, c.sum.Std(), 1e-12)
			assert.InDelta(t, c.exact, c.sum.Distribution().HalfWidth(0.95), printed)
			assert.Equal(t, c.worst, c.sum.Worst())
		})
	}
	const decimals = 0.00006 // four decimals
	assert.InDelta(t, 3.8794, times(4, unit).Distribution().HalfWidth(0.95), decimals)
	assert.InDelta(t, 6.9282, times(4, unit).Worst(), decimals)
	assert.InDelta(t, 3.9199, times(4, budget.Term{Shape: budget.Normal, Size: 1}).Distribution().HalfWidth(0.95), decimals)
}

func TestStacks(t *testing.T) {
	stack := budget.Sum{{Shape: budget.Normal, Size: 0.20}, {Shape: budget.Normal, Size: 0.10}, {Shape: budget.Normal, Size: 0.15}}
	assert.InDelta(t, 0.26926, stack.Std(), 5e-6, "0.20, 0.10 and 0.15 as squares")
	assert.InDelta(t, 0.31623, times(10, budget.Term{Shape: budget.Normal, Size: 0.1}).Std(), 5e-6, "ten of 0.1")
	assert.InDelta(t, 1.0, times(10, budget.Term{Shape: budget.Rectangular, Size: 0.1}).Worst(), 1e-12)
}

// Closed forms for one term.
func TestOneTerm(t *testing.T) {
	for _, c := range []struct {
		shape  budget.Shape
		std    float64
		within func(x float64) float64 // for size 1
	}{
		{budget.Rectangular, 1 / math.Sqrt(3), func(x float64) float64 { return x }},
		{budget.Disc, 0.5, func(x float64) float64 { return 2 / math.Pi * (x*math.Sqrt(1-x*x) + math.Asin(x)) }},
		{budget.Circle, 1 / math.Sqrt2, func(x float64) float64 { return 2 / math.Pi * math.Asin(x) }},
	} {
		t.Run(c.shape.String(), func(t *testing.T) {
			tolerance := seriesError
			if c.shape == budget.Circle {
				tolerance = 5e-4 // alone its density has no bound at the ends, and the series falls as k^-1.5
			}
			s := one(c.shape, 2.5)
			d := s.Distribution()
			assert.InDelta(t, 2.5*c.std, s.Std(), 1e-12)
			assert.Equal(t, 2.5, s.Worst())
			for _, x := range []float64{0, 0.1, 0.5, 0.9, 0.99} {
				assert.InDelta(t, c.within(x), d.Within(2.5*x), tolerance, "%v", x)
				assert.InDelta(t, x, d.HalfWidth(c.within(x))/2.5, tolerance/0.3, "%v", x)
			}
			assert.Equal(t, 1.0, d.Within(2.5))
			assert.Equal(t, 0.0, d.Within(-1))
			assert.Equal(t, 0.0, d.Density(2.5))
		})
	}
	normal := one(budget.Normal, 2).Distribution()
	for _, x := range []float64{0.1, 1, 2, 3, 4} {
		assert.InDelta(t, math.Erf(x/math.Sqrt2), normal.Within(2*x), seriesError)
		assert.InDelta(t, math.Exp(-x*x/2)/(2*math.Sqrt(2*math.Pi)), normal.Density(2*x), seriesError)
	}
	assert.InDelta(t, 2*normal95, normal.HalfWidth(0.95), seriesError)
}

// Two rectangles make a triangle or a trapezium.
func TestTwoRectangles(t *testing.T) {
	const a, b = 1.0, 0.25
	d := budget.Sum{{Shape: budget.Rectangular, Size: a}, {Shape: budget.Rectangular, Size: b}}.Distribution()
	within := func(x float64) float64 {
		if x <= a-b {
			return x / a
		}
		left := a + b - x
		return 1 - left*left/(4*a*b)
	}
	for _, x := range []float64{0.2, 0.75, 0.8, 1, 1.2} {
		assert.InDelta(t, within(x), d.Within(x), seriesError, "%v", x)
	}
}

func TestNothingIsOff(t *testing.T) {
	for _, s := range []budget.Sum{nil, one(budget.Disc, 0), one(budget.Normal, 0)} {
		d := s.Distribution()
		assert.Equal(t, 0.0, s.Std())
		assert.Equal(t, 0.0, s.Worst())
		assert.Equal(t, 0.0, d.HalfWidth(0.95))
		assert.Equal(t, 1.0, d.Within(0))
		assert.Equal(t, 0.0, d.Density(0))
	}
	assert.Equal(t, 0.0, one(budget.Disc, 0).Share(0))
}

func drawSum(t *rapid.T) budget.Sum {
	var s budget.Sum
	for range rapid.IntRange(1, 6).Draw(t, "terms") {
		s = append(s, budget.Term{
			Shape: rapid.SampledFrom([]budget.Shape{budget.Normal, budget.Rectangular, budget.Disc}).Draw(t, "shape"),
			Size:  rapid.OneOf(rapid.Float64Range(0.1, 1), rapid.Float64Range(-0.001, -0.00001), rapid.Just(0.0)).Draw(t, "size"),
		})
	}
	return s
}

// TestDistributionHoldsTogether: probability grows with the distance, density is
// its slope, the half width turns it round, and the variance is its own.
func TestDistributionHoldsTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSum(t)
		if s.Std() == 0 {
			return
		}
		d := s.Distribution()
		reach := min(s.Worst(), 9*s.Std())
		p := rapid.Float64Range(0.01, 0.99).Draw(t, "p")
		x := d.HalfWidth(p)
		require.InDelta(t, p, d.Within(x), seriesError)
		require.LessOrEqual(t, x, reach*(1+1e-12))
		last := 0.0
		for k := range 50 {
			within := d.Within(reach * float64(k) / 50)
			require.GreaterOrEqual(t, within, last-seriesError)
			last = within
		}
		const thinnest = 0.001 // of the reach: a jump narrower than this shows no slope
		if s.Std() > thinnest*reach {
			h := reach * 1e-3
			mean := 0.0
			for k := range 9 {
				mean += d.Density(x+h*(float64(k)-4)/4) / 9
			}
			slope := (d.Within(x+h*1.125) - d.Within(x-h*1.125)) / (2 * 2.25 * h)
			require.InDelta(t, slope, mean, 0.02/reach+0.02*mean)
		}
		shares := 0.0
		for i := range s {
			shares += s.Share(i)
		}
		require.InDelta(t, 1, shares, 1e-12)
		k := rapid.Float64Range(0.01, 100).Draw(t, "k")
		var larger budget.Sum
		for _, term := range s {
			larger = append(larger, term.Times(-k))
		}
		require.InDelta(t, k*s.Std(), larger.Std(), 1e-9*k)
		require.InDelta(t, k*x, larger.Distribution().HalfWidth(p), 1e-4*k*reach)
	})
}

func TestShapeNames(t *testing.T) {
	assert.Equal(t, "disc", budget.Disc.String())
	assert.Equal(t, "unknown", budget.Shape(99).String())
}

func TestDiscOf(t *testing.T) {
	_, ok := budget.DiscOf(nil)
	assert.False(t, ok)
	// Evenly over a disc of radius 1 the distances' squares are even: 0.05, 0.15 …
	var misses []float64
	for k := range 10 {
		misses = append(misses, math.Sqrt((float64(k)+0.5)/10))
	}
	r, _ := budget.DiscOf(misses)
	assert.InDelta(t, 1, r, 0.03, "ten holes of a disc of radius 1")
	r, _ = budget.DiscOf([]float64{0.4})
	assert.InDelta(t, 0.6, r, 1e-12, "of one hole the farthest is 2/3 out")
	r, _ = budget.DiscOf([]float64{0.3, 0.3, 0.3, 0.3})
	assert.InDelta(t, 0.3*math.Sqrt2, r, 1e-12, "the mean square of a disc of radius r is r²/2")
	r, _ = budget.DiscOf([]float64{0.1, 0.1, 0.1, 0.6})
	assert.InDelta(t, 0.675, r, 1e-12, "one bad hole counts")
}
