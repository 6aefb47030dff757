package room

import "stopwright/detent/geom"

// Deal shares n stops in order among k catches in turn: stop i to catch i mod k.
//
// On a line no deal leaves more between the nearest two stops of one catch.
// Among any k+1 stops in a row two go to one catch, so that the least gap is at
// most the least span of k+1 stops in a row; and that is the least gap here.
func Deal(n, k int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i % k
	}
	return out
}

// DealtGap returns the least gap that [Deal] leaves on a line: the least span of
// k+1 stops in a row. It is a full turn where no catch has two. Stops are in
// order.
func DealtGap(stops []geom.Angle, k int) geom.Angle {
	least := geom.FullTurn
	for i := k; i < len(stops); i++ {
		least = min(least, stops[i]-stops[i-k])
	}
	return least
}
