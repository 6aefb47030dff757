package squares

import "math"

// Strange returns how far reading i lies from what all the others say, in
// standard errors of that distance: its studentised residual with the reading
// itself left out (Cook and Weisberg, Residuals and Influence in Regression,
// section 2.2). The sign is that of measured less fitted. It is false where the
// others are too few to be judged by, or where without the reading an unknown
// would be lost. Where the others agree to the last digit and the reading does
// not, it is Certain. A reading is taken to be known no better than to the
// standard error least, which repeated readings may have shown; 0 where they have
// not.
func (f Fit) Strange(i int, least float64) (float64, bool) {
	rest := 1 - f.hat[i]
	if f.Free < 2 || rest < 1e-9 {
		return 0, false
	}
	away := math.Abs(f.Left[i])
	if away <= exact {
		return 0, true
	}
	left := math.Max(0, f.sum-away*away/rest)
	s := math.Max(least, math.Sqrt(left/float64(f.Free-1))) * math.Sqrt(rest)
	if away > Certain*s {
		return math.Copysign(Certain, f.Left[i]), true
	}
	return f.Left[i] / s, true
}

// Certain is the most that Strange returns.
const Certain = 1e6

// exact is what rounding leaves of readings that agree, in their unit: far below
// any that a person can take in mm or degrees.
const exact = 1e-9
