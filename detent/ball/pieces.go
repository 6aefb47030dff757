package ball

import (
	"math"

	"stopwright/detent/geom"
)

// piece is one part of a seat as the ball's centre feels it: the path of the
// centre while the ball rolls over an edge (a circle about the edge), or slides
// on a slope (a straight line parallel to it).
//
// Only the near side of the seat counts. Material never rises towards the axis,
// so at offset s the point of a ring of radius ρ that lifts the ball highest is
// the nearest one, |ρ - s| away.
type piece struct {
	rest     Rest
	floor    bool    // belongs to the floor, not to the wall
	from, to float64 // offsets at which it can touch, mm

	rho, h float64 // edge: its radius and height, mm (h ≤ 0)

	slope    bool
	sin, cos float64 // slope: of its contact angle
	z0       float64 // slope: height of the centre, continued to offset 0
}

// at returns the contact at an offset inside the piece's range.
func (p *piece) at(s, r float64) touch {
	if p.slope {
		return touch{p.rest, p.z0 + s*p.sin/p.cos, p.sin, p.cos}
	}
	d := min(max(p.rho-s, 0), r)
	down := math.Sqrt((r - d) * (r + d))
	return touch{p.rest, p.h + down, d / r, down / r}
}

// offsetAt returns the offset at which the piece carries the centre at height z.
// A flat floor has none.
func (p *piece) offsetAt(z, r float64) float64 {
	if p.slope {
		return (z - p.z0) * p.cos / p.sin
	}
	down := min(max(z-p.h, 0), r)
	return p.rho - math.Sqrt((r-down)*(r+down))
}

// pieces gathers what a ball of radius r can touch, from the mouth inwards.
// Inside the relief's radius there is nothing.
type pieces struct {
	list   []piece
	r      float64
	relief float64
}

// edge adds a sharp edge of radius rho at height h.
func (ps *pieces) edge(rest Rest, rho, h float64, floor bool) {
	ps.list = append(ps.list, piece{
		rest: rest, floor: floor, from: rho - ps.r, to: rho, rho: rho, h: h,
	})
}

// inside adds an edge unless the relief hole has taken it away.
func (ps *pieces) inside(rest Rest, rho, h float64) {
	if rho > ps.relief {
		ps.edge(rest, rho, h, false)
	}
}

// slope adds a cone of half angle half from the radius outer, at height h, down
// to the radius inner. Where the relief hole cuts it short, the hole's edge
// follows.
func (ps *pieces) slope(rest Rest, outer, h, inner float64, half geom.Angle, floor bool) {
	if outer <= max(inner, ps.relief) {
		return
	}
	cut := ps.relief > 0 && ps.relief >= inner
	inner = max(inner, ps.relief)
	cos, sin := half.SinCos() // the contact angle is 90° less the half angle
	d := ps.r * sin           // from the centre out to the contact
	ps.list = append(ps.list, piece{
		rest: rest, floor: floor, slope: true, sin: sin, cos: cos,
		from: inner - d, to: outer - d,
		z0: h - (outer-d)*sin/cos + ps.r*cos,
	})
	if cut {
		ps.edge(Relief, inner, h-(outer-inner)*sin/cos, floor)
	}
}
