package router

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// stepOver is how much further out each ring of a pocket lies, as a share of
// the cutter's diameter, at most: under a half, so that no core is left on the
// axis. Common practice, no source.
const stepOver = 0.4

// rings returns the radii (mm) of the circles that the cutter's centre follows
// to clear a round pocket, from the inside out.
func rings(pocket, cutter float64) []float64 {
	last := (pocket - cutter) / 2
	n := max(1, int(math.Ceil(last/(stepOver*cutter)-slack)))
	out := make([]float64, n)
	for k := range out {
		out[k] = last * float64(k+1) / float64(n)
	}
	return out
}

// pocket adds the moves that mill a round pocket from the safe height: ring by
// ring from the inside out, each down a helix and then once round the floor.
// The cutter turns clockwise and goes anticlockwise round the wall, so that it
// climbs, and draws back from the wall before it is lifted.
func (p *path) pocket(at geom.Point, diameter, depth float64, set plan.Router) {
	n := max(1, int(math.Ceil(depth/set.DepthPerPass-slack)))
	for i, r := range rings(diameter, set.Cutter) {
		if i > 0 {
			p.fast(set.Approach)
		}
		p.over(at.Add(geom.Point{X: r}))
		p.fast(set.Approach)
		p.plunge(0, set.PlungeFeed)
		for k := 1; k <= n; k++ {
			p.round(at, -depth*float64(k)/float64(n), set.Feed)
		}
		p.round(at, -depth, set.Feed)
		p.aside(at, set.Feed)
	}
	p.fast(set.SafeHeight)
}
