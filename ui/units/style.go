package units

import "stopwright/detent/measure"

// Lengths is how lengths are shown, and the unit of one typed without.
type Lengths int

// The ways to show lengths. The zero Lengths are millimetres.
const (
	Millimetres Lengths = iota
	Inches              // in decimals
	Fractions           // of an inch, to the nearest 1/64
)

// Angles is how angles are shown.
type Angles int

// The ways to show angles. The zero Angles are decimal degrees.
const (
	Degrees Angles = iota // in decimals
	Minutes               // degrees, minutes and seconds
)

// Style is how numbers are shown.
type Style struct {
	Lengths Lengths
	Angles  Angles
}

// The names under which a style is kept between runs, in the order of the
// constants.
var (
	lengthNames = []string{"mm", "inch", "fraction"}
	angleNames  = []string{"degrees", "minutes"}
)

// Named returns the style of two names; a name that is none is millimetres or
// decimal degrees.
func Named(lengths, angles string) Style {
	return Style{Lengths(indexOf(lengthNames, lengths)), Angles(indexOf(angleNames, angles))}
}

// Names returns the two names that [Named] reads.
func (s Style) Names() (lengths, angles string) {
	return lengthNames[s.Lengths], angleNames[s.Angles]
}

// indexOf returns where a name stands in a list, or 0.
func indexOf(names []string, name string) int {
	for i, n := range names {
		if n == name {
			return i
		}
	}
	return 0
}

// Unit returns the unit in which a length typed without one is meant.
func (s Style) Unit() measure.Unit {
	if s.Lengths == Millimetres {
		return measure.Millimetre
	}
	return measure.Inch
}

// inUnit converts mm to the style's unit.
func (s Style) inUnit(mm float64) float64 { return s.Unit().FromMillimetres(mm) }
