package proving

import (
	"math"

	"stopwright/detent/geom"
)

// Method is how a stop was measured. Its text is what a plan file says.
type Method string

// The methods.
const (
	Typed   Method = "direct"   // the angle itself was read
	Square  Method = "square"   // mitred pieces held against a try square
	FiveCut Method = "five-cut" // a board cut on all four sides and once more
	Flip    Method = "flip"     // a board cut through, one half turned over
	Ring    Method = "ring"     // a frame of pieces closed round
)

// Methods lists every method.
var Methods = []Method{Typed, Square, FiveCut, Flip, Ring}

// Multiple returns how many times a method shows the error of one cut: what is
// measured is divided by it.
func Multiple(m Method, stop geom.Angle) (int, bool) {
	switch m {
	case Typed:
		return 1, true
	case Square:
		n, ok := Joints(stop)
		return 2 * n, ok
	case FiveCut:
		return 4, stop == 0
	case Flip:
		return 2, stop == 0
	case Ring:
		n, ok := Pieces(stop)
		return 2 * n, ok
	}
	return 0, false
}

// whole is how far a count of pieces or joints may be from a whole number:
// 25.714 typed for 180/7 is one of seven sides.
const whole = 1e-3

// Joints returns how many joints of mitres cut at a stop turn a right angle: 1
// at 45 degrees, 2 at 22.5. False where they do not.
func Joints(stop geom.Angle) (int, bool) { return count(45, stop, 1) }

// Pieces returns how many pieces mitred at a stop close a frame: 4 at 45 degrees,
// 5 at 36. False where none do.
func Pieces(stop geom.Angle) (int, bool) { return count(180, stop, 3) }

func count(of, stop geom.Angle, least float64) (int, bool) {
	n := math.Round((of / stop.Abs()).Degrees())
	ok := stop != 0 && n >= least && n <= 360 && math.Abs(n*stop.Abs().Degrees()/of.Degrees()-1) <= whole
	return int(n), ok
}

// BySquare returns by how much each mitre is too large (negative: too small),
// from mitred pieces held against a try square: a gap (mm) between square and
// wood, leg mm from where they touch, plus where the gap is at the corner and
// minus where it is at the end of the leg. Two faces meet at a joint, so that
// the corner is off by twice the error for each: common practice.
func BySquare(joints int, gap, leg float64) geom.Angle {
	return geom.FromRadians(math.Atan2(gap, leg)) / geom.Angle(2*joints)
}

// ByRing returns by how much each mitre is too large, from the last joint of a
// frame of pieces: its faces, face mm long, touch at one end and stand gap mm
// apart at the other; plus where they are open on the inside, minus outside. All
// the errors come together in that joint, 2 for each piece: exact mathematics.
func ByRing(pieces int, gap, face float64) geom.Angle {
	return opening(gap, face) / geom.Angle(2*pieces)
}

// ByFlip returns how far clockwise the tool leans from square, from a board cut
// through and one half of it turned over, edge to edge against the fence: the
// cut faces, face mm long, touch at one end and stand gap mm apart at the other;
// plus where they are open at the operator's end, minus at the fence. Turning
// over doubles the error: the reversal of a straight edge and a square (W. R.
// Moore, Foundations of Mechanical Accuracy, 1970).
func ByFlip(gap, face float64) geom.Angle { return opening(gap, face) / 2 }

// opening returns the angle between two faces of equal length that touch at one
// end.
func opening(gap, face float64) geom.Angle {
	return 2 * geom.FromRadians(math.Asin(math.Max(-1, math.Min(1, gap/(2*face)))))
}

// ByFiveCuts returns how far clockwise the tool leans from square. A board is
// cut on all four sides, the side just cut going to the fence each time, and a
// strip is cut off the side that was cut first: the error is in it four times.
// The board is kept on the left of the cut and turned anticlockwise. near is the
// strip's width at the operator's end, far at the fence, apart mm from each
// other. Common practice; the four-fold error is exact mathematics, the sum of a
// quadrangle's corners being fixed.
func ByFiveCuts(near, far, apart float64) geom.Angle {
	return geom.FromRadians(math.Atan2(near-far, apart)) / 4
}
