package ball

import (
	"math"

	"stopwright/detent/geom"
)

// Effort is the torque of one ball at one offset from a stop, N·m.
type Effort struct {
	Out    float64 // it takes to turn away from the stop; 0 and meaningless where Locked
	Home   float64 // with which the ball turns towards the stop; negative where it takes that much
	Locked bool    // no turning lifts the ball
}

// Effort returns the torque at an offset (mm, either way): none inside the
// play, outside the mouth that of the ball's friction. It is false for a ball
// that cannot reach the seat or falls in.
func (c *Click) Effort(offset float64) (Effort, bool) {
	if c.state == CannotReach || c.state == FallsIn {
		return Effort{}, false
	}
	s := math.Abs(offset)
	if s < c.play {
		return Effort{}, true
	}
	return c.effort(c.seat.touch(s)), true
}

func (c *Click) effort(t touch) Effort {
	e := Effort{Home: c.arm * c.home(t), Locked: c.locked(t)}
	if !e.Locked {
		e.Out = c.arm * c.out(t)
	}
	return e
}

// Sample is one point of the curves of torque against turn.
type Sample struct {
	Turn   geom.Angle // of the table, from the stop
	Offset float64    // of the seat's axis from the ball, mm
	Height float64    // of the ball's centre over the face, mm
	Effort
}

// Curve returns n samples on one side of a stop, out to an offset of reach (mm);
// the other side is the same. The first two are the ends of the play, where
// turning is free; the third is where the seat begins to lift the ball, at the
// same offset as the second; from there the rest are evenly spaced, so that the
// step at home is as steep as it is. It is nil where [Click.Effort] is false,
// for n below 4, and for a reach within the play.
func (c *Click) Curve(reach float64, n int) []Sample {
	if c.state == CannotReach || c.state == FallsIn || n < 4 || reach <= c.play {
		return nil
	}
	samples := make([]Sample, n)
	bottom := max(c.seat.touch(0).z, c.limit)
	samples[0] = Sample{Height: bottom}
	samples[1] = Sample{Turn: c.turn(c.play), Offset: c.play, Height: bottom}
	step := (reach - c.play) / float64(n-3)
	for i := range samples[2:] {
		s := c.play + float64(i)*step
		t := c.seat.touch(s)
		samples[i+2] = Sample{Turn: c.turn(s), Offset: s, Height: max(t.z, c.limit), Effort: c.effort(t)}
	}
	return samples
}
