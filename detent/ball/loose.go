package ball

import "stopwright/assets/words"

// Loose is a spring before it is fitted.
type Loose struct {
	FreeLength float64 // under no load, mm
	Rate       float64 // N/mm
	Solid      float64 // length with the turns laid close, mm; 0: not known
}

// Reading is a spring's force at one length.
type Reading struct {
	Length float64 // mm (0 to 100,000)
	Force  float64 // N (0 to 1,000,000)
}

// Measured returns the spring that two readings belong to: a straight line
// through both. The lengths may be counted from anywhere, if it is the same for
// both: with a catch pressed on a kitchen scale (9.81 N for each kilogram), how
// far the ball stands out. It fails where a reading is out of its range, and
// where the shorter spring does not press harder.
func Measured(a, b Reading) (Loose, error) {
	err := check(
		sizeOrZero("length of the first reading", a.Length),
		sizeOrZero("length of the second reading", b.Length),
		force("force of the first reading", a.Force),
		force("force of the second reading", b.Force),
	)
	if err != nil {
		return Loose{}, err
	}
	if a.Length < b.Length {
		a, b = b, a
	}
	if a.Length-b.Length < leastSize || b.Force <= a.Force {
		return Loose{}, refuse("spring.none", words.Args{
			"ForceA": a.Force, "LengthA": a.Length, "ForceB": b.Force, "LengthB": b.Length, "Least": leastSize,
		})
	}
	rate := (b.Force - a.Force) / (a.Length - b.Length)
	return Loose{FreeLength: a.Length + a.Force/rate, Rate: rate}, nil
}

// Fitted returns the spring in a catch: length long (mm) when the ball is fully
// out, travel (mm) shorter when it is pushed in flush. For one measured by the
// ball's standing, length is the travel itself. It fails where the spring is
// too short to press on the ball, where its turns would meet before the ball is
// flush, and where a force leaves the range that Spring gives.
func (l Loose) Fitted(length, travel float64) (Spring, error) {
	err := check(
		sizeOrZero("free length", l.FreeLength),
		quantity{"spring rate", l.Rate, 0, mostForce, "N/mm"},
		size("protrusion", travel),
		sizeOrZero("fitted length", length),
	)
	if err != nil {
		return Spring{}, err
	}
	if length > l.FreeLength+slack {
		return Spring{}, refuse("spring.slack", words.Args{"Length": length, "Free": l.FreeLength})
	}
	if length-travel < l.Solid-slack {
		return Spring{}, refuse("spring.solid", words.Args{
			"Length": length, "Least": l.Solid + travel, "Solid": l.Solid, "Travel": travel,
		})
	}
	return SpringFromRate(l.Rate, l.Rate*max(l.FreeLength-length, 0), travel)
}
