package plate

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// Oversize is by how much (mm, on the diameter) a drill may cut larger than it
// is: common practice, no source.
const Oversize = 0.1

// ComfortablePush is the push (N) that a hand gives at the table's rim without
// bracing for it: common practice, no source.
const ComfortablePush = 60

// goodMargin is how many times over a ball should pull home against the drag,
// so that dust and damp leave it enough: common practice, no source.
const goodMargin = 3

// BestSeat returns the seat for catches that drop together, of standard drills,
// that seats the ball fully with the best balance of holding and easy release,
// among those that suit; with nil all do. It is one that pulls home with a good
// margin and leaves the stop with a comfortable push, if any does, and of those
// the one with the most [SeatChoice.Return]. It keeps the rules for webs and
// edges as far as the plan does, stays inside its part, and still clicks when
// the drill cuts [Oversize] and when friction is twice what is reckoned with. The
// plan's own seat is among the choices. It is
// false where no seat will do.
func (pl *Plate) BestSeat(catches []int, suits func(SeatChoice) bool) (SeatChoice, bool) {
	var best SeatChoice
	found := false
	for _, c := range pl.seatChoices(catches) {
		if (suits == nil || suits(c)) && (!found || better(pl.Plan, c, best)) {
			best, found = c, true
		}
	}
	return best, found
}

// SeatChoices returns the seats among which [Plate.BestSeat] looks, the smallest
// first.
func (pl *Plate) SeatChoices(catches []int) []SeatChoice {
	all := pl.seatChoices(catches)
	slices.SortStableFunc(all, func(a, b SeatChoice) int { return cmp.Compare(a.Seat.Diameter, b.Seat.Diameter) })
	return slices.CompactFunc(all, func(a, b SeatChoice) bool { return math.Abs(a.Seat.Diameter-b.Seat.Diameter) <= stock.SameSize })
}

// seatChoices returns the seats that would do: the plan's own first, then those
// of the drills.
func (pl *Plate) seatChoices(catches []int) []SeatChoice {
	own := pl.Plan.Seat
	sizes := []float64{own.Diameter}
	widest := pl.WidestMouth() - 2*own.Chamfer
	for _, d := range seatDrills(own) {
		if d.MM <= widest {
			sizes = append(sizes, d.MM)
		}
	}
	var all []SeatChoice
	for _, diameter := range sizes {
		if s, fits := pl.seatOf(diameter); fits && pl.seats(s) {
			all = append(all, pl.over(catches, s))
		}
	}
	return all
}

// seats reports whether a seat holds the ball by rim, chamfer or cone, as
// planned, cut oversize, and with friction doubled, which damp and dust may do.
func (pl *Plate) seats(s plan.Seat) bool {
	p := pl.Plan
	p.Seat = s
	oversize, rough := p, p
	oversize.Seat.Diameter += Oversize
	rough.Shop.Friction *= 2
	for _, p := range [...]plan.Plan{p, oversize, rough} {
		if !seated(newClick(p, 0)) { // all catches seat alike
			return false
		}
	}
	return true
}

// better reports whether a is the better balance of the two. Without friction
// every seat gives back all it takes: then the one that holds harder is better.
func better(p plan.Plan, a, b SeatChoice) bool {
	if goodA, goodB := a.Margin() >= goodMargin, b.Margin() >= goodMargin; !goodA || !goodB {
		return a.Margin() > b.Margin()
	}
	if easyA, easyB := a.Push(p) <= ComfortablePush, b.Push(p) <= ComfortablePush; !easyA || !easyB {
		return a.Push(p) < b.Push(p)
	}
	if less := a.Return() - b.Return(); math.Abs(less) > sameReturn {
		return less > 0
	}
	return a.Holding > b.Holding
}

// sameReturn is the difference of shares below which they are equal: rounding,
// and far below what can be felt.
const sameReturn = 1e-9
