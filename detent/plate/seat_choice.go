package plate

import (
	"math"
	"slices"

	"stopwright/detent/ball"
	"stopwright/detent/plan"
)

// SeatChoice is one way to cut the seats, and what the click would be with it.
type SeatChoice struct {
	Seat    plan.Seat
	State   ball.State
	HasHome bool    // the ball has a home: Drop and Play mean something
	Drop    float64 // mm
	Play    float64 // to either side, degrees of the table's turn
	Seated  bool    // it clicks, and rests on rim, chamfer or cone
	Hold            // of the catches it was worked out for, without stops
}

// Margin returns how many times over the balls pull the table home against its
// drag; 0 where they do not click.
func (c SeatChoice) Margin() float64 {
	if !c.Clicks {
		return 0
	}
	return c.Centring / math.Max(c.Drag, leastDrag)
}

// leastDrag (N·m) keeps the margin of a table without friction finite.
const leastDrag = 1e-6

// Return returns the share of the push out of a stop that the balls give back
// on the way home, beyond the drag: (centring - drag)/(holding + drag). It is
// largest where the ball is held well and yet let go easily, and 0 where the
// balls do not click.
func (c SeatChoice) Return() float64 {
	if !c.Clicks {
		return 0
	}
	return (c.Centring - c.Drag) / math.Max(c.Holding+c.Drag, leastDrag)
}

// SeatWith works out what catches that drop together do over seats of another
// diameter (mm): a drill's, or a countersink's at the face. The depth is changed
// where it must be and can be: see [SeatDepth]. A relief hole that would be no
// smaller than the seat is left out.
func (pl *Plate) SeatWith(catches []int, diameter float64) SeatChoice {
	s, _ := pl.seatOf(diameter)
	return pl.over(catches, s)
}

// seatOf returns the plan's seat with another diameter, and whether there is a
// depth for it.
func (pl *Plate) seatOf(diameter float64) (plan.Seat, bool) {
	s := pl.Plan.Seat
	s.Diameter = diameter
	if s.ReliefDiameter >= diameter {
		s.ReliefDiameter = 0
	}
	depth, fits := SeatDepth(pl.Plan, s)
	if fits {
		s.Depth = depth
	}
	return s, fits
}

// over works out what catches that drop together do over other seats. The
// balls of the rest ride as they do in the plan.
func (pl *Plate) over(catches []int, s plan.Seat) SeatChoice {
	p := pl.Plan
	p.Seat = s
	all := slices.Clone(pl.Clicks)
	for _, c := range catches {
		all[c] = newClick(p, c)
	}
	k := all[catches[0]]
	c := SeatChoice{Seat: s, State: k.State(), Seated: seated(k), Hold: newHold(p, all, catches)}
	if h, ok := k.Home(); ok {
		c.HasHome, c.Drop, c.Play = true, h.Drop, h.PlayAngle.Degrees()
	}
	return c
}

// seated reports whether a ball clicks and rests on what the seat is cut for:
// not on its floor, and not held up by its housing.
func seated(k Click) bool {
	h, ok := k.Home()
	if !ok || k.State() != ball.Clicks {
		return false
	}
	switch h.Rest {
	case ball.Rim, ball.Chamfer, ball.Shoulder, ball.Cone:
		return true
	}
	return false
}

// Innermost returns the catch on the smallest ring: it pulls home with the least
// torque.
func (pl *Plate) Innermost() int {
	least := 0
	for i, c := range pl.Plan.Catches {
		if c.Radius < pl.Plan.Catches[least].Radius {
			least = i
		}
	}
	return least
}
