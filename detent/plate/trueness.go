package plate

import (
	"encoding/binary"
	"math"
	"slices"

	"stopwright/detent/budget"
	"stopwright/detent/plan"
)

// Trueness is how far off the stops may be, as drilled and after the table has
// been set to zero at one of them. Stops of one kind share what was worked out
// for it.
type Trueness struct {
	// Reference is the stop at which the table is set to zero, into the plate's
	// stops: the one nearest shop.reference if that is given, else the one
	// nearest 0, and of two the positive one. It is -1 when there is no stop.
	Reference int

	levers          []leverage  // by hold
	hold            []int       // of each stop
	errors          []StopError // each once
	drilled, zeroed []int       // into errors by stop; -1 where no ball clicks
}

// Drilled returns how far off a stop may be as drilled. It is false where the
// ball does not click, so that nothing holds the table there.
func (t Trueness) Drilled(stop int) (StopError, bool) { return t.of(t.drilled[stop]) }

// Zeroed returns how far off a stop may be once the table has been set to zero
// at the reference, which is then off by nothing. What cannot be set to zero,
// because it is anew every time, counts twice: it was off at the reference too.
// It is false where the ball does not click.
func (t Trueness) Zeroed(stop int) (StopError, bool) { return t.of(t.zeroed[stop]) }

func (t Trueness) of(k int) (StopError, bool) {
	if k < 0 {
		return StopError{}, false
	}
	return t.errors[k], true
}

// WorstZeroed returns the stop with the widest interval after zeroing, the first
// of equals, and false where no ball clicks or there is no stop.
func (t Trueness) WorstZeroed() (stop int, e StopError, ok bool) {
	stop = -1
	for i := range t.zeroed {
		if z, known := t.Zeroed(i); known && (!ok || z.Interval95 > e.Interval95) {
			stop, e, ok = i, z, true
		}
	}
	return stop, e, ok
}

// truth works out the trueness of a plate whose stops, seats and holds are
// there.
func (pl *Plate) truth() Trueness {
	b := truthBuilder{
		Plate: pl, known: map[string]int{}, shared: map[sharing]int{},
		Trueness: Trueness{
			Reference: reference(pl.Plan, pl.Stops),
			hold:      make([]int, len(pl.Stops)),
			drilled:   make([]int, len(pl.Stops)), zeroed: make([]int, len(pl.Stops)),
		},
	}
	for k, h := range pl.Holds {
		b.levers = append(b.levers, pl.leverageOf(h))
		for _, s := range h.Stops {
			b.hold[s] = k
		}
	}
	b.all()
	return b.Trueness
}

// reference finds the stop at which the table is set to zero.
func reference(p plan.Plan, stops []Stop) int {
	want := 0.0
	if p.Shop.Reference != nil {
		want = *p.Shop.Reference
	}
	best := -1
	for i, s := range stops {
		if best < 0 {
			best = i
			continue
		}
		off, least := math.Abs(s.Angle.Degrees()-want), math.Abs(stops[best].Angle.Degrees()-want)
		if off < least || off == least && s.Angle > stops[best].Angle {
			best = i
		}
	}
	return best
}

// truthBuilder works out errors and keeps each but once.
type truthBuilder struct {
	*Plate
	Trueness
	known  map[string]int  // into errors, by the parts
	shared map[sharing]int // into errors
}

// sharing is a kind of stop some of whose seats are the reference's own.
type sharing struct {
	hold  int
	seats uint64 // a bit for each of the hold's seats that it is
}

func (b *truthBuilder) all() {
	same := b.shareSeats()
	for k, h := range b.Holds {
		drilled, zeroed := -1, -1
		if h.Clicks {
			drilled = b.keep(b.parts(b.levers[k]))
			zeroed = b.keep(b.apart(k, 0))
		}
		for _, s := range h.Stops {
			b.drilled[s], b.zeroed[s] = drilled, zeroed
			if seats := same[s]; seats != 0 && h.Clicks && s != b.Reference {
				kind := sharing{k, seats}
				i, known := b.shared[kind]
				if !known {
					i = b.keep(b.apart(k, seats))
					b.shared[kind] = i
				}
				b.zeroed[s] = i
			}
		}
		if r := b.Reference; h.Clicks && b.hold[r] == k {
			b.zeroed[r] = b.keep(nil)
		}
	}
}

// shareSeats finds the stops that use a seat of the reference's, and which of
// their own seats that is: a bit for each, by its place in the leverage.
func (b *truthBuilder) shareSeats() map[int]uint64 {
	out := map[int]uint64{}
	if b.Reference < 0 {
		return out
	}
	for _, seat := range b.Stops[b.Reference].Seats {
		for _, v := range b.Seats[seat].Serves {
			if place := b.holeOf(b.levers[b.hold[v.Stop]], v.Catch); place >= 0 {
				out[v.Stop] |= 1 << place
			}
		}
	}
	return out
}

// apart lists what is off between the reference and a stop of a hold. What moves
// both alike is not: the place of a catch that drops at both, as far as it pulls
// at both alike; and of a seat that serves both.
func (b *truthBuilder) apart(hold int, seats uint64) []ErrorPart {
	here, there := b.levers[hold], b.levers[b.hold[b.Reference]]
	shop, list := b.Plan.Shop, partList{}
	left := slices.Clone(there.seats) // of the reference's
	for place, p := range here.seats {
		turn := p.turn
		if seats&(1<<place) != 0 && len(left) > 0 {
			// A seat is one hole only at one radius; any of the reference's pulls
			// of that radius stands for it.
			k := b.sameRadius(left, p.catch)
			turn -= left[k].turn
			left = slices.Delete(left, k, k+1)
		}
		list.add(SeatPlace, budget.Disc, turn*shop.SeatError)
	}
	for _, p := range left {
		list.add(SeatPlace, budget.Disc, p.turn*shop.SeatError)
	}
	catches := map[int]float64{}
	for _, p := range there.pulls {
		catches[p.catch] -= p.turn
	}
	for _, p := range here.pulls {
		catches[p.catch] += p.turn
	}
	for _, lever := range []leverage{here, there} {
		for _, p := range lever.pulls {
			list.add(CatchPlace, budget.Disc, catches[p.catch]*shop.CatchError)
			delete(catches, p.catch)
		}
	}
	b.addRest(&list, here)
	b.addRest(&list, there)
	return list.parts
}

// sameRadius returns the pull whose catch is on the ring nearest to a catch's.
func (b *truthBuilder) sameRadius(pulls []pull, catch int) int {
	best, off := 0, math.Inf(1)
	for k, p := range pulls {
		if d := math.Abs(b.Plan.Catches[p.catch].Radius - b.Plan.Catches[catch].Radius); d < off {
			best, off = k, d
		}
	}
	return best
}

// keep returns where an error with these parts is kept, working it out if it is
// new.
func (b *truthBuilder) keep(parts []ErrorPart) int {
	key := make([]byte, 0, 9*len(parts))
	for _, p := range parts {
		key = append(key, byte(p.Cause)<<4|byte(p.Shape))
		key = binary.LittleEndian.AppendUint64(key, math.Float64bits(p.Size))
	}
	k, known := b.known[string(key)]
	if !known {
		k = len(b.errors)
		b.known[string(key)] = k
		b.errors = append(b.errors, newStopError(parts))
	}
	return k
}
