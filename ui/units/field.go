package units

import (
	"math"
	"strconv"
	"strings"

	"stopwright/detent/geom"
	"stopwright/detent/measure"
)

// How many decimals a field shows: as many as the value has, up to what fits in
// a field. A value with more is shown rounded, and kept as it is.
const (
	fieldDecimals  = 6 // of a mm, an inch or a degree: 1e-6 in is 0.03 µm
	secondDecimals = 3 // of a second of arc, which is 3e-7°
)

// exactly is how far, relative to its size or to 1, a value read back may lie
// from the true one and still be the same: some roundings of a float64.
const exactly = 1e-13

// LengthField returns a length in mm as a field shows it, its unit standing
// beside it. A length that is no 64th of an inch is shown in decimals, as a
// field may not hold one rounded to a fraction.
func (s Style) LengthField(mm float64) string {
	if s.Lengths == Fractions {
		if text := measure.FormatFraction(mm); !strings.Contains(text, "≈") {
			return strings.TrimSuffix(text, `"`)
		}
	}
	return measure.Trim(s.inUnit(mm), fieldDecimals)
}

// AngleField returns an angle in degrees as a field shows it: as decimals with
// the sign of degrees standing beside it, or as degrees and minutes with signs
// of their own.
func (s Style) AngleField(degrees float64) string {
	if s.Angles == Minutes {
		return short(measure.FormatAngle(geom.Angle(degrees), measure.AngleStyle{Minutes: true, Decimals: secondDecimals}))
	}
	return measure.Trim(degrees, fieldDecimals)
}

// LengthSign returns what stands beside a field that holds a length.
func (s Style) LengthSign() string { return s.Unit().Symbol() }

// AngleSign returns what stands beside a field that holds an angle.
func (s Style) AngleSign() string {
	if s.Angles == Minutes {
		return ""
	}
	return "°"
}

// ReadLength reads a length, in the style's unit if none is typed, in mm.
func (s Style) ReadLength(text string) (mm float64, err error) {
	return measure.ParseLength(text, s.Unit())
}

// ReadAngle reads an angle, in degrees.
func (Style) ReadAngle(text string) (degrees float64, err error) {
	a, err := measure.ParseAngle(text)
	return a.Degrees(), err
}

// same reports whether two numbers differ by rounding only.
func same(a, b float64) bool { return math.Abs(a-b) <= exactly*max(1, math.Abs(a)) }

// whole returns a number with all its digits.
func whole(x float64) string { return trueMinus(strconv.FormatFloat(x+0, 'f', -1, 64)) }
