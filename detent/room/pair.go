package room

import (
	"math"

	"stopwright/detent/geom"
)

// Pair is two catches that drop together at one stop. Lengths are mm.
type Pair struct {
	Apart   geom.Angle // between the catches, about the pivot
	Radii   [2]float64 // of their rings, above 0
	Shift   float64    // how far the table can lie off the pivot, as a radius
	Play    float64    // sideways freedom of a ball that is home
	Landing float64    // standard deviation, along any line, of seat less catch where they land
	Mouth   float64    // diameter of a seat
}

// lever returns the length of u·a - v·b or of u·a + v·b for the directions a and
// b in which the two balls run: sign -1 or +1.
func (p Pair) lever(u, v, sign float64) float64 {
	_, cos := p.Apart.SinCos()
	return math.Sqrt(max(0, u*u+v*v+2*sign*u*v*cos))
}

// squares returns R² + Q², mm².
func (p Pair) squares() float64 { return p.Radii[0]*p.Radii[0] + p.Radii[1]*p.Radii[1] }

// sway returns the turn (radians) for every mm that the table lies off: see
// [Pair.Sway].
func (p Pair) sway() float64 { return p.lever(p.Radii[0], p.Radii[1], 1) / p.squares() }

// Sway returns the turn by which a pair puts the table off when the whole pattern
// of seats, or the table on its pivot, lies so far (mm) to the worst side. The
// two settle between what each ball alone would make of it as springs of one
// stiffness do, by least squares: shift·|R·a + Q·b|/(R² + Q²). It is 0 for
// catches opposite each other on one ring; one catch alone has shift/R.
func (p Pair) Sway(shift float64) geom.Angle { return geom.FromRadians(shift * p.sway()) }

// Takes returns by how much two seats may disagree, as turns of the table, so
// that both balls still get home: the table moves sideways on its pivot until
// they do, shift·|a/R - b/Q|, and each ball has its play. That is for the best
// side; catches that are not opposite are then pushed sideways in their seats as
// well. Beyond it one ball is home and the other hangs on its rim: a rim under a
// ball is steepest at home, so that the ball that is nearer wins.
func (p Pair) Takes() geom.Angle {
	return geom.FromRadians(p.Shift*p.lever(1/p.Radii[0], 1/p.Radii[1], -1) + p.Play*(1/p.Radii[0]+1/p.Radii[1]))
}

// Misses returns from what disagreement on a ball that hangs stays on the face,
// its centre past the rim: then one catch holds alone.
func (p Pair) Misses() geom.Angle {
	return p.Takes() + geom.FromRadians(p.Mouth/2/max(p.Radii[0], p.Radii[1]))
}

// Disagreement returns the standard deviation of the turns that the two seats ask
// for, one less the other.
func (p Pair) Disagreement() geom.Angle {
	return geom.FromRadians(p.Landing * math.Hypot(1/p.Radii[0], 1/p.Radii[1]))
}

// Hangs returns the chance that two seats disagree by more than [Pair.Takes],
// reckoned with a normal distribution.
func (p Pair) Hangs() float64 {
	d := p.Disagreement()
	if d == 0 {
		return 0
	}
	return math.Erfc((p.Takes() / d).Degrees() / math.Sqrt2)
}

// Std returns the standard deviation of the stop with both balls home: where two
// seats settle, and what is left of a table that lies evenly within its shift.
func (p Pair) Std() geom.Angle {
	return geom.FromRadians(math.Hypot(p.Landing/math.Sqrt(p.squares()), p.Shift/2*p.sway()))
}

// StdAlone returns the standard deviation of the stop with the first catch alone.
func (p Pair) StdAlone() geom.Angle {
	return geom.FromRadians(math.Hypot(p.Landing, p.Shift/2) / p.Radii[0])
}
