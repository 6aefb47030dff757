package ui

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// The steps (mm) to which dragged sizes are rounded: those a rule can be read to.
const (
	radiusStep = 0.5
	sizeStep   = 1
)

// round returns x to the nearest step, at least one step.
func round(x, step float64) float64 { return math.Max(step, math.Round(x/step)*step) }

// resizeRing makes the catches on the ring of the given radius follow the
// pointer in or out.
func resizeRing(radius float64) func(*plan.Plan, geom.Point, geom.Point) {
	return func(p *plan.Plan, from, to geom.Point) {
		for i := range p.Catches {
			if p.Catches[i].Radius == radius {
				p.Catches[i].Radius = round(radius+to.Norm()-from.Norm(), radiusStep)
			}
		}
	}
}

// resizePart makes a part's outer edge follow the pointer.
func resizePart(part plan.Part) func(*plan.Plan, geom.Point, geom.Point) {
	return func(p *plan.Plan, from, to geom.Point) {
		out := 2 * (to.Norm() - from.Norm()) // of a diameter
		switch {
		case part == plan.PartTurntable:
			p.Turntable.Diameter = round(p.Turntable.Diameter+out, sizeStep)
		case part == plan.PartCollar:
			p.Collar.OutsideDiameter = round(p.Collar.OutsideDiameter+out, sizeStep)
		case p.Base.Shape == plan.Disc:
			p.Base.Diameter = round(p.Base.Diameter+out, sizeStep)
		// A rectangle: the side that was pressed, and the one opposite.
		case p.Base.Width/2-math.Abs(from.X) < p.Base.Depth/2-math.Abs(from.Y):
			p.Base.Width = round(p.Base.Width+2*(math.Abs(to.X)-math.Abs(from.X)), sizeStep)
		default:
			p.Base.Depth = round(p.Base.Depth+2*(math.Abs(to.Y)-math.Abs(from.Y)), sizeStep)
		}
	}
}

// moveFeature makes a feature of the plan follow the pointer: a curved slot
// turns and changes its radius, the others move.
func (v *plateView) moveFeature(i int) func(*plan.Plan, geom.Point, geom.Point) {
	part := v.w.store.Plan().Features[i].Part
	step := func(x float64) float64 { return math.Round(x/radiusStep) * radiusStep }
	return func(p *plan.Plan, from, to geom.Point) {
		a, b := v.scene.toPart(part, from), v.scene.toPart(part, to)
		f := &p.Features[i]
		if f.Kind == plan.ArcSlot {
			turn := math.Round((b.Azimuth() - a.Azimuth()).Wrap().Degrees())
			if f.From+turn >= -360 && f.To+turn <= 360 {
				f.From, f.To = f.From+turn, f.To+turn
			}
			f.Radius = round(f.Radius+b.Norm()-a.Norm(), radiusStep)
			return
		}
		dx, dy := step(f.X+b.X-a.X)-f.X, step(f.Y+b.Y-a.Y)-f.Y
		f.X, f.Y = f.X+dx, f.Y+dy
		if f.Kind == plan.Slot {
			f.X2, f.Y2 = f.X2+dx, f.Y2+dy
		}
	}
}
