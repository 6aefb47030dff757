package angles

import (
	"fmt"
	"math"
	"math/big"

	"stopwright/detent/geom"
)

// Most is the most angles in one set: the most seats a plan may hold.
const Most = 10_000

// stepSlack, in degrees, is how near a step may come to the end of its range and
// count as reaching it: the rounding of a step such as 180/7, many times over.
const stepSlack = 1e-9

// The numbers that a [RangeError] is about.
const (
	From        = "from"
	To          = "to"
	Parts       = "parts"
	Step        = "step"
	SpringAngle = "spring angle"
	CornerAngle = "corner"
)

// RangeError reports a number that no set can be made with.
type RangeError struct {
	Name   string // of the number, one of the above
	Value  float64
	Lo, Hi float64 // the range allowed; Hi may be +Inf
	Above  bool    // Lo itself is not allowed
}

// Error names the number, its value and the range.
func (e *RangeError) Error() string {
	want := fmt.Sprintf("%v to %v", e.Lo, e.Hi)
	switch {
	case math.IsInf(e.Hi, 1):
		want = fmt.Sprintf("above %v", e.Lo)
	case e.Above:
		want = fmt.Sprintf("above %v and at most %v", e.Lo, e.Hi)
	}
	return fmt.Sprintf("%s must be %s, not %v", e.Name, want, e.Value)
}

// within returns a [RangeError] unless x is a number from lo to hi.
func within(name string, x, lo, hi float64) error {
	if x >= lo && x <= hi {
		return nil
	}
	return &RangeError{Name: name, Value: x, Lo: lo, Hi: hi}
}

// ends checks the ends of an arc: finite, a full turn either way at most.
func ends(from, to geom.Angle) error {
	full := geom.FullTurn.Degrees()
	if err := within(From, from.Degrees(), -full, full); err != nil {
		return err
	}
	return within(To, to.Degrees(), -full, full)
}

// Turn divides a full turn into n equal parts, 1 to [Most], beginning at start:
// n angles, start + k·360°/n brought into (-180°, 180°], in the order in which
// the table turns past them.
func Turn(start geom.Angle, n int) ([]geom.Angle, error) {
	if err := ends(start, start); err != nil {
		return nil, err
	}
	if err := within(Parts, float64(n), 1, Most); err != nil {
		return nil, err
	}
	full, half := big.NewRat(360, 1), big.NewRat(180, 1)
	out := make([]geom.Angle, n)
	for i := range out {
		a := new(big.Rat).Mul(full, big.NewRat(int64(i), int64(n)))
		a.Add(a, exact(start))
		for a.Cmp(half) > 0 {
			a.Sub(a, full)
		}
		for new(big.Rat).Add(a, half).Sign() <= 0 {
			a.Add(a, full)
		}
		x, _ := a.Float64()
		out[i] = geom.Angle(x)
	}
	return out, nil
}

// Arc divides the arc between two angles into n equal parts, 1 to [Most]-1: n+1
// angles, both ends among them. from may be above to.
func Arc(from, to geom.Angle, n int) ([]geom.Angle, error) {
	if err := ends(from, to); err != nil {
		return nil, err
	}
	if err := within(Parts, float64(n), 1, Most-1); err != nil {
		return nil, err
	}
	if from == to {
		return []geom.Angle{from}, nil
	}
	out := make([]geom.Angle, n+1)
	a, b := exact(from), exact(to)
	for i := range out {
		out[i] = along(a, b, int64(i), int64(n))
	}
	return out, nil
}

// Steps returns from, from+step and so on to the last that is not beyond to; a
// step that comes within a billionth of a degree of to ends on it. from may be
// above to. step is above 0, and so large that there are no more than [Most].
func Steps(from, to, step geom.Angle) ([]geom.Angle, error) {
	if err := ends(from, to); err != nil {
		return nil, err
	}
	span := (to - from).Abs().Degrees()
	s := step.Degrees()
	if !(s > 0) || math.IsInf(s, 1) {
		return nil, &RangeError{Step, s, 0, math.Inf(1), true}
	}
	if count := math.Floor((span+stepSlack)/s) + 1; count > Most {
		return nil, &RangeError{Step, s, span / Most, math.Inf(1), true}
	}
	start, by := exact(from), exact(step)
	if to < from {
		by.Neg(by)
	}
	by.Add(by, start) // where the first step ends
	var out []geom.Angle
	for i := int64(0); ; i++ {
		a := along(start, by, i, 1)
		switch gone := (a - from).Abs().Degrees(); {
		case math.Abs(gone-span) <= stepSlack:
			return append(out, to), nil
		case gone > span:
			return out, nil
		}
		out = append(out, a)
	}
}
