package room

import (
	"context"
	"iter"
	"math"
	"slices"

	"stopwright/detent/geom"
)

// MaxRings is the most rings, and the most catches on several rings, that an
// answer has.
const MaxRings = 6

// SeparateRings yields answers with so many rings, 2 to MaxRings, of one catch
// each. Rings lie at least a seat and a web apart, so that they may be turned as
// they like and no ball meets a seat of another ring; where the stops have no
// room on so many of the largest such rings, there is none. The stops are dealt
// so that the least web of a ring is as large as can be.
func (p Problem) SeparateRings(ctx context.Context, rings int) iter.Seq[Answer] {
	stops := p.inTravel()
	if rings < 2 || rings > min(MaxRings, len(stops.turns)) {
		return none
	}
	ones := make([]int, rings)
	for i := range ones {
		ones[i] = 1
	}
	return func(yield func(Answer) bool) { p.layout(ctx, Rings, stops, ones, yield) }
}

// MixedRings yields answers with so many catches, 3 to MaxRings, on several
// rings, some of them with several catches in sectors of their own; those with
// the fewest rings first. The stops are dealt without regard to the sectors, so
// that a deal that needs its catches to keep to narrower sectors is not found.
func (p Problem) MixedRings(ctx context.Context, catches int) iter.Seq[Answer] {
	stops := p.inTravel()
	if catches < 3 || catches > min(MaxRings, len(stops.turns)) {
		return none
	}
	return func(yield func(Answer) bool) {
		for m := 2; m < catches; m++ {
			for _, counts := range shares(catches, m, catches) {
				if counts[0] > 1 && !p.layout(ctx, Mixed, stops, counts, yield) {
					return
				}
			}
		}
	}
}

// shares lists the ways to share k catches among m rings, each at least one, none
// more than the one before it and the first at most most.
func shares(k, m, most int) [][]int {
	if m == 1 {
		if k < 1 || k > most {
			return nil
		}
		return [][]int{{k}}
	}
	var out [][]int
	for first := 1; first <= min(most, k-m+1); first++ {
		for _, rest := range shares(k-first, m-1, first) {
			out = append(out, append([]int{first}, rest...))
		}
	}
	return out
}

// layout yields answers with counts[i] catches on the i-th ring. It returns false
// when no more are wanted.
func (p Problem) layout(ctx context.Context, kind Kind, stops places, counts []int, yield func(Answer) bool) bool {
	if !p.mayShare(counts[0]) || len(stops.turns) > maxDealt {
		return true
	}
	for i, rings := range p.chains(len(counts)) {
		if ctx.Err() != nil {
			return false
		}
		var radii []float64
		for k, r := range rings {
			radii = append(radii, slices.Repeat([]float64{r}, counts[k])...)
		}
		if i == 0 { // only the limit; these rings come again in their turn
			if _, ok := Assign(ctx, stops.turns, gapsFor(radii, p.pitch())); !ok {
				return ctx.Err() == nil // where the largest rings have no room none have
			}
			continue
		}
		of, widest, ok := Widest(ctx, stops.turns, radii, p.pitch())
		if !ok {
			continue
		}
		a, ok := p.arrange(kind, stops, of, rings, counts)
		if !ok {
			return true // a ring of another size hardly changes its sectors
		}
		a.Web = min(widest, leastStep(rings)) - p.Mouth
		if !yield(a) {
			return false
		}
	}
	return true
}

// maxDealt is the most stops that are dealt to rings.
const maxDealt = 720

// mayShare reports whether so many catches might share a ring. Catch j and the
// next, k, are more than to - first(k) and last(j) - from apart; all those
// together are at least half the travel for each catch.
func (p Problem) mayShare(catches int) bool {
	return catches == 1 || geom.Angle(catches)*(p.To-p.From)/2 < geom.FullTurn
}

// arrange places the catches of each ring in sectors.
func (p Problem) arrange(kind Kind, stops places, of []int, rings []float64, counts []int) (Answer, bool) {
	k := 0
	for _, n := range counts {
		k += n
	}
	parts := spans(stops.turns, of, k)
	used := make([]bool, k)
	for _, c := range of {
		used[c] = true
	}
	a := Answer{Kind: kind, Stops: p.stops(stops, of, nil)}
	if slices.Contains(used, false) {
		return a, false // an answer with fewer catches
	}
	first := 0
	for ring, n := range counts {
		places, ok := p.sectors(rings[ring], parts[first:first+n])
		if !ok {
			return a, false
		}
		for _, at := range places {
			a.Catches = append(a.Catches, Catch{Hole{at, rings[ring]}, ring})
		}
		first += n
	}
	return a, true
}

// chains lists sets of n ring radii at least a pitch apart. The first is that of
// the largest rings, than which none have more room; then those with the plan's
// own ring, inward and outward; then from the largest inward.
func (p Problem) chains(n int) [][]float64 {
	var out [][]float64
	inward := func(from float64) []float64 {
		c := []float64{from}
		for i := len(p.Radii) - 1; i >= 0 && len(c) < n; i-- {
			if p.Radii[i] <= c[len(c)-1]-p.pitch()+Slack {
				c = append(c, p.Radii[i])
			}
		}
		return c
	}
	outward := func(from float64) []float64 {
		c := []float64{from}
		for i := 0; i < len(p.Radii) && len(c) < n; i++ {
			if p.Radii[i] >= c[len(c)-1]+p.pitch()-Slack {
				c = append(c, p.Radii[i])
			}
		}
		return c
	}
	add := func(c []float64) {
		if len(c) == n {
			out = append(out, c)
		}
	}
	if len(p.Radii) == 0 {
		return nil
	}
	add(inward(p.Radii[len(p.Radii)-1]))
	if slices.Contains(p.Radii, p.Own) {
		add(inward(p.Own))
		add(outward(p.Own))
	}
	for i := len(p.Radii) - 1; i >= 0; i-- {
		add(inward(p.Radii[i]))
	}
	return out
}

// leastStep returns the least distance between rings, mm.
func leastStep(rings []float64) float64 {
	least := inf
	for i, r := range rings {
		for _, q := range rings[:i] {
			least = min(least, math.Abs(r-q))
		}
	}
	return least
}
