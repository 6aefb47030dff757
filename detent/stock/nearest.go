package stock

import (
	"cmp"
	"math"
	"slices"
)

// SameSize is the difference of diameters (mm) below which two sizes are one:
// far below anything a shop can measure, far above the rounding of a sum.
const SameSize = 1e-6

// sized is what is sold in a system of sizes.
type sized interface {
	size() float64 // mm
	series() System
}

// bySize orders by size, then by system.
func bySize[T sized](a, b T) int {
	return cmp.Or(cmp.Compare(a.size(), b.size()), cmp.Compare(a.series(), b.series()))
}

// within returns those of a list that are of the systems, or all of it when
// none are named.
func within[T sized](list []T, systems []System) []T {
	if len(systems) == 0 {
		return list
	}
	var out []T
	for _, x := range list {
		if slices.Contains(systems, x.series()) {
			out = append(out, x)
		}
	}
	return out
}

// near returns the n of a sorted list that are nearest to mm, in their order;
// of two as near, the smaller. It grows a window from where mm would stand.
func near[T sized](list []T, mm float64, n int, systems []System) []T {
	if math.IsNaN(mm) {
		return nil
	}
	list = within(list, systems)
	from, _ := slices.BinarySearchFunc(list, mm, func(x T, mm float64) int { return cmp.Compare(x.size(), mm) })
	to := from
	for to-from < min(n, len(list)) {
		if to == len(list) || from > 0 && mm-list[from-1].size() <= list[to].size()-mm+SameSize {
			from--
		} else {
			to++
		}
	}
	return slices.Clone(list[from:to])
}

// nearest returns the one nearest to mm; the first of its size, so that among
// equal sizes the order of the systems decides.
func nearest[T sized](list []T, mm float64, systems []System) (T, bool) {
	found := near(list, mm, 1, systems)
	if len(found) == 0 {
		var none T
		return none, false
	}
	return above(list, found[0].size(), systems)
}

// above returns the smallest that is not under mm.
func above[T sized](list []T, mm float64, systems []System) (T, bool) {
	for _, x := range within(list, systems) {
		if x.size() >= mm-SameSize {
			return x, true
		}
	}
	var none T
	return none, false
}
