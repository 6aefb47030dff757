package plate

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// LargestRing returns the radius (mm) up to which seats and pockets keep the
// edge rule all round, in both parts.
func (pl *Plate) LargestRing() float64 {
	inscribed := func(part plan.Part) float64 {
		return OutlineOf(pl.Plan, part).InsideArc(geom.Arc{Sweep: geom.FullTurn})
	}
	widest := 0.0
	for _, p := range pl.Pockets {
		widest = max(widest, p.Widest())
	}
	edge := pl.Plan.Rules.Edge
	return min(
		inscribed(pl.SeatsPart)-edge-pl.Plan.Seat.Mouth()/2,
		inscribed(pl.CatchPart)-edge-widest/2,
	)
}
