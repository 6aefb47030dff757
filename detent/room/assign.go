package room

import (
	"cmp"
	"context"
	"math"
	"slices"

	"stopwright/detent/geom"
)

// Assign deals stops to slots, each a catch with a ring or a sector of its own,
// so that two stops of a slot are at least its gap apart. It prefers slots that
// come first. Stops are in order and within a full turn; the last and the first
// are neighbours where a whole turn apart is near enough. It returns the slot of
// each stop, and false where it finds no such deal.
//
// It is a dynamic programme over each slot's last stop, and its first while that
// may still be too near the end of the turn; what no later stop can be near to
// is forgotten. That is exact as long as at each stop no more than beam/n
// different pasts matter, as on any plate of few stops; of more the ones with
// most room are kept, so that an answer is right but might be missed.
func Assign(ctx context.Context, stops, gaps []geom.Angle) ([]int, bool) {
	d := dealer{stops, gaps}
	if len(gaps) > MaxCatches || !d.mayFit() {
		return nil, false
	}
	nodes := []dealt{{prev: -1}}
	states := []pastAt{{past: noPast(), node: 0}}
	width := max(leastBeam, beam/max(1, len(stops)))
	for i := range stops {
		if ctx.Err() != nil {
			return nil, false
		}
		known := make(map[past]int, len(states)) // to its place in next
		var next []pastAt
		for _, s := range states {
			for slot := range gaps {
				if slot > 0 && d.alike(&s.past, slot-1, slot) || !d.may(&s.past, slot, i) {
					continue
				}
				t := d.put(s.past, slot, i)
				node := dealt{prev: s.node, slot: slot, cost: nodes[s.node].cost + slot}
				if old, seen := known[t]; !seen {
					known[t] = len(next)
					next = append(next, pastAt{t, len(nodes)})
					nodes = append(nodes, node)
				} else if at := next[old].node; node.cost < nodes[at].cost {
					nodes[at] = node
				}
			}
		}
		if len(next) == 0 {
			return nil, false
		}
		if len(next) > width {
			slices.SortStableFunc(next, func(a, b pastAt) int { return cmp.Compare(d.bound(&a.past, i), d.bound(&b.past, i)) })
			next = next[:width]
		}
		states = next
	}
	best := slices.MinFunc(states, func(a, b pastAt) int { return cmp.Or(nodes[a.node].cost-nodes[b.node].cost, a.node-b.node) }).node
	out := make([]int, len(stops))
	for i := len(stops) - 1; i >= 0; i-- {
		out[i] = nodes[best].slot
		best = nodes[best].prev
	}
	return out, true
}

// Widest deals stops to slots so that the least centre distance (mm) between two
// stops of a slot is as large as can be, and at least pitch; radii are the slots'
// rings. It returns the deal and that distance, infinite where no slot has two
// stops. Exact as [Assign] is.
func Widest(ctx context.Context, stops []geom.Angle, radii []float64, pitch float64) (of []int, widest float64, ok bool) {
	try := func(pitch float64) ([]int, bool) { return Assign(ctx, stops, gapsFor(radii, pitch)) }
	if of, ok = try(pitch); !ok {
		return nil, 0, false
	}
	// Each answer tells how wide it is; anything wider is one of the distances
	// between two stops.
	wider := distances(stops, radii, pitch)
	if len(stops) <= len(radii) {
		wider = append(wider, inf) // one stop a slot
	}
	lo, hi := 0, len(wider) // wider[:lo] can be had
	for lo < hi {
		mid := (lo + hi) / 2
		if better, can := try(wider[mid]); can {
			of, lo = better, mid+1
		} else {
			hi = mid
		}
	}
	return of, leastDistance(stops, radii, of), true
}

// gapsFor returns the least gap on each ring for a pitch.
func gapsFor(radii []float64, pitch float64) []geom.Angle {
	gaps := make([]geom.Angle, len(radii))
	for k, r := range radii {
		gaps[k] = GapFor(r, pitch-Slack/2)
	}
	return gaps
}

// distances lists the centre distances over pitch that two stops of one slot may
// have, in order. By the pigeonhole no deal leaves more than the least span of
// one more stop in a row than there are slots, on the largest ring.
func distances(stops []geom.Angle, radii []float64, pitch float64) []float64 {
	bound := min(DealtGap(stops, len(radii)), 180)
	most := geom.Chord(slices.Max(radii), bound)
	rings := slices.Compact(slices.Sorted(slices.Values(radii)))
	n := len(stops)
	var out []float64
	for i := range stops {
		for k := 1; k < n; k++ {
			apart := stops[(i+k)%n] - stops[i]
			if i+k >= n {
				apart += geom.FullTurn
			}
			if apart > 180 || geom.Chord(rings[0], apart) > most {
				break
			}
			for _, r := range rings {
				if d := geom.Chord(r, apart); d > pitch && d <= most {
					out = append(out, d)
				}
			}
		}
	}
	slices.Sort(out)
	return slices.CompactFunc(out, func(a, b float64) bool { return math.Abs(a-b) <= Slack })
}

// leastDistance returns the least centre distance (mm) between two stops of one
// slot, infinite when no slot has two.
func leastDistance(stops []geom.Angle, radii []float64, of []int) float64 {
	least := inf
	for k, r := range radii {
		var own []geom.Angle
		for i, t := range stops {
			if of[i] == k {
				own = append(own, t)
			}
		}
		if len(own) > 1 {
			least = min(least, geom.Chord(r, LeastGap(Places(own))))
		}
	}
	return least
}
