package budget

import "math"

// Shape is how one error is spread about 0.
type Shape int

// The shapes. What a [Term]'s size means depends on it.
const (
	Normal      Shape = iota // size is the standard deviation
	Rectangular              // anywhere within ±size, all alike
	Disc                     // one coordinate of a point that lands anywhere in a disc of radius size
	Circle                   // one coordinate of a point anywhere on a circle of radius size
	shapes
)

var shapeNames = [...]string{"normal", "rectangular", "disc", "circle"}

// String returns the shape in a word.
func (s Shape) String() string {
	if s < 0 || s >= shapes {
		return "unknown"
	}
	return shapeNames[s]
}

// Term is one error. A size below 0 counts as its absolute value: all shapes
// are the same either way round.
type Term struct {
	Shape Shape
	Size  float64
}

// Std returns the standard deviation: the size, divided for a rectangle by √3
// (JCGM 101 6.4.2), for a circle by √2 (6.4.6) and for a disc by 2, since the
// mean of r² over a disc is half the square of its radius.
func (t Term) Std() float64 {
	size := math.Abs(t.Size)
	switch t.Shape {
	case Rectangular:
		return size / math.Sqrt(3)
	case Disc:
		return size / 2
	case Circle:
		return size / math.Sqrt2
	}
	return size
}

// Worst returns the largest error there can be. A normal error has none: it is
// infinite, unless its size is 0.
func (t Term) Worst() float64 {
	if t.Shape == Normal && t.Size != 0 {
		return math.Inf(1)
	}
	return math.Abs(t.Size)
}

// Times returns the term k times as large.
func (t Term) Times(k float64) Term { return Term{t.Shape, t.Size * k} }

// reach is how far (in sizes) from 0 a shape of size 1 is followed. Beyond 9
// standard deviations a normal distribution has 2e-19 left, less than one in a
// number's last binary digit.
func (s Shape) reach() float64 {
	if s == Normal {
		return 9
	}
	return 1
}

// wave returns the characteristic function of a shape of size 1, the mean of
// cos(zx): exact mathematics.
func (s Shape) wave(z float64) float64 {
	if z == 0 {
		return 1
	}
	switch s {
	case Rectangular:
		return math.Sin(z) / z
	case Disc:
		return 2 * math.J1(z) / z
	case Circle:
		return math.J0(z)
	}
	return math.Exp(-z * z / 2)
}

// ceiling returns what the wave stays below from z onwards. The Bessel functions
// stay below √(2/πz) as cosines of that height: J0 everywhere, and J1 where it
// matters, from z = 2 on, with a twentieth more.
func (s Shape) ceiling(z float64) float64 {
	switch s {
	case Rectangular:
		return min(1, 1/z)
	case Disc:
		return min(1, 2.1*math.Sqrt(2/(math.Pi*z))/z)
	case Circle:
		return min(1, math.Sqrt(2/(math.Pi*z)))
	}
	return math.Exp(-z * z / 2)
}
