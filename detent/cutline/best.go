package cutline

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/geom"
)

// BestFence returns the fence distance (mm) at which the crossing wanders least
// while the tool stays where it is; of equals the one nearest to where the fence
// is. It is exact: the wander is made of straight lines and convex. It is false
// where no two leans differ, so that any distance serves.
func (l Line) BestFence(leans []geom.Angle) (float64, bool) {
	return l.best(leans, l.Fence, func(offset, fence float64) ray { return ray{l.Offset * offset, fence} })
}

// BestOffset returns the offset of the tool's line (mm) at which the crossing
// wanders least while the fence stays where it is, as BestFence does. It is
// false too where every lean is as steep as the others, left or right.
func (l Line) BestOffset(leans []geom.Angle) (float64, bool) {
	return l.best(leans, l.Offset, func(offset, fence float64) ray { return ray{l.Fence * fence, offset} })
}

// ray is a straight line: a crossing over the setting that is being sought.
type ray struct{ at0, slope float64 }

func (l Line) best(leans []geom.Angle, now float64, of func(offset, fence float64) ray) (float64, bool) {
	var up, down []ray
	for _, a := range leans {
		if Crosses(a) {
			r := of(law(a))
			up, down = append(up, r), append(down, ray{-r.at0, -r.slope})
		}
	}
	if len(up) == 0 {
		return 0, false
	}
	high, low := hull(up), hull(down) // the wander is the sum of these two
	lowest, highest := high[0].slope+low[0].slope, high[len(high)-1].slope+low[len(low)-1].slope
	if lowest >= 0 || highest <= 0 {
		return 0, false // not a slope: every lean moves alike
	}
	bends := append(bendsOf(high), bendsOf(low)...)
	slices.SortFunc(bends, func(a, b bend) int { return cmp.Compare(a.at, b.at) })
	slope := lowest
	for i, b := range bends {
		slope += b.turns
		if slope > -flat*highest { // here it stops falling; it is level as far as it rises
			to := b.at
			for k := i + 1; slope < flat*highest && k < len(bends); k++ {
				to = bends[k].at
				slope += bends[k].turns
			}
			return math.Max(b.at, math.Min(to, now)) + 0, true
		}
	}
	return 0, false
}

// flat is the slope, as a share of the steepest, that is rounding and not a
// slope.
const flat = 1e-12

// bend is where a hull turns upwards, and by how much its slope grows there.
type bend struct{ at, turns float64 }

func bendsOf(hull []ray) []bend {
	var out []bend
	for i := 1; i < len(hull); i++ {
		out = append(out, bend{meet(hull[i-1], hull[i]), hull[i].slope - hull[i-1].slope})
	}
	return out
}

// meet returns where two lines of different slopes cross.
func meet(a, b ray) float64 { return (a.at0 - b.at0) / (b.slope - a.slope) }

// hull returns the lines that are the highest somewhere, by slope.
func hull(all []ray) []ray {
	slices.SortFunc(all, func(a, b ray) int { return cmp.Or(cmp.Compare(a.slope, b.slope), cmp.Compare(a.at0, b.at0)) })
	var out []ray
	for _, r := range all {
		if n := len(out); n > 0 && out[n-1].slope == r.slope {
			out = out[:n-1] // as steep and lower
		}
		for n := len(out); n > 1 && meet(out[n-2], r) <= meet(out[n-2], out[n-1]); n = len(out) {
			out = out[:n-1]
		}
		out = append(out, r)
	}
	return out
}

// Sensitivity is by how much (mm a mm) the wander grows when the tool or the
// fence is moved on by a little, in each direction; negative where it shrinks.
type Sensitivity struct {
	ToolRight, ToolLeft, FenceAway, FenceNear float64
}

// Sensitivity returns how the wander answers to small moves.
func (l Line) Sensitivity(leans []geom.Angle) Sensitivity {
	const (
		step  = 1e-4 // mm: within a straight stretch of the wander, or on a bend of it
		equal = 1e-9 // mm: crossings at both ends of the wander alike but for rounding
	)
	t := l.Travel(leans)
	grow := func(moved Line) float64 {
		lo, hi := math.Inf(1), math.Inf(-1)
		for _, a := range leans {
			x, ok := l.Crossing(a)
			if !ok {
				continue
			}
			to, _ := moved.Crossing(a)
			if x <= t.Least+equal {
				lo = math.Min(lo, to-x)
			}
			if x >= t.Most-equal {
				hi = math.Max(hi, to-x)
			}
		}
		if t.Leans == 0 {
			return 0
		}
		return (hi-lo)/step + 0
	}
	return Sensitivity{
		ToolRight: grow(Line{l.Offset + step, l.Fence}), ToolLeft: grow(Line{l.Offset - step, l.Fence}),
		FenceAway: grow(Line{l.Offset, l.Fence + step}), FenceNear: grow(Line{l.Offset, l.Fence - step}),
	}
}
