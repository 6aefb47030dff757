package squares_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/squares"
)

// digits is how far, as a share, coefficients may be from those of exact
// arithmetic: 1e-16 grown by the conditioning of these small systems.
const digits = 1e-9

// exactly solves the normal equations in rational arithmetic by Cramer's rule:
// another way than the reflections, and without rounding.
func exactly(rows [][]float64, y []float64) []float64 {
	n := len(rows[0])
	normal := make([][]*big.Rat, n)
	right := make([]*big.Rat, n)
	rat := func(x float64) *big.Rat { return new(big.Rat).SetFloat64(x) }
	for j := range n {
		normal[j] = make([]*big.Rat, n)
		right[j] = new(big.Rat)
		for k := range n {
			normal[j][k] = new(big.Rat)
			for i := range rows {
				normal[j][k].Add(normal[j][k], new(big.Rat).Mul(rat(rows[i][j]), rat(rows[i][k])))
			}
		}
		for i := range rows {
			right[j].Add(right[j], new(big.Rat).Mul(rat(rows[i][j]), rat(y[i])))
		}
	}
	out := make([]float64, n)
	whole := determinant(normal)
	for j := range n {
		swapped := make([][]*big.Rat, n)
		for i := range n {
			swapped[i] = append([]*big.Rat{}, normal[i]...)
			swapped[i][j] = right[i]
		}
		out[j], _ = new(big.Rat).Quo(determinant(swapped), whole).Float64()
	}
	return out
}

func determinant(m [][]*big.Rat) *big.Rat {
	if len(m) == 1 {
		return m[0][0]
	}
	sum := new(big.Rat)
	for j := range m {
		minor := make([][]*big.Rat, 0, len(m)-1)
		for _, row := range m[1:] {
			minor = append(minor, append(append([]*big.Rat{}, row[:j]...), row[j+1:]...))
		}
		term := new(big.Rat).Mul(m[0][j], determinant(minor))
		if j%2 == 1 {
			term.Neg(term)
		}
		sum.Add(sum, term)
	}
	return sum
}

func random(r *rand.Rand, m, n int) (rows [][]float64, y []float64) {
	for range m {
		row := make([]float64, n)
		for j := range row {
			row[j] = r.NormFloat64()
		}
		rows, y = append(rows, row), append(y, r.NormFloat64())
	}
	return rows, y
}

func TestAgreesWithExactArithmetic(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for m := 1; m <= 12; m++ {
		for n := 1; n <= min(m, 4); n++ {
			rows, y := random(r, m, n)
			f, ok := squares.Of(rows, y)
			require.True(t, ok)
			for j, want := range exactly(rows, y) {
				assert.InDelta(t, want, f.Coef[j], digits*(1+math.Abs(want)), "%d readings, %d unknowns", m, n)
			}
			assert.Equal(t, m-n, f.Free)
		}
	}
}

// TestStraightLineByHand fits the line of four points,
// y = 3.5 + 1.4x through (1, 6), (2, 5), (3, 7), (4, 10): left over 1.1, -1.3,
// -0.7, 0.9, whose squares add up to 4.2 over 2 free readings.
func TestStraightLineByHand(t *testing.T) {
	f, ok := squares.Of([][]float64{{1, 1}, {1, 2}, {1, 3}, {1, 4}}, []float64{6, 5, 7, 10})
	require.True(t, ok)
	assert.InDelta(t, 3.5, f.Coef[0], digits)
	assert.InDelta(t, 1.4, f.Coef[1], digits)
	noise, ok := f.Noise()
	require.True(t, ok)
	assert.InDelta(t, math.Sqrt(2.1), noise, digits)
	slope, _ := f.Std(1)
	assert.InDelta(t, math.Sqrt(2.1/5), slope, digits, "the squares of x about its mean add up to 5")
	assert.InDelta(t, 0.25, f.Spread([]float64{1, 2.5}), digits, "at the mean of x: one over the readings")
}

func TestTooLittleToTell(t *testing.T) {
	for why, c := range map[string]struct {
		rows [][]float64
		y    []float64
	}{
		"nothing":                      {},
		"fewer readings than unknowns": {[][]float64{{1, 2}}, []float64{3}},
		"the same column twice":        {[][]float64{{1, 1}, {2, 2}, {3, 3}}, []float64{1, 2, 3}},
		"a column of noughts":          {[][]float64{{1, 0}, {2, 0}}, []float64{1, 2}},
		"rows of unlike lengths":       {[][]float64{{1, 2}, {3}}, []float64{1, 2}},
		"a reading missing":            {[][]float64{{1}, {2}}, []float64{1}},
		"no unknowns":                  {[][]float64{{}, {}}, []float64{1, 2}},
	} {
		_, ok := squares.Of(c.rows, c.y)
		assert.False(t, ok, why)
	}
	f, ok := squares.Of([][]float64{{1, 0}, {1, 1}}, []float64{1, 2})
	require.True(t, ok, "as many as unknowns")
	_, judged := f.Noise()
	assert.False(t, judged, "and nothing left to judge by")
}

// TestStrange leaves each reading out in turn and asks the fit of the others
// what it should have been: the definition, not the shortcut.
func TestStrange(t *testing.T) {
	rows, y := random(rand.New(rand.NewPCG(3, 4)), 9, 3)
	f, ok := squares.Of(rows, y)
	require.True(t, ok)
	for i := range rows {
		others := append(append([][]float64{}, rows[:i]...), rows[i+1:]...)
		rest, ok := squares.Of(others, append(append([]float64{}, y[:i]...), y[i+1:]...))
		require.True(t, ok)
		noise, _ := rest.Noise()
		said := 0.0
		for j, c := range rest.Coef {
			said += c * rows[i][j]
		}
		got, ok := f.Strange(i, 0)
		require.True(t, ok)
		assert.InDelta(t, (y[i]-said)/(noise*math.Sqrt(1+rest.Spread(rows[i]))), got, digits*10)
	}
}

func TestStrangeAtItsEnds(t *testing.T) {
	ones := [][]float64{{1}, {1}, {1}, {1}}
	f, _ := squares.Of(ones, []float64{2, 2, 2, 3})
	got, ok := f.Strange(3, 0)
	assert.True(t, ok)
	assert.Equal(t, squares.Certain, got, "three agree to the last digit, one does not")
	got, _ = f.Strange(3, 0.5)
	assert.InDelta(t, 0.75/(0.5*math.Sqrt(0.75)), got, digits, "known to be no better than that")
	f, _ = squares.Of(ones, []float64{2, 2, 2, 2})
	got, ok = f.Strange(0, 0)
	assert.True(t, ok)
	assert.Zero(t, got, "all agree")
	f, _ = squares.Of(ones[:2], []float64{2, 3})
	_, ok = f.Strange(0, 0)
	assert.False(t, ok, "one other reading has no spread to be judged by")
}

// TestWithin95 holds the quantiles to a table of Student's distribution (as in
// JCGM 100:2008, table G.2, column 95 %).
func TestWithin95(t *testing.T) {
	const printed = 0.006 // the table has two decimals
	for free, want := range map[int]float64{
		1: 12.71, 2: 4.30, 3: 3.18, 4: 2.78, 5: 2.57, 6: 2.45, 7: 2.36, 8: 2.31, 9: 2.26, 10: 2.23,
		15: 2.13, 20: 2.09, 30: 2.04, 50: 2.01, 100: 1.984, 1 << 20: 1.960,
	} {
		assert.InDelta(t, want, squares.Within95(free), printed, "%d free", free)
	}
	assert.True(t, math.IsInf(squares.Within95(0), 1))
	// The same table's column 99.73 %.
	for free, want := range map[int]float64{1: 235.80, 2: 19.21, 5: 5.51, 10: 3.96, 50: 3.16} {
		assert.InDelta(t, want, squares.Within(0.9973, free), want*2e-3, "%d free", free)
	}
}
