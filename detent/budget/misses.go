package budget

import "math"

// DiscOf estimates the radius of the disc in which points land evenly, from how
// far (0 or more) each of a few landed from its middle. It is false without
// any. The mean square of the distances is half that of the radius; and the
// farthest of n points lies on average 2n/(2n+1) of the radius out. The larger
// of the two estimates is taken, since too small a radius promises too much.
func DiscOf(misses []float64) (radius float64, ok bool) {
	if len(misses) == 0 {
		return 0, false
	}
	squares, farthest := 0.0, 0.0
	for _, m := range misses {
		squares += m * m
		farthest = max(farthest, math.Abs(m))
	}
	n := float64(len(misses))
	return max(math.Sqrt(2*squares/n), farthest*(2*n+1)/(2*n)), true
}
