package angles

import (
	"math"

	"stopwright/detent/geom"
)

// Moulding returns the two settings with which a moulding is cut for a corner
// while it lies flat on the saw's table: the mitre the table is turned to, from
// square, and the bevel the blade is tilted to, from upright. An inside and an
// outside corner differ by the side to which the table is turned.
//
// spring is the angle between the moulding's back and the wall, 0 to 90°;
// corner that between the two walls, more than 0 to 180° (90 in a square room).
// Both cuts lie in the plane that halves the corner, so (exact mathematics,
// from the normal of that plane seen along the moulding)
//
//	mitre = atan(sin spring / tan(corner/2))
//	bevel = asin(cos spring · cos(corner/2))
//
// The form of the bevel with sin(corner/2) that is met with in print agrees only
// in a square corner.
func Moulding(spring, corner geom.Angle) (mitre, bevel geom.Angle, err error) {
	if err := within(SpringAngle, spring.Degrees(), 0, 90); err != nil {
		return 0, 0, err
	}
	if !(corner > 0 && corner <= 180) {
		return 0, 0, &RangeError{CornerAngle, corner.Degrees(), 0, 180, true}
	}
	sinS, cosS := spring.SinCos()
	sinC, cosC := (corner / 2).SinCos()
	// tan(corner/2) written out: it has no value at 180°.
	mitre = geom.FromRadians(math.Atan2(sinS*cosC, sinC))
	bevel = geom.FromRadians(math.Asin(min(cosS*cosC, 1)))
	return mitre, bevel, nil
}
