package router

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// backOff is how far (mm) short of where it last was a drill that has been drawn
// back is fast again: 0.010 inch, the value of common practice for G83.
const backOff = 0.254

// drill adds the moves of one hole made straight down from the safe height, as
// the cycles G81 and G83 define them. A drill that is drawn back comes up to
// the approach height.
func (p *path) drill(at geom.Point, depth float64, set plan.Router) {
	p.over(at)
	p.fast(set.Approach)
	ends := pecks(set.Approach, depth, set.Peck)
	for i, z := range ends {
		if i > 0 {
			p.fast(set.Approach)
			p.fast(ends[i-1] + backOff)
		}
		p.plunge(z, set.PlungeFeed)
	}
	p.fast(set.SafeHeight)
}

// pecks returns the Z at which each feed ends on the way from a height above
// the face to a depth below it: every peck mm, reckoned from that height, as
// G83 does. With peck 0 there is one.
func pecks(height, depth, peck float64) []float64 {
	var ends []float64
	if peck > 0 {
		for k := 1; ; k++ {
			z := height - float64(k)*peck
			if z <= -depth+slack {
				break
			}
			ends = append(ends, z)
		}
	}
	return append(ends, -depth)
}

// pecked reports whether a hole is drilled in more than one go.
func pecked(depth float64, set plan.Router) bool {
	return len(pecks(set.Approach, depth, set.Peck)) > 1
}
