package room

import (
	"iter"
	"math"

	"stopwright/detent/geom"
)

// movedStep (degrees) is the step to which a moved stop is rounded.
const movedStep geom.Angle = 0.001

// onStep rounds a turn to movedStep.
func onStep(t geom.Angle) geom.Angle { return geom.Angle(math.Round(t.Degrees()*1e3) / 1e3) }

// NearestStops yields answers that put every stop on one ring with one catch,
// the plan's own ring first and then the largest down, and move stops by no more
// than they must.
func (p Problem) NearestStops() iter.Seq[Answer] {
	stops := p.inTravel()
	return func(yield func(Answer) bool) {
		var radii []float64
		for _, r := range p.Radii {
			if r == p.Own {
				radii = append(radii, r)
			}
		}
		for i := len(p.Radii) - 1; i >= 0; i-- {
			if p.Radii[i] != p.Own {
				radii = append(radii, p.Radii[i])
			}
		}
		for _, r := range radii {
			moved, ok := MoveApart(stops.turns, GapFor(r, p.pitch()))
			if !ok || len(moved) > 0 && (moved[0] < p.From || moved[len(moved)-1] > p.To) {
				continue
			}
			if !yield(p.single(Nearest, r, stops, moved)) {
				return
			}
		}
	}
}

// MoveApart moves stops, given in order and within a full turn, so that
// neighbours are at least gap apart, the last and the first included, and the
// one moved farthest is moved as little as can be, to 0.001 degrees. Stops with
// room around them stay. It is false where the stops have no room on a circle
// without moving the first and the last towards each other.
//
// With y_i = stop_i - i·gap the moved stops, less i·gap, must not fall; the least
// greatest distance to y of a sequence that does not fall is that of
// (max_{j≤i} y_j + min_{j≥i} y_j)/2. Exact mathematics (isotonic regression in
// the largest distance).
func MoveApart(stops []geom.Angle, gap geom.Angle) ([]geom.Angle, bool) {
	n := len(stops)
	gap += movedStep // rounding takes at most one step off a gap
	out := make([]geom.Angle, n)
	low := make([]geom.Angle, n) // least of y from i on
	least := geom.Angle(inf)
	for i := n - 1; i >= 0; i-- {
		least = min(least, stops[i]-geom.Angle(i)*gap)
		low[i] = least
	}
	most := geom.Angle(-inf)
	for i, t := range stops {
		shift := geom.Angle(i) * gap
		most = max(most, t-shift)
		moved := (most+low[i])/2 + shift
		out[i] = t
		if (moved - t).Abs() > movedStep/2 {
			out[i] = onStep(moved)
		}
	}
	if n > 1 && out[0]+geom.FullTurn-out[n-1] < gap-movedStep {
		return nil, false
	}
	return out, true
}
