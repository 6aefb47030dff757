package plate

import (
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Feature is something else cut through a part: one of the plan's features, or
// a collar screw. Its outline is everything within Half of its Core.
type Feature struct {
	Part  plan.Part
	Kind  plan.Kind
	Label string // the maker's; empty if none was given
	Index int    // into the plan's features; for a screw, its number from 0
	Screw bool
	Core  Core
	Half  float64 // half the diameter or width, mm
}

// Core is the centre line of a feature: a [geom.Segment] (of no length for a
// round hole) or a [geom.Arc].
type Core interface {
	DistanceToPoint(geom.Point) float64
	DistanceToArc(geom.Arc) float64
}

// features lists the plan's features, then the collar's screws, which pass
// through the collar into the base.
func features(p plan.Plan) []Feature {
	out := make([]Feature, 0, len(p.Features))
	for i, f := range p.Features {
		out = append(out, Feature{
			Part: f.Part, Kind: f.Kind, Label: f.Label, Index: i,
			Core: core(f), Half: max(f.Diameter, f.Width) / 2,
		})
	}
	if p.Collar == nil {
		return out
	}
	s := p.Collar.Screws
	for _, part := range [2]plan.Part{plan.PartCollar, plan.PartBase} {
		for i := range s.Count {
			az := geom.Angle(s.Start + 360*float64(i)/float64(s.Count)).Wrap()
			at := geom.Polar(s.Circle/2, az)
			out = append(out, Feature{
				Part: part, Kind: plan.Hole, Index: i, Screw: true,
				Core: geom.Segment{A: at, B: at}, Half: s.Diameter / 2,
			})
		}
	}
	return out
}

// core returns the centre line of a feature of the plan.
func core(f plan.Feature) Core {
	a := geom.Point{X: f.X, Y: f.Y}
	switch f.Kind {
	case plan.Slot:
		return geom.Segment{A: a, B: geom.Point{X: f.X2, Y: f.Y2}}
	case plan.ArcSlot:
		return geom.ArcBetween(f.Radius, geom.Angle(f.From), geom.Angle(f.To))
	}
	return geom.Segment{A: a, B: a}
}

// Clear returns the material (mm) between the feature and a hole of the given
// radius at p; negative where they overlap.
func (f Feature) Clear(p geom.Point, radius float64) float64 {
	return f.Core.DistanceToPoint(p) - f.Half - radius
}

// SeatsNear calls yield for every seat with less than reach mm of material
// between its mouth and the feature, with that material (negative where they
// overlap), by ring and azimuth.
func (pl *Plate) SeatsNear(f Feature, reach float64, yield func(seat int, web float64)) {
	mouth := pl.Plan.Seat.Mouth() / 2
	d := reach + f.Half + mouth
	for _, r := range pl.index.rings {
		from, sweep, ok := window(f.Core, r.radius, d)
		if !ok {
			continue
		}
		r.within(from, sweep, func(seat int) {
			if web := f.Clear(pl.Seats[seat].Centre, mouth); web < reach {
				yield(seat, web)
			}
		})
	}
}

// windowSlack widens a window of azimuths so that rounding cannot lose a seat
// at its very edge; the distance itself is tested afterwards.
const windowSlack geom.Angle = 1e-6

// window returns a range of azimuths that holds every point of the circle of
// the given radius within d mm of the core, or false when there is none.
func window(c Core, radius, d float64) (from, sweep geom.Angle, ok bool) {
	switch c := c.(type) {
	case geom.Arc:
		w, ok := halfWindow(radius, c.Radius, d)
		return c.From - w, c.Sweep + 2*w, ok
	case geom.Segment:
		mid := c.A.Add(c.B).Scale(0.5)
		w, ok := halfWindow(radius, mid.Norm(), d+c.A.Distance(c.B)/2)
		return mid.Azimuth() - w, 2 * w, ok
	}
	return 0, geom.FullTurn, true
}

// halfWindow returns how far in azimuth from a point at distance rho from the
// pivot the circle of the given radius stays within d of it (180 is all round),
// or false when it never does. It is the cosine rule.
func halfWindow(radius, rho, d float64) (geom.Angle, bool) {
	if math.Abs(radius-rho) > d {
		return 0, false
	}
	cos := (radius*radius + rho*rho - d*d) / (2 * radius * rho)
	if !(cos > -1) { // all round, also when the point is on the pivot
		return 180, true
	}
	return geom.FromRadians(math.Acos(math.Min(1, cos))) + windowSlack, true
}

// within calls yield for each seat of the ring from an azimuth clockwise
// through sweep.
func (r ringSeats) within(from, sweep geom.Angle, yield func(seat int)) {
	if sweep >= geom.FullTurn {
		for _, s := range r.seat {
			yield(s)
		}
		return
	}
	n := len(r.at)
	from = from.Turn()
	start, _ := slices.BinarySearch(r.at, from)
	for m := range n {
		j := (start + m) % n
		if (r.at[j] - from).Turn() > sweep {
			return
		}
		yield(r.seat[j])
	}
}
