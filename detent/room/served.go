package room

import (
	"cmp"
	"slices"

	"stopwright/detent/geom"
)

// MaxServed is the finest division of a full turn that is looked for among the
// stops of a plate.
const MaxServed = 720

// served (degrees) is how near a stop lies to a division that it serves: half of
// the last decimal that stops are shown with.
const served geom.Angle = 0.0005

// Division is a number of equal steps of a full turn, and the stops that make
// them, in order from the first.
type Division struct {
	N     int
	Stops []int
}

// Served lists the divisions, from 2 on, that a plate's stops serve when they are
// counted from one of them, as a dividing head is used: 24 stops give 2, 3, 4, 6,
// 8, 12 and 24.
func Served(stops []geom.Angle, from int) []Division {
	if from < 0 || from >= len(stops) {
		return nil
	}
	order := make([]int, len(stops))
	at := func(i int) geom.Angle { // from the first stop; a hair before it counts as on it
		if t := (stops[i] - stops[from]).Turn(); t < geom.FullTurn-served {
			return t
		}
		return 0
	}
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(a, b int) int { return cmp.Or(cmp.Compare(at(a), at(b)), a-b) })
	find := func(t geom.Angle) (int, bool) {
		k, _ := slices.BinarySearchFunc(order, t-served, func(i int, t geom.Angle) int { return cmp.Compare(at(i), t) })
		if k == len(order) || at(order[k]) > t+served {
			return 0, false
		}
		return order[k], true
	}
	var out []Division
	for n := 2; n <= min(len(stops), MaxServed); n++ {
		d := Division{N: n}
		for k := range n {
			i, ok := find(geom.FullTurn * geom.Angle(k) / geom.Angle(n))
			if !ok {
				break
			}
			d.Stops = append(d.Stops, i)
		}
		if len(d.Stops) == n {
			out = append(out, d)
		}
	}
	return out
}
