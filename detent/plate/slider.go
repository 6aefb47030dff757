package plate

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// slider lists the hole of a pin or bolt in the turntable and the curved slot of
// the base that it runs in.
//
// The pin meets the slot's end when it has gone Beyond past the travel: the slot
// is wider than the pin by Play, so that the pin's middle then stands Play/2
// past the middle of the slot's round end, a chord at the pin's radius.
func slider(pl *Plate, s plan.Slider, pin, slot Fitting) []Feature {
	if s.Diameter == 0 {
		return nil
	}
	r := sliderRadius(pl.Plan, s)
	turned := turnSign(pl.Plan)
	az := geom.Angle(s.Azimuth)
	short := geom.FromRadians(2 * math.Asin(math.Min(1, s.Play/(4*r))))
	past := geom.Angle(s.Beyond) - short
	from, to := geom.Angle(pl.Plan.Travel.From)-past, geom.Angle(pl.Plan.Travel.To)+past
	if drawable(to-from) == 0 { // hardly any travel and much play: the pin has a wider hole
		from = (from + to) / 2
		to = from
	}
	return []Feature{
		roundHole(plan.PartTurntable, pin, 0, geom.Polar(r, az), s.Diameter),
		{
			Part: plan.PartBase, Kind: plan.ArcSlot, Fitting: slot,
			Core: geom.ArcBetween(r, az+turned*from, az+turned*to), Half: (s.Diameter + s.Play) / 2,
		},
	}
}

// sliderRadius returns how far a pin is from the pivot.
func sliderRadius(p plan.Plan, s plan.Slider) float64 {
	if s.Radius > 0 {
		return s.Radius
	}
	least := math.Inf(1)
	for _, c := range p.Catches {
		least = min(least, c.Radius)
	}
	return least / 2
}

// turnSign is +1 where a positive turn takes the table clockwise, else -1.
func turnSign(p plan.Plan) geom.Angle {
	if p.Arrangement.PositiveTurn == plan.Clockwise {
		return 1
	}
	return -1
}
