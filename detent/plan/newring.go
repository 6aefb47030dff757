package plan

import "math"

// NewRing returns a further catch for a plan on a ring of its own: inside the
// innermost by a seat and a web, in half millimetres, or outside the outermost
// where that leaves no ring; otherwise as [NewPlacement].
func NewRing(p Plan) Placement {
	const step = 0.5 // mm, that can be set on a trammel
	c := NewPlacement(p)
	least, most := p.Catches[0].Radius, p.Catches[0].Radius
	for _, q := range p.Catches {
		least, most = math.Min(least, q.Radius), math.Max(most, q.Radius)
	}
	apart := p.Seat.Mouth() + p.Rules.Web
	c.Radius = math.Floor((least-apart)/step) * step
	if smallest := p.Turntable.PivotBore/2 + apart; c.Radius < smallest {
		c.Radius = math.Min(math.Ceil((most+apart)/step)*step, sizes.hi)
	}
	return c
}
