package detent

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plate"
	"stopwright/detent/proving"
)

// Measurement is what a maker reads when measuring a stop, by its method. Signs
// are those of the methods' own functions in [proving].
//
//	direct    A the angle, degrees
//	square    A the gap, B the leg, mm: see [proving.BySquare]
//	five-cut  A the strip's near end, B its far end, C their distance: [proving.ByFiveCuts]
//	flip      A the gap, B the face: [proving.ByFlip]
//	ring      A the gap, B the face: [proving.ByRing]
type Measurement struct {
	Method  proving.Method
	Stop    geom.Angle
	A, B, C float64
}

// Measured returns the angle of the stop that a measurement comes to, as the
// plan counts it. It is false where the method does not suit the stop and where
// a length that is divided by is not above 0.
func (r Report) Measured(m Measurement) (geom.Angle, bool) {
	multiple, ok := proving.Multiple(m.Method, m.Stop)
	if !ok {
		return 0, false
	}
	base := m.B
	if m.Method == proving.FiveCut {
		base = m.C
	}
	if m.Method != proving.Typed && !(base > 0) {
		return 0, false
	}
	mitre := func(tooLarge geom.Angle) geom.Angle {
		return m.Stop + geom.Angle(math.Copysign(1, m.Stop.Degrees()))*tooLarge
	}
	lean := func(clockwise geom.Angle) geom.Angle {
		return m.Stop + plate.Lean(r.Plate.Plan, clockwise) // its own inverse
	}
	switch m.Method {
	case proving.Square:
		return mitre(proving.BySquare(multiple/2, m.A, m.B)), true
	case proving.Ring:
		return mitre(proving.ByRing(multiple/2, m.A, m.B)), true
	case proving.FiveCut:
		return lean(proving.ByFiveCuts(m.A, m.B, m.C)), true
	case proving.Flip:
		return lean(proving.ByFlip(m.A, m.B)), true
	}
	return geom.Angle(m.A), true
}
