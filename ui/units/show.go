package units

import (
	"strings"

	"stopwright/detent/geom"
	"stopwright/detent/measure"
)

// How finely readings are shown: to what a dial or a protractor can tell, and a
// little more.
const (
	mmDecimals     = 2
	inchDecimals   = 4 // 0.0001 in is 0.0025 mm
	degreeDecimals = 3
)

// Length returns a length in mm as a reading, with its unit and a true minus
// sign: 12.5 mm, 0.4921 in, ≈ 31/64".
func (s Style) Length(mm float64) string {
	var text string
	switch s.Lengths {
	case Inches:
		text = measure.FormatLength(mm, measure.Inch, inchDecimals)
	case Fractions:
		text = measure.FormatFraction(mm)
	default:
		text = measure.FormatLength(mm, measure.Millimetre, mmDecimals)
	}
	return trueMinus(text)
}

// Angle returns an angle in degrees as a reading, with a true minus sign:
// 31.619°, 31°37′08″.
func (s Style) Angle(degrees float64) string {
	if s.Angles == Minutes {
		return trueMinus(short(measure.FormatAngle(geom.Angle(degrees), measure.AngleStyle{Minutes: true})))
	}
	return trueMinus(measure.FormatAngle(geom.Angle(degrees), measure.AngleStyle{Decimals: degreeDecimals}))
}

// short leaves out the seconds of an angle, and its minutes, where they are 0.
func short(text string) string {
	return strings.TrimSuffix(strings.TrimSuffix(text, "00″"), "00′")
}

func trueMinus(text string) string { return strings.Replace(text, "-", "−", 1) }
