package measure

import (
	"fmt"
	"math"
)

// sixtyFourths is the finest division on a workshop rule and in a set of inch
// drills.
const sixtyFourths = 64

// FractionTolerance is how far, in mm, a length may lie from a sixty-fourth of
// an inch and still be called one: well above the rounding of any conversion,
// well below what can be measured.
const FractionTolerance = 1e-6

// approximately marks a fraction that is not the length itself, but the nearest.
const approximately = "≈ "

// FormatFraction returns a length given in mm as the nearest 1/64 inch, in
// lowest terms: 3/16", 1 3/16", 2". A mark ≈ stands before it where the length
// is further from it than [FractionTolerance]; [ParseLength] refuses that mark,
// so that a rounded length is never taken back for the true one. NaN and
// infinities give a dash.
func FormatFraction(mm float64) string {
	if math.IsNaN(mm) || math.IsInf(mm, 0) {
		return noNumber
	}
	inches := math.Abs(mm) / MillimetresPerInch
	whole, rest := math.Modf(inches)
	over := int(math.Round(rest * sixtyFourths))
	off := math.Abs(rest-float64(over)/sixtyFourths) * MillimetresPerInch
	if over == sixtyFourths {
		whole, over = whole+1, 0
	}
	under := sixtyFourths
	for over > 0 && over%2 == 0 {
		over, under = over/2, under/2
	}

	s := ""
	if off > FractionTolerance {
		s = approximately
	}
	if mm < 0 && (whole > 0 || over > 0) {
		s += "-"
	}
	switch {
	case over == 0:
		s += Fixed(whole, 0)
	case whole == 0:
		s += fmt.Sprintf("%d/%d", over, under)
	default:
		s += fmt.Sprintf("%s %d/%d", Fixed(whole, 0), over, under)
	}
	return s + `"`
}
