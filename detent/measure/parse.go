package measure

import (
	"math/big"

	"stopwright/detent/geom"
)

// ParseLength reads a length and returns it in mm.
//
// It understands, with an optional sign in front:
//   - decimals with a point or a comma: 12.5 and 12,5. A single comma is always
//     a decimal comma, so 1,234 is a little over one; a number with more than
//     one point or comma (1,234.5) is refused, not guessed at;
//   - divisions and fractions: 3/16, 25/2, ½;
//   - mixed fractions: 1 3/16, 1-3/16, 1½;
//   - a unit after any of these: mm, cm, m, in, inch, inches, " or ″. Without
//     one the number is in the given unit. Feet are refused.
//
// Powers of ten (1e3) are refused: in a workshop they are a slip of the finger.
// No range is checked beyond 64 characters. The result is finite and never -0;
// the error is a [*SyntaxError].
func ParseLength(text string, unit Unit) (mm float64, err error) {
	return read(Length, text, func(c *cursor) (*big.Rat, Reason) {
		v, reason := c.value()
		if reason != 0 {
			return nil, reason
		}
		scale := unit.millimetres()
		if given, ok := lengthUnits[c.peek(0).text]; ok {
			scale = given
			c.at++
		}
		return v.Mul(v.Rat, scale), c.end()
	})
}

// ParseNumber reads a number without a unit: decimals, divisions and fractions
// as in [ParseLength]. It serves friction and other plain quantities.
func ParseNumber(text string) (float64, error) {
	return read(Number, text, func(c *cursor) (*big.Rat, Reason) {
		v, reason := c.value()
		if reason != 0 {
			return nil, reason
		}
		return v.Rat, c.end()
	})
}

// ParseAngle reads an angle in degrees.
//
// It understands, with an optional sign in front that goes for the whole:
//   - decimals, divisions and mixed fractions as in [ParseLength]: 12,5, 180/7,
//     22 1/2, each with or without ° or deg after it;
//   - degrees, minutes and seconds: 31°37', 31° 37′ 8″, 31d37m8s, 31:37:08 and
//     31 37 8. Degrees come first, minutes and seconds are below 60, and only
//     the last may have decimals. A number without a mark of its own takes the
//     place after the one before it, so 31°37 is 31°37'.
//
// No range is checked beyond 64 characters. The result is finite and never -0;
// the error is a [*SyntaxError].
func ParseAngle(text string) (geom.Angle, error) {
	degrees, err := read(Angle, text, sexagesimal)
	return geom.Angle(degrees), err
}
