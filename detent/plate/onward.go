package plate

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
)

// Onward returns the torque (N·m) it takes to turn the table on in the positive
// direction from a turn: the table's drag, what each ball rising from a seat
// resists with, what each ball riding on the face rubs with, and, taken off,
// what each ball dropping into a seat pulls with. A ball that locks counts as
// riding.
func (pl *Plate) Onward(turn geom.Angle) float64 {
	total := 0.0
	for _, b := range pl.Balls(turn) {
		k := pl.Clicks[b.Catch]
		if b.Seat < 0 || k.State() != ball.Clicks || b.Offset >= k.Contour().Mouth() {
			if r, ok := k.Click.Riding(); ok {
				total += r.Torque
			}
			continue
		}
		e, _ := k.Effort(b.Offset)
		if pl.leaving(b, turn) {
			total += e.Out
		} else {
			total -= e.Home
		}
	}
	return total + tableOf(pl.Plan).Drag(Lift(pl.Clicks), 0)
}

// leaving reports whether a ball over a seat moves away from it as the table
// turns on.
func (pl *Plate) leaving(b Ball, turn geom.Angle) bool {
	c := pl.Plan.Catches[b.Catch]
	ahead := (pl.Sigma * (geom.Angle(c.Azimuth) + pl.Sigma*turn - pl.Seats[b.Seat].Azimuth)).Wrap()
	return math.Signbit(float64(-ahead)) || ahead == 0
}
