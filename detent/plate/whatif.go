package plate

import (
	"math"

	"stopwright/detent/plan"
)

// WhatIf is how a plate may come out or wear otherwise than planned.
type WhatIf struct {
	Oversize float64 // the drill cuts larger by this much on the diameter, mm
	Worn     float64 // the rims are worn away by this much all round, mm
	Weaker   float64 // share of the spring's force that is gone, 0 to 1
}

// Apply returns the plan as it would come out. It shares nothing it changes.
func (w WhatIf) Apply(p plan.Plan) plan.Plan {
	p.Seat.Diameter += w.Oversize
	p.Seat.Chamfer += w.Worn
	left := 1 - math.Max(0, math.Min(1, w.Weaker))
	p.Catch.FreeForce *= left
	p.Catch.FlushForce *= left
	return p
}

// ClicksOf works out the catches of a plan without placing a seat.
func ClicksOf(p plan.Plan) []Click { return clicks(p) }

// None reports whether everything comes out as planned.
func (w WhatIf) None() bool { return w == WhatIf{} }
