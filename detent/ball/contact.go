package ball

import (
	"math"

	"stopwright/detent/geom"
)

// Rest says what the ball rests on.
type Rest int

// What a ball can rest on.
const (
	Nothing  Rest = iota // it hangs free over a hole that swallows it
	Face                 // it rides on the face, outside the mouth
	Rim                  // the seat's edge at the face
	Chamfer              // the cone of the chamfer
	Shoulder             // the edge at the foot of the chamfer
	Cone                 // the cone of the countersink
	Floor                // a flat floor, or the flat nose of a countersink
	Point                // the cone left by the drill's point
	Relief               // the edge of the relief hole
	Housing              // its own housing, which lets it out no further
)

var restNames = [...]string{"nothing", "face", "rim", "chamfer", "shoulder", "cone", "floor", "point", "relief", "housing"}

// String returns the constant's name in lower case.
func (r Rest) String() string {
	if r < 0 || int(r) >= len(restNames) {
		return "unknown"
	}
	return restNames[r]
}

// Contact is where a ball lies at one offset from the seat's axis.
type Contact struct {
	Rest   Rest
	Height float64 // of the ball's centre over the face, mm

	// Angle is that of the contact from the ball's axis, 0 (straight below) to
	// 90 degrees. It is also the slope of the height: dz/ds = tan Angle.
	Angle geom.Angle

	// Radius and Depth are where the ball touches: distance from the seat's
	// axis on the side the ball is on, and depth under the face, mm.
	Radius, Depth float64
}

// touch is a contact as the formulas use it.
type touch struct {
	rest     Rest
	z        float64 // height of the centre over the face, mm
	sin, cos float64 // of the contact angle
}

func (t touch) contact(offset, ballRadius float64) Contact {
	return Contact{
		Rest:   t.rest,
		Height: t.z,
		Angle:  geom.FromRadians(math.Atan2(t.sin, t.cos)),
		Radius: offset + ballRadius*t.sin,
		Depth:  ballRadius*t.cos - t.z + 0, // no -0
	}
}
