package ball

import (
	"fmt"

	"stopwright/detent/geom"
)

// Form is the kind of seat.
type Form int

// The forms.
const (
	Drilled     Form = iota // a cylinder, with the floor its drill leaves
	Countersunk             // a cone
)

// Seat is the hole a ball drops into, as the maker cuts it. Lengths are in mm,
// angles are included angles in degrees.
type Seat struct {
	Form Form

	// Diameter (0.001 to 100,000) is that of the drill, or of a countersink at
	// the face.
	Diameter float64

	// Chamfer (0 to 100,000; 0 is none) widens the rim by this much all round.
	// It is cut by a 90° countersink, so that it is as deep as it is wide, and
	// ends where it meets the seat's own wall. Where it is deeper than a drilled
	// seat's floor, the floor lies at its foot.
	Chamfer float64

	// Depth (0 to 100,000) is measured from the face. A drilled seat goes so
	// deep with the corners of the drill, the point not counted; 0 is right
	// through. A countersink goes to its tip, but with a flat nose no deeper
	// than this; 0 is always to the tip.
	Depth float64

	// DrillPoint (1 to 180) is the angle of the drill's point; 180 leaves a flat
	// floor. Only a drilled seat with a depth has one.
	DrillPoint geom.Angle

	// Countersink (1 to 179) is the angle of the cone. Only a countersunk seat
	// has one.
	Countersink geom.Angle

	// Relief (0 to 100,000; 0 is none) is the diameter of a hole drilled on
	// through. One as wide as the mouth is the mouth.
	Relief float64
}

// Mouth returns the radius of the seat at the face (mm), chamfer included.
// Beyond it the ball rides on the face.
func (s Seat) Mouth() float64 { return max(s.Diameter/2+s.Chamfer, s.Relief/2) }

// Bottom returns how deep the tool goes under the face (mm): to the tip of the
// drill's point, or to the tip or nose of the countersink. Chamfer and relief
// are other tools' work and are not counted. It is false for a seat drilled
// right through.
func (s Seat) Bottom() (float64, bool) {
	if s.Form == Countersunk {
		tip := PointLength(s.Diameter, s.Countersink)
		if s.Depth > 0 {
			tip = min(tip, s.Depth)
		}
		return tip, true
	}
	if s.Depth == 0 {
		return 0, false
	}
	return s.Depth + PointLength(s.Diameter, s.DrillPoint), true
}

// PointLength returns the length (mm) of a cone of a diameter (mm) and an
// included angle (1 to 180 degrees): (D/2)/tan(angle/2). It is that of a drill's
// point, or the depth of a countersink; 0 for a flat end.
func PointLength(diameter float64, included geom.Angle) float64 {
	sin, cos := (included / 2).SinCos()
	return diameter / 2 * cos / sin
}

// check returns an error that names every value out of its range, or nil.
func (s Seat) check() error {
	qs := []quantity{
		size("seat diameter", s.Diameter),
		sizeOrZero("chamfer", s.Chamfer),
		sizeOrZero("seat depth", s.Depth),
		sizeOrZero("relief diameter", s.Relief),
	}
	switch {
	case s.Form == Countersunk:
		qs = append(qs, quantity{"countersink angle", s.Countersink.Degrees(), leastAngle, 180 - leastAngle, "degrees"})
	case s.Form != Drilled:
		return fmt.Errorf("seat form %d is unknown, must be %d (drilled) or %d (countersunk)", s.Form, Drilled, Countersunk)
	case s.Depth > 0:
		qs = append(qs, quantity{"drill point", s.DrillPoint.Degrees(), leastAngle, 180, "degrees"})
	}
	return check(qs...)
}
