package ball

import (
	"errors"
	"math"

	"stopwright/detent/geom"
)

// Setup is a catch over a seat.
type Setup struct {
	BallDiameter float64 // mm (0.001 to 100,000)
	Seat         Seat
	Spring       Spring  // its travel is the ball's protrusion
	FaceGap      float64 // between the two faces, mm (-100,000 to 100,000)
	RingRadius   float64 // from the pivot to the seat's centre, mm (0.001 to 100,000)
	Friction     float64 // of the ball on seat and face (0 to 10)
}

// State says whether a ball clicks at all.
type State int

// The states. Of those that keep a ball from clicking, the first counts.
const (
	Clicks      State = iota
	CannotReach       // the ball does not stand out of its part further than the gap
	FallsIn           // the seat swallows the ball: see [Contour.FallsIn]
	Locks             // contact angle and friction angle reach 90°: no turning lifts the ball out
)

var stateNames = [...]string{"clicks", "cannot reach", "falls in", "locks"}

// String returns the state in words.
func (s State) String() string {
	if s < 0 || int(s) >= len(stateNames) {
		return "unknown"
	}
	return stateNames[s]
}

// Click is a catch over a seat, worked out. It does not change once made, and
// may be used from several goroutines.
//
// Turning the table by an angle moves the seat sideways under the ball by that
// angle's arc on the ring. Along the chord it would be less by one part in
// 24(R/s)², which is far below what can be measured.
type Click struct {
	seat  *Contour
	setup Setup
	state State
	arm   float64 // ring radius, m: N times it is N·m
	limit float64 // lowest height to which the housing lets the ball's centre, mm
	play  float64 // mm
}

// NewClick works out a catch over a seat. It fails where a value is out of the
// range its comment gives, and names all that are.
func NewClick(s Setup) (*Click, error) {
	seat, bad := NewContour(s.BallDiameter, s.Seat)
	err := errors.Join(bad, s.Spring.check(), check(
		quantity{"face gap", s.FaceGap, -mostSize, mostSize, "mm"},
		size("ring radius", s.RingRadius),
		quantity{"friction", s.Friction, 0, mostRatio, ""},
	))
	if err != nil {
		return nil, err
	}
	c := &Click{seat: seat, setup: s, arm: s.RingRadius / 1000}
	c.limit = c.seat.r - (s.Spring.Travel - s.FaceGap)
	c.state = c.judge()
	return c, nil
}

// Contour returns the seat by itself, without the spring.
func (c *Click) Contour() *Contour { return c.seat }

// State says whether the ball clicks, and if not why.
func (c *Click) State() State { return c.state }

// judge finds the state, and the play where there is one.
func (c *Click) judge() State {
	if c.limit >= c.seat.r-slack {
		return CannotReach
	}
	if c.seat.FallsIn() {
		return FallsIn
	}
	c.play = c.rattle()
	if c.locked(c.steepest()) {
		return Locks
	}
	return Clicks
}

// Steepest returns the greatest contact angle that the ball meets on its way
// out of the stop, from its axis. It is false for a ball that cannot reach the
// seat or falls in.
func (c *Click) Steepest() (geom.Angle, bool) {
	if c.state == CannotReach || c.state == FallsIn {
		return 0, false
	}
	t := c.steepest()
	return geom.FromRadians(math.Atan2(t.sin, t.cos)), true
}

// steepest returns the touch with the greatest contact angle from the end of
// the play outwards. The angle falls along an edge and stays on a slope, so it
// is greatest where a span begins.
func (c *Click) steepest() touch {
	worst := touch{cos: 1}
	for i := range c.seat.spans {
		if c.seat.end(i) <= c.play {
			continue
		}
		if t := c.seat.inSpan(i, max(c.seat.spans[i].from, c.play)); t.cos < worst.cos {
			worst = t
		}
	}
	return worst
}

// rattle returns how far the ball can go sideways before the seat lifts it.
func (c *Click) rattle() float64 {
	floor := max(c.seat.touch(0).z, c.limit)
	i := 0
	for i+1 < len(c.seat.spans) && c.seat.inSpan(i, c.seat.end(i)).z <= floor {
		i++
	}
	from := c.seat.spans[i].from
	if c.seat.inSpan(i, from).z >= floor { // at home already, or where a flat floor ends
		return from
	}
	p := &c.seat.pieces[c.seat.spans[i].piece]
	return min(max(p.offsetAt(floor, c.seat.r), from), c.seat.end(i))
}

// short returns how far the housing holds the ball's centre over the height at
// which the seat would, mm; 0 where the seat does.
func (c *Click) short() float64 {
	if short := c.limit - c.seat.touch(0).z; short > slack {
		return short
	}
	return 0
}

// force returns the spring's force with the ball's centre at a height.
func (c *Click) force(z float64) float64 {
	return c.setup.Spring.Force(c.setup.FaceGap + c.seat.r - z)
}

// turn returns the table's turn that moves the seat sideways by an offset.
func (c *Click) turn(offset float64) geom.Angle {
	return geom.FromRadians(offset / c.setup.RingRadius)
}

// Capture returns the turn, to either side of a stop, within which the ball
// begins to drop: 2·asin(a/2R), a being the mouth's radius. It is 180 where the
// mouth is wider than the ring.
func (c *Click) Capture() geom.Angle {
	return geom.FromRadians(2 * math.Asin(min(c.seat.mouth/(2*c.setup.RingRadius), 1)))
}
