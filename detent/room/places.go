package room

import (
	"cmp"
	"slices"

	"stopwright/detent/geom"
)

// places is the stops of a problem, each place once.
type places struct {
	turns []geom.Angle // in order, within a full turn
	of    []int        // the place of each stop of the problem
}

// inTravel brings the stops by whole turns into the travel, so that the widest
// gap between them is left out if that can be. A stop that need not be brought
// stays as it is to the last bit. Stops that cannot be in the travel count from
// its start.
func (p Problem) inTravel() places {
	cut := afterWidestGap(Places(p.Stops))
	if len(cut) == 0 {
		return places{}
	}
	best, from := -1, p.From
	for _, turns := range []geom.Angle{0, -1, 1, -2, 2} {
		first, last := cut[0]+turns*geom.FullTurn, cut[len(cut)-1]+turns*geom.FullTurn
		if first < p.From-sameTurn || last > p.To+sameTurn {
			continue
		}
		stay := 0
		for _, t := range p.Stops {
			if t >= first-sameTurn && t <= last+sameTurn {
				stay++
			}
		}
		if stay > best {
			best, from = stay, first
		}
	}
	return p.fromTurn(from)
}

// fromTurn brings the stops into the full turn from a turn on.
func (p Problem) fromTurn(from geom.Angle) places {
	at := make([]geom.Angle, len(p.Stops))
	order := make([]int, len(p.Stops))
	for i, t := range p.Stops {
		if off := t - from; off < -sameTurn || off >= geom.FullTurn-sameTurn {
			if t = from + off.Turn(); t >= from+geom.FullTurn-sameTurn {
				t = from
			}
		}
		at[i], order[i] = t, i
	}
	slices.SortFunc(order, func(a, b int) int { return cmp.Or(cmp.Compare(at[a], at[b]), a-b) })
	out := places{of: make([]int, len(at))}
	for _, i := range order {
		if n := len(out.turns); n == 0 || at[i]-out.turns[n-1] > sameTurn {
			out.turns = append(out.turns, at[i])
		}
		out.of[i] = len(out.turns) - 1
	}
	return out
}
