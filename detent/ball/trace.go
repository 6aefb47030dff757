package ball

import (
	"math"
	"slices"
)

// maxCuts holds the ends of six pieces, the two crossings of each pair of them,
// the axis and the mouth: no seat has more.
const maxCuts = 2*6 + 6*5 + 2

// trace finds what is touched at every offset from the axis to the mouth: of
// all pieces the one that holds the ball highest. It can change only where a
// piece begins, ends, or crosses another, and those offsets are known in closed
// form; between two of them one look in the middle tells.
func (c *Contour) trace() {
	var room [maxCuts]float64
	cuts := append(room[:0], 0, c.mouth)
	add := func(s float64) {
		if s > 0 && s < c.mouth {
			cuts = append(cuts, s)
		}
	}
	for i := range c.pieces {
		p := &c.pieces[i]
		add(p.from)
		add(p.to)
		for j := range c.pieces[:i] {
			crossings(p, &c.pieces[j], c.r, add)
		}
	}
	slices.Sort(cuts)

	c.spans = make([]span, 0, len(c.pieces)+1)
	for i := range cuts[1:] {
		from, to := cuts[i], cuts[i+1]
		if from == to {
			continue
		}
		top := c.highest(from + (to-from)/2)
		if n := len(c.spans); n == 0 || c.spans[n-1].piece != top {
			c.spans = append(c.spans, span{from, top})
		}
	}
}

// highest returns the piece that holds the ball highest at s, or -1.
func (c *Contour) highest(s float64) int {
	top, height := -1, math.Inf(-1)
	for i := range c.pieces {
		p := &c.pieces[i]
		if s < p.from || s > p.to {
			continue
		}
		if z := p.at(s, c.r).z; z > height {
			top, height = i, z
		}
	}
	return top
}

// crossings calls add with every offset at which two paths of the ball's centre
// meet, continued beyond their ends if need be.
func crossings(a, b *piece, r float64, add func(float64)) {
	switch {
	case a.slope && b.slope:
		if bend := a.sin/a.cos - b.sin/b.cos; bend != 0 {
			add((b.z0 - a.z0) / bend)
		}
	case a.slope:
		lineAndArc(a, b, r, add)
	case b.slope:
		lineAndArc(b, a, r, add)
	default:
		arcs(a, b, r, add)
	}
}

// lineAndArc adds where a slope's line meets the circle about an edge. Turned
// by the contact angle the line is level: off is how far it passes over the
// edge, half the chord it cuts off.
func lineAndArc(line, edge *piece, r float64, add func(float64)) {
	over := line.z0 + edge.rho*line.sin/line.cos - edge.h // height above the edge
	off := over * line.cos
	if math.Abs(off) > r {
		return
	}
	half := math.Sqrt((r - off) * (r + off))
	foot := edge.rho - off*line.sin
	add(foot - half*line.cos)
	add(foot + half*line.cos)
}

// arcs adds where the circles of radius r about two edges meet on their upper
// halves: on the perpendicular through the middle of the two.
func arcs(a, b *piece, r float64, add func(float64)) {
	across, up := a.rho-b.rho, a.h-b.h
	apart := math.Hypot(across, up)
	if apart == 0 || apart > 2*r {
		return
	}
	rise := math.Sqrt((r - apart/2) * (r + apart/2))
	middle := (a.rho + b.rho) / 2
	add(middle - rise*up/apart)
	add(middle + rise*up/apart)
}
