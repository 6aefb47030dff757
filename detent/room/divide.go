package room

import (
	"context"
	"iter"
	"math"

	"stopwright/detent/geom"
)

// maxDivisions is the finest division of a full turn that is looked for.
const maxDivisions = 3600

// lattice returns the coarsest division of a full turn on which all stops lie,
// counted from the first, and each stop's number on it; false where there is
// none up to maxDivisions. Stops are in order.
func lattice(stops []geom.Angle) (n int, at []int, ok bool) {
	if len(stops) < 2 {
		return 0, nil, false
	}
	at = make([]int, len(stops))
	whole := func(n int) bool {
		step := geom.FullTurn / geom.Angle(n)
		for i, t := range stops {
			k := math.Round(((t - stops[0]) / step).Degrees())
			if (t - stops[0] - geom.Angle(k)*step).Abs() > sameTurn {
				return false
			}
			at[i] = int(k)
		}
		return true
	}
	// No step is longer than the least gap.
	for n := int(geom.FullTurn / (LeastGap(Places(stops)) + sameTurn)); n <= maxDivisions; n++ {
		if n > 0 && whole(n) {
			return n, at, true
		}
	}
	return 0, nil, false
}

// Spread returns, for n equal divisions of a turn and c catches, where the
// catches go so that n/c seats at every c-th division serve every division, each
// with just one ball: catch r stands at a division that leaves -r when divided
// by c, and as near r/c of the way round as that allows. c must divide n.
//
// Seats at multiples of c and these places make up the whole turn, each division
// once: a factorization of the cyclic group of n. No fewer seats will do, for
// each ball meets each seat once in a turn.
func Spread(n, c int) []int {
	out := make([]int, c)
	for r := range out {
		round := math.Round(float64(r*n)/float64(c*c) + float64(r)/float64(c))
		out[r] = ((c*int(round)-r)%n + n) % n
	}
	return out
}

// Divided yields answers for stops that are all the equal divisions of a full
// turn, with so many catches, at least 2, if that divides them: each seat serves
// as many stops. They are on the plan's own ring if that does, then from the
// smallest up.
func (p Problem) Divided(ctx context.Context, catches int) iter.Seq[Answer] {
	stops := p.inTravel()
	n, at, ok := lattice(stops.turns)
	if !ok || n != len(stops.turns) || catches < 2 || n%catches != 0 {
		return none
	}
	return p.onLattice(ctx, Divided, stops, at, n, catches)
}

// interleaved yields answers for stops that lie on equal divisions of a turn
// without being all of them.
func (p Problem) interleaved(ctx context.Context, stops places, k int) iter.Seq[Answer] {
	n, at, ok := lattice(stops.turns)
	if !ok || n == len(stops.turns) || n%k != 0 {
		return none
	}
	return p.onLattice(ctx, SharedRing, stops, at, n, k)
}

// onLattice yields answers with c catches spread over n divisions, one a radius,
// that prove clean when swept.
func (p Problem) onLattice(ctx context.Context, kind Kind, stops places, at []int, n, c int) iter.Seq[Answer] {
	step := geom.FullTurn / geom.Angle(n)
	spread := Spread(n, c)
	places := make([]geom.Angle, c)
	for r, q := range spread {
		places[r] = step * geom.Angle(q)
	}
	of := make([]int, len(stops.turns))
	for i, k := range at {
		of[i] = k % c
	}
	return func(yield func(Answer) bool) {
		a := p.onOneRing(kind, 1, places, stops, of, nil)
		var seats []geom.Angle
		for _, s := range a.Seats() {
			seats = append(seats, s.Place)
		}
		least := RingFor(LeastGap(seats), p.pitch())
		if len(seats) < 2 {
			least = 0
		}
		least = max(least, RingFor(LeastGap(Places(places)), p.Pocket))
		for _, r := range p.atLeast(least) {
			if ctx.Err() != nil {
				return
			}
			a := p.onOneRing(kind, r, places, stops, of, nil)
			if !p.clean(a) {
				return // a ring of another size clicks at the same turns
			}
			if !yield(a) {
				return
			}
		}
	}
}
