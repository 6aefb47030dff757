package units

import (
	"math"

	"stopwright/detent/measure"
)

// Round returns the largest round length that is not above most, all in mm: 1,
// 2, 5, 10 … mm or inches, or below an inch, where fractions are shown, a half,
// a quarter and so on down to 1/64.
func (s Style) Round(most float64) (mm float64) {
	unit := 1.0
	if s.Unit() == measure.Inch {
		unit = measure.MillimetresPerInch
	}
	most /= unit
	if s.Lengths == Fractions && most < 1 {
		return unit * math.Pow(2, math.Floor(math.Log2(max(most, 1.0/64))))
	}
	ten := math.Pow(10, math.Floor(math.Log10(most)))
	for _, k := range [3]float64{5, 2, 1} {
		if k*ten <= most {
			return k * ten * unit
		}
	}
	return ten * unit
}
