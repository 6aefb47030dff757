package ball

import (
	"math"

	"stopwright/detent/geom"
)

// Home is a ball at rest in its seat.
type Home struct {
	Rest   Rest    // what holds it up: a part of the seat, or its own Housing
	Height float64 // of the centre over the face, mm
	Drop   float64 // how far the ball sinks below where it rides on the face, mm

	// Short is how far the ball stays from what it would rest on if the housing
	// let it out further, mm; 0 where it gets there.
	Short float64

	// Play is how far the ball can go to either side before the seat lifts it,
	// mm; PlayAngle is the table's turn for it. 0 for a ball home on a rim or
	// centred by a cone.
	Play      float64
	PlayAngle geom.Angle

	// Angle is the contact angle from the ball's axis, 0 to 90 degrees, where
	// the seat begins to lift the ball: at home, or at the end of the play.
	Angle geom.Angle

	Force float64 // of the spring, N
}

// Home returns the ball at rest in its seat. It is false for a ball that cannot
// reach the seat or falls in; one that locks has a home.
func (c *Click) Home() (Home, bool) {
	if c.state == CannotReach || c.state == FallsIn {
		return Home{}, false
	}
	bottom := c.seat.touch(0)
	lifting := c.seat.touch(c.play)
	h := Home{
		Rest:      bottom.rest,
		Height:    max(bottom.z, c.limit),
		Short:     c.short(),
		Play:      c.play,
		PlayAngle: c.turn(c.play),
		Angle:     lifting.contact(c.play, c.seat.r).Angle,
	}
	if h.Short > 0 {
		h.Rest = Housing
	}
	h.Drop = c.seat.r - h.Height
	h.Force = c.force(h.Height)
	return h, true
}

// At returns where the ball lies when the seat's axis is offset (mm, either
// way) from it, held up by the seat, the face or its own housing, for drawing.
// For a ball in its housing the angle is 0, and radius and depth are those of
// its lowest point.
func (c *Click) At(offset float64) Contact {
	s := math.Abs(offset)
	t := c.seat.touch(s)
	if t.rest == Nothing || t.z < c.limit-slack || c.state == CannotReach {
		t = touch{Housing, c.limit, 0, 1}
	}
	return t.contact(s, c.seat.r)
}
