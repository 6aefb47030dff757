package plate

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Feature is something else cut into a part: one of the plan's features, a
// collar screw, or a fitting. Its outline is everything within Half of its Core.
type Feature struct {
	Part    plan.Part
	Kind    plan.Kind
	Label   string  // the maker's; empty if none was given
	Index   int     // into the plan's features; of others the number of their kind in the part, from 0
	Screw   bool    // of the collar
	Fitting Fitting // empty: none
	Core    Core
	Half    float64 // half the diameter or width, mm
	Depth   float64 // mm; 0: right through
}

// Own reports whether it is one of the plan's features, in which Index counts.
func (f Feature) Own() bool { return !f.Screw && f.Fitting == "" }

// Core is the centre line of a feature: a [geom.Segment] (of no length for a
// round hole) or a [geom.Arc].
type Core interface {
	Nearest(geom.Point) geom.Point
	DistanceToPoint(geom.Point) float64
	DistanceToArc(geom.Arc) float64
	DistanceToSegment(geom.Segment) float64
}

// features lists the plan's features, then the collar's screws, which pass
// through the collar into the base.
func features(p plan.Plan) []Feature {
	out := make([]Feature, 0, len(p.Features))
	for i, f := range p.Features {
		core, across := centreLine(f)
		out = append(out, Feature{Part: f.Part, Kind: f.Kind, Label: f.Label, Index: i, Core: core, Half: across / 2})
	}
	if p.Collar == nil {
		return out
	}
	s := p.Collar.Screws
	for _, part := range [2]plan.Part{plan.PartCollar, plan.PartBase} {
		for i := range s.Count {
			az := geom.Angle(s.Start + 360*float64(i)/float64(s.Count)).Wrap()
			at := geom.Polar(s.Circle/2, az)
			f := Feature{
				Part: part, Kind: plan.Hole, Index: i, Screw: true,
				Core: geom.Segment{A: at, B: at}, Half: s.Diameter / 2,
			}
			if holes := p.Making.Screws; part == plan.PartBase && holes.Pilot > 0 {
				f.Half, f.Depth = holes.Pilot/2, holes.PilotDepth
			}
			out = append(out, f)
		}
	}
	return out
}

// centreLine returns the centre line of a feature of the plan and how wide it
// is across it. Sizes that belong to another kind of feature do not count.
func centreLine(f plan.Feature) (core Core, across float64) {
	a := geom.Point{X: f.X, Y: f.Y}
	switch f.Kind {
	case plan.Slot:
		return geom.Segment{A: a, B: geom.Point{X: f.X2, Y: f.Y2}}, f.Width
	case plan.ArcSlot:
		return geom.ArcBetween(f.Radius, geom.Angle(f.From), geom.Angle(f.To)), f.Width
	}
	return geom.Segment{A: a, B: a}, f.Diameter
}

// Clear returns the material (mm) between the feature and a hole of the given
// radius at p; negative where they overlap.
func (f Feature) Clear(p geom.Point, radius float64) float64 {
	return f.Core.DistanceToPoint(p) - f.Half - radius
}

// Between returns the material (mm) between two features; negative where they
// overlap.
func (f Feature) Between(g Feature) float64 {
	apart := 0.0
	switch c := g.Core.(type) {
	case geom.Arc:
		apart = f.Core.DistanceToArc(c)
	case geom.Segment:
		apart = f.Core.DistanceToSegment(c)
	}
	return apart - f.Half - g.Half
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
	if a, curved := c.(geom.Arc); curved {
		w, ok := halfWindow(radius, a.Radius, d)
		return a.From - w, a.Sweep + 2*w, ok
	}
	s := c.(geom.Segment) // the only other kind there is
	mid := s.A.Add(s.B).Scale(0.5)
	w, ok := halfWindow(radius, mid.Norm(), d+s.A.Distance(s.B)/2)
	return mid.Azimuth() - w, 2 * w, ok
}

// halfWindow returns how far in azimuth from a point at distance rho from the
// pivot the circle of the given radius stays within d of it (180 is all round),
// or false when it never does. It is the cosine rule in its half-angle form,
// 4·R·rho·sin²(w/2) = d² - (R - rho)², which loses no digits near 0.
func halfWindow(radius, rho, d float64) (geom.Angle, bool) {
	apart := math.Abs(radius - rho)
	if apart > d {
		return 0, false
	}
	sin2 := (d - apart) * (d + apart) / (4 * radius * rho)
	if !(sin2 < 1) { // all round, also when the point is on the pivot
		return 180, true
	}
	return geom.FromRadians(2*math.Asin(math.Sqrt(sin2))) + windowSlack, true
}

// within calls yield for each seat of the ring from an azimuth clockwise
// through sweep.
func (r ringSeats) within(from, sweep geom.Angle, yield func(seat int)) {
	from = from.Turn()
	start := r.search(from)
	for m := range r.seat {
		j := (start + m) % len(r.seat)
		if (r.at[j] - from).Turn() > sweep {
			return
		}
		yield(r.seat[j])
	}
}
