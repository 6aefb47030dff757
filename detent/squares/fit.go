package squares

import "math"

// Fit is the law y = c1·x1 + c2·x2 + … that comes nearest to readings, the sum
// of the squares of what is left over being least.
type Fit struct {
	Coef []float64   // one an unknown, in the order of the columns
	Left []float64   // one a reading: measured less fitted
	Free int         // readings less unknowns
	Cov  [][]float64 // of the coefficients, for readings with a standard error of 1

	hat []float64 // one a reading: how much it pulls the fit to itself, 0 to 1
	sum float64   // of the squares of Left
}

// alike is how near (as a share of its length) one column may come to what the
// columns before it can make, and be told apart: below it rounding decides.
const alike = 1e-9

// Of fits the unknowns to readings y. Row i holds what each unknown counts for
// in reading i. It is false where there are fewer readings than unknowns or
// where two unknowns cannot be told apart, and for rows of unlike lengths.
//
// By Householder's reflections (Golub and Van Loan, Matrix Computations, chapter
// 5), which lose half as many digits as the normal equations do.
func Of(rows [][]float64, y []float64) (Fit, bool) {
	m := len(rows)
	if m == 0 || len(y) != m || len(rows[0]) == 0 || m < len(rows[0]) {
		return Fit{}, false
	}
	n := len(rows[0])
	a := make([][]float64, m) // with y as its last column
	for i, row := range rows {
		if len(row) != n {
			return Fit{}, false
		}
		a[i] = append(append(make([]float64, 0, n+1), row...), y[i])
	}
	if !triangle(a, n) {
		return Fit{}, false
	}
	f := Fit{Free: m - n, Coef: make([]float64, n), Left: make([]float64, m), hat: make([]float64, m)}
	for j := n - 1; j >= 0; j-- {
		c := a[j][n]
		for k := j + 1; k < n; k++ {
			c -= a[j][k] * f.Coef[k]
		}
		f.Coef[j] = c / a[j][j]
	}
	f.Cov = covariance(a, n)
	for i, row := range rows {
		f.Left[i] = y[i] - dot(row, f.Coef)
		f.hat[i] = math.Min(1, f.Spread(row))
		f.sum += f.Left[i] * f.Left[i]
	}
	return f, true
}

// triangle reflects the first n columns of a to an upper triangle, the last one
// with them, and reports whether they are independent.
func triangle(a [][]float64, n int) bool {
	for j := range n {
		whole, below := 0.0, 0.0
		for i := range a {
			whole = math.Hypot(whole, a[i][j])
			if i >= j {
				below = math.Hypot(below, a[i][j])
			}
		}
		if !(below > alike*whole) || math.IsInf(below, 0) {
			return false
		}
		if a[j][j] > 0 {
			below = -below
		}
		v := make([]float64, len(a)-j)
		for i := range v {
			v[i] = a[j+i][j]
		}
		v[0] -= below
		norm := dot(v, v)
		for k := j; k <= n; k++ {
			s := 0.0
			for i := range v {
				s += v[i] * a[j+i][k]
			}
			for i := range v {
				a[j+i][k] -= 2 * s / norm * v[i]
			}
		}
	}
	return true
}

// covariance returns the inverse of RᵀR, R the upper triangle in a.
func covariance(a [][]float64, n int) [][]float64 {
	inv := make([][]float64, n) // R's own inverse
	for j := range inv {
		inv[j] = make([]float64, n)
	}
	for j := range n {
		inv[j][j] = 1 / a[j][j]
		for i := j - 1; i >= 0; i-- {
			s := 0.0
			for k := i + 1; k <= j; k++ {
				s += a[i][k] * inv[k][j]
			}
			inv[i][j] = -s / a[i][i]
		}
	}
	cov := make([][]float64, n)
	for i := range n {
		cov[i] = make([]float64, n)
		for j := range n {
			cov[i][j] = dot(inv[i], inv[j])
		}
	}
	return cov
}

func dot(a, b []float64) float64 {
	s := 0.0
	for i := range a {
		s += a[i] * b[i]
	}
	return s
}

// Spread returns the variance of what the fit says for a row, for readings with
// a standard error of 1.
func (f Fit) Spread(row []float64) float64 {
	s := 0.0
	for i := range row {
		s += row[i] * dot(f.Cov[i], row)
	}
	return math.Max(0, s)
}

// Noise returns the standard error of one reading as what is left over shows
// it; false where nothing is left over to judge by.
func (f Fit) Noise() (float64, bool) {
	if f.Free == 0 {
		return 0, false
	}
	return math.Sqrt(f.sum / float64(f.Free)), true
}

// Std returns the standard error of unknown k; false as for Noise.
func (f Fit) Std(k int) (float64, bool) {
	s, ok := f.Noise()
	return s * math.Sqrt(f.Cov[k][k]), ok
}
