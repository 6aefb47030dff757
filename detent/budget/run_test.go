package budget_test

import (
	"context"
	"math"
	"runtime"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/budget"
)

// adding is a model with one output, the sum of errors.
func adding(s budget.Sum) budget.Model {
	return budget.Model{Outputs: 1, Work: func(d *budget.Draw, yield func(int, []float64)) {
		y := d.Column()
		clear(y)
		for _, t := range s {
			d.Add(y, t)
		}
		yield(0, y)
	}}
}

func sampled(t require.TestingT, m budget.Model, o budget.Options) budget.Result {
	r, err := budget.Run(context.Background(), m, o)
	require.NoError(t, err)
	return r
}

// JCGM 101:2008 Tables 2 to 4 print three digits of a run of 10^6 trials.
func TestSampledAdditiveModels(t *testing.T) {
	wide := budget.Term{Shape: budget.Rectangular, Size: 10 * math.Sqrt(3)}
	for _, c := range []struct {
		why                string
		sum                budget.Sum
		std, half, printed float64
	}{
		{"9.2.2", times(4, budget.Term{Shape: budget.Normal, Size: 1}), 2.0, 3.92, 0.015},
		{"9.2.3", times(4, unit), 2.0, 3.88, 0.015},
		{"9.2.4", append(times(3, unit), wide), 10.1, 17.0, 0.06},
	} {
		t.Run(c.why, func(t *testing.T) {
			e := sampled(t, adding(c.sum), budget.Options{Seed: 1, Most: 1e6}).Estimates[0]
			assert.InDelta(t, 0, e.Mean, 5*c.std/1e3, "five standard errors")
			assert.InDelta(t, c.std, e.Std, c.printed)
			assert.InDelta(t, c.half, e.HalfWidth(), c.printed)
			s := e.Shortest()
			assert.InDelta(t, 2*c.half, s.High-s.Low, 2*c.printed)
			assert.LessOrEqual(t, s.High-s.Low, 2*e.HalfWidth()+1e-9)
		})
	}
}

// The two ways agree for any sum, within five times what the trials scatter.
func TestTrialsAgreeWithFormulas(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSum(t)
		r := sampled(t, adding(s), budget.Options{Seed: rapid.Uint64().Draw(t, "seed"), Most: 1 << 16})
		e, n := r.Estimates[0], math.Sqrt(float64(r.Trials))
		require.InDelta(t, 0, e.Mean, 6*s.Std()/n+1e-15)
		require.InDelta(t, s.Std(), e.Std, 6*s.Std()/n+1e-15)
		if s.Std() == 0 {
			require.Equal(t, 0.0, e.HalfWidth())
			return
		}
		// Of trials that are within the half width with probability 0.95 so many
		// are: a binomial's scatter, and the histogram's bins.
		d := s.Distribution()
		x := d.HalfWidth(0.95)
		held := e.Below(x) - e.Below(-x)
		require.InDelta(t, 0.95, held, 6*math.Sqrt(0.95*0.05)/n+1e-3)
	})
}

// A shape's trials have its distribution: none of many steps is off by more than
// the law of Kolmogorov and Smirnov allows once in 10^8 runs.
func TestEveryShapeIsDrawnTrue(t *testing.T) {
	for _, shape := range []budget.Shape{budget.Normal, budget.Rectangular, budget.Disc, budget.Circle} {
		t.Run(shape.String(), func(t *testing.T) {
			s := one(shape, 1.5)
			r := sampled(t, adding(s), budget.Options{Seed: 7, Most: 4e6})
			e, d := r.Estimates[0], s.Distribution()
			limit := math.Sqrt(math.Log(2/1e-8)/2) / math.Sqrt(float64(r.Trials))
			for k := -29; k <= 29; k++ { // short of the circle's ends, where one bin holds much
				x := 1.5 * float64(k) / 30
				want := 0.5 + math.Copysign(d.Within(math.Abs(x))/2, x)
				if k == 0 {
					want = 0.5
				}
				assert.InDelta(t, want, e.Below(x), limit+1e-4, "%v", x)
			}
		})
	}
}

// A disc's term is one coordinate of a point in it: drawn here the plain way.
func TestDiscIsACoordinateOfAPoint(t *testing.T) {
	points := budget.Model{Outputs: 1, Work: func(d *budget.Draw, yield func(int, []float64)) {
		y, u := d.Column(), d.Column()
		d.Fill(u, budget.Term{Shape: budget.Rectangular, Size: 0.5})
		d.Fill(y, budget.Term{Shape: budget.Circle, Size: 1})
		for i := range y {
			y[i] *= math.Sqrt(u[i] + 0.5)
		}
		yield(0, y)
	}}
	a := sampled(t, points, budget.Options{Seed: 3, Most: 2e6}).Estimates[0]
	b := sampled(t, adding(one(budget.Disc, 1)), budget.Options{Seed: 4, Most: 2e6}).Estimates[0]
	const scatter = 0.003 // five standard errors of a quantile of 2·10^6
	for _, p := range []float64{0.025, 0.2, 0.5, 0.9, 0.975} {
		assert.InDelta(t, a.Quantile(p), b.Quantile(p), scatter)
	}
}

// A model need not be a sum, nor its output symmetric: the square of a normal
// error is within [0, 3.8415] 95 times in 100 (chi-squared of one degree), which
// is also its shortest interval.
func TestAnyModel(t *testing.T) {
	square := budget.Model{Outputs: 1, Work: func(d *budget.Draw, yield func(int, []float64)) {
		y := d.Column()
		d.Fill(y, budget.Term{Shape: budget.Normal, Size: 1})
		for i := range y {
			y[i] *= y[i]
		}
		yield(0, y)
	}}
	e := sampled(t, square, budget.Options{Seed: 5, Most: 4e6}).Estimates[0]
	const scatter = 0.03
	assert.InDelta(t, 1, e.Mean, 0.01)
	assert.InDelta(t, 0, e.Shortest().Low, scatter)
	assert.InDelta(t, 3.8415, e.Shortest().High, scatter)
	assert.InDelta(t, 0.000982, e.Symmetric().Low, scatter)
	assert.InDelta(t, 5.0239, e.Symmetric().High, scatter)
}

// Of two outputs with a common error and one of their own each, the difference
// has the common one no more, and the sum has it twice.
func TestCommonErrors(t *testing.T) {
	term := budget.Term{Shape: budget.Disc, Size: 1}
	m := budget.Model{Outputs: 3, Work: func(d *budget.Draw, yield func(int, []float64)) {
		a, b, c := d.Column(), d.Column(), d.Column()
		for _, y := range [][]float64{a, b} {
			d.Fill(y, term)
			d.AddCommon(y, 5, term)
		}
		clear(c)
		d.AddCommon(c, 6, term)
		d.AddCommon(c, 5, term.Times(-1))
		yield(2, c)
		for i := range c {
			c[i] = a[i] - b[i]
		}
		yield(0, c)
		for i := range c {
			c[i] = a[i] + b[i]
		}
		yield(1, c)
	}}
	e := sampled(t, m, budget.Options{Seed: 1, Most: 1e6}).Estimates
	const scatter = 0.004 // five standard errors
	assert.InDelta(t, math.Sqrt(0.25+0.25), e[0].Std, scatter)
	assert.InDelta(t, math.Sqrt(0.25+0.25+4*0.25), e[1].Std, scatter)
	assert.InDelta(t, math.Sqrt(0.25+0.25), e[2].Std, scatter, "two names are independent")
}

func TestTheSameOnAnyNumberOfProcessors(t *testing.T) {
	o := budget.Options{Seed: 42, Most: 300_000, Digits: 1}
	m := adding(times(3, budget.Term{Shape: budget.Disc, Size: 1}))
	before := runtime.GOMAXPROCS(1)
	defer runtime.GOMAXPROCS(before)
	a := sampled(t, m, o)
	runtime.GOMAXPROCS(4)
	b := sampled(t, m, o)
	assert.Equal(t, a, b)
	o.Seed++
	assert.NotEqual(t, a, sampled(t, m, o), "another seed")
}

// An adaptive run stops at the tolerance it was given, and the results are within
// it of the exact ones (two standard deviations: four here).
func TestAdaptiveRun(t *testing.T) {
	s := budget.Sum{{Shape: budget.Disc, Size: 1}, {Shape: budget.Rectangular, Size: 0.5}}
	exact := s.Distribution().HalfWidth(0.95)
	for digits, limit := range map[int]float64{1: 0.05, 2: 0.005} {
		r := sampled(t, adding(s), budget.Options{Seed: 9, Most: 2e7, Digits: digits})
		require.True(t, r.Settled)
		assert.InDelta(t, exact, r.Estimates[0].HalfWidth(), 2*limit)
		assert.InDelta(t, s.Std(), r.Estimates[0].Std, 2*limit)
	}
	short := sampled(t, adding(s), budget.Options{Seed: 9, Most: 1, Digits: 6})
	assert.False(t, short.Settled, "one block cannot tell")
	assert.Equal(t, 1<<14, short.Trials, "a whole block")
	all := sampled(t, adding(s), budget.Options{Seed: 9, Most: 1 << 18})
	assert.False(t, all.Settled)
	assert.Equal(t, 1<<18, all.Trials)
}

func TestRunStops(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	m := adding(one(budget.Disc, 1))
	work, calls := m.Work, 0
	m.Work = func(d *budget.Draw, yield func(int, []float64)) {
		if calls++; calls == 3 {
			cancel()
		}
		work(d, yield)
	}
	before := runtime.GOMAXPROCS(1)
	defer runtime.GOMAXPROCS(before)
	_, err := budget.Run(ctx, m, budget.Options{Most: 1 << 40})
	assert.ErrorIs(t, err, context.Canceled)
}

func TestBars(t *testing.T) {
	e := sampled(t, adding(one(budget.Rectangular, 2)), budget.Options{Seed: 1, Most: 1e6}).Estimates[0]
	low, width, density := e.Bars(20)
	area := 0.0
	for i, y := range density {
		area += y * width
		if x := low + width*float64(i); x > -2 && x+width < 2 {
			assert.InDelta(t, 0.25, y, 0.01)
		}
	}
	assert.InDelta(t, 1, area, 1e-9)
	still := sampled(t, adding(nil), budget.Options{Most: 1}).Estimates[0]
	_, width, _ = still.Bars(5)
	assert.Equal(t, 0.0, width, "nothing to spread")
	assert.Equal(t, 1.0, still.Below(0.1))
	assert.Equal(t, 0.0, still.Below(-0.1))
}
