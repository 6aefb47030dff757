package detent

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

// Pair is two catches that drop together, and what that does to their stops.
type Pair struct {
	room.Pair
	Hold  plate.Hold
	Alone plate.Hold // the first of the two alone
}

// Pairs returns every two catches that drop together at some stop, in the order
// of the stops.
func (r Report) Pairs() []Pair {
	var out []Pair
	pl := r.Plate
	for _, h := range pl.Holds {
		if len(h.Catches) != 2 {
			continue
		}
		a, b := pl.Plan.Catches[h.Catches[0]], pl.Plan.Catches[h.Catches[1]]
		p := Pair{
			Pair: room.Pair{
				Apart:   geom.Angle(a.Azimuth - b.Azimuth).Wrap().Abs(),
				Radii:   [2]float64{a.Radius, b.Radius},
				Shift:   plate.TableShift(pl.Plan),
				Landing: landing(pl.Plan),
				Mouth:   pl.Plan.Seat.Mouth(),
			},
			Hold:  h,
			Alone: pl.HoldOf(h.Catches[:1]),
		}
		if home, ok := pl.Clicks[h.Catches[0]].Home(); ok {
			p.Play = home.Play
		}
		out = append(out, p)
	}
	return out
}

// SwayAlone returns by how much the table, lying off its pivot to the worst side,
// puts off a stop that the first of the catches holds alone.
func (p Pair) SwayAlone() geom.Angle {
	return room.Pair{Radii: [2]float64{p.Radii[0], p.Radii[0]}}.Sway(p.Shift)
}

// landing returns the standard deviation (mm) along any line of seat less catch:
// centres land evenly in discs, half of whose radius is the standard deviation.
func landing(p plan.Plan) float64 { return math.Hypot(p.Shop.SeatError, p.Shop.CatchError) / 2 }
