package budget

import "math"

// strips is a shape cut into strips of equal area, lying on each other, for
// drawing from a density that falls from its middle to its reach: the ziggurat
// of Marsaglia and Tsang (2000), without a tail because the reach is finite. A
// point is drawn in a strip taken at random; nearly always it lies where the
// strip is full, and its place across is the number wanted.
type strips struct {
	height func(x float64) float64
	across [stripCount]float64     // half length of each strip
	full   [stripCount]float64     // share of it that is full: the next one's length
	up     [stripCount + 1]float64 // heights between which each lies
}

// stripCount is a power of two, so that eight binary digits choose the strip.
const stripCount = 256

var (
	discStrips = newStrips(func(x float64) float64 { return math.Sqrt(max(0, 1-x*x)) },
		func(y float64) float64 { return math.Sqrt(max(0, 1-y*y)) }, Disc.reach())
	normalStrips = newStrips(func(x float64) float64 { return math.Exp(-x * x / 2) },
		func(y float64) float64 { return math.Sqrt(max(0, -2*math.Log(y))) }, Normal.reach())
)

// newStrips cuts a density of height 1 in the middle, given it and the place at
// which it has a height. The area of a strip is found by halving: the strips
// must end exactly at the top.
func newStrips(height, place func(float64) float64, reach float64) *strips {
	s := &strips{height: height}
	small, large := 0.0, reach
	for range 200 {
		area := (small + large) / 2
		if s.cut(area, place, reach) {
			large = area
		} else {
			small = area
		}
	}
	s.cut(small, place, reach)
	s.up[stripCount] = 1
	return s
}

// cut lays strips of an area on each other from the bottom. It is true when they
// stand over the top.
func (s *strips) cut(area float64, place func(float64) float64, reach float64) bool {
	length, up := reach, 0.0
	for i := range stripCount {
		s.across[i], s.up[i] = length, up
		up += area / length
		if up > 1 && i < stripCount-1 {
			return true
		}
		next := place(min(up, 1))
		s.full[i] = next / length
		length = next
	}
	return up > 1
}

// draw returns one number of the density, of size 1. Eight digits of the random
// number choose the strip and the 53 others the place in it.
func (s *strips) draw(from *stream) float64 {
	for {
		b := from.next()
		i := b & (stripCount - 1)
		u := signed(b)
		if math.Abs(u) < s.full[i] {
			return u * s.across[i]
		}
		x := u * s.across[i]
		if s.up[i]+unsigned(from.next())*(s.up[i+1]-s.up[i]) < s.height(math.Abs(x)) {
			return x
		}
	}
}
