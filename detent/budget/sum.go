package budget

import "math"

// Sum is an error made up of independent terms.
type Sum []Term

// Worst returns the largest error there can be: all terms at their worst, the
// same way.
func (s Sum) Worst() float64 {
	worst := 0.0
	for _, t := range s {
		worst += t.Worst()
	}
	return worst
}

// Std returns the standard deviation: that of independent terms add up as
// squares.
func (s Sum) Std() float64 { return math.Sqrt(s.variance()) }

func (s Sum) variance() float64 {
	total := 0.0
	for _, t := range s {
		total += t.Std() * t.Std()
	}
	return total
}

// Share returns which part of the variance, 0 to 1, is term i's. It is 0 where
// nothing is off at all.
func (s Sum) Share(i int) float64 {
	total := s.variance()
	if total == 0 {
		return 0
	}
	return s[i].Std() * s[i].Std() / total
}
