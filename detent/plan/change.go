package plan

import (
	"math"
	"slices"
	"strings"

	"stopwright/detent/geom"
)

// ChangeField writes a field's value into the plan as [SetField] does, with
// what must follow for the plan to stay whole: the stops that name a catch know
// it by its new name, a feature made another kind has that kind's sizes, and a
// plan that left its router to the defaults has one of its own.
func ChangeField(p *Plan, f Field) bool {
	if p.Router == nil && strings.HasPrefix(f.Path, "router.") {
		set := DefaultRouter()
		p.Router = &set
	}
	catches, features := slices.Clone(p.Catches), slices.Clone(p.Features)
	if !SetField(p, f) {
		return false
	}
	for i, was := range catches {
		if now := p.Catches[i].Name; now != was.Name {
			rename(p.Stops, was.Name, now)
		}
	}
	for i, was := range features {
		if now := p.Features[i].Kind; now != was.Kind {
			p.Features[i] = was.as(now)
		}
	}
	return true
}

// rename gives a catch another name in the stops' lists.
func rename(stops []Stop, was, now string) {
	for _, s := range stops {
		if i := slices.Index(s.Catches, was); i >= 0 {
			s.Catches[i] = now
		}
	}
}

// as returns a feature of another kind at the same place and as wide: a slot
// along y, a curved slot on the circle through the place.
func (f Feature) as(kind Kind) Feature {
	const (
		half  = 10.0             // mm, of a slot's length: long enough to be seen as one
		sweep = geom.Angle(10.0) // either way from the middle, for the same reason
	)
	at, width := f.middle()
	out := Feature{Part: f.Part, Kind: kind, Label: f.Label}
	switch kind {
	case Hole:
		out.X, out.Y, out.Diameter = at.X, at.Y, width
	case Slot:
		out.Width = width
		out.X, out.Y = at.X, math.Max(at.Y-half, positions.lo)
		out.X2, out.Y2 = at.X, math.Min(at.Y+half, positions.hi)
	case ArcSlot:
		out.Width = width
		out.Radius = math.Min(math.Max(at.Norm(), width), sizes.hi) // at the pivot there is no circle
		az := at.Azimuth()
		out.From, out.To = (az - sweep).Degrees(), (az + sweep).Degrees()
	}
	return out
}

// middle returns the middle of a feature and its width, mm.
func (f Feature) middle() (geom.Point, float64) {
	switch f.Kind {
	case Slot:
		return geom.Point{X: (f.X + f.X2) / 2, Y: (f.Y + f.Y2) / 2}, f.Width
	case ArcSlot:
		return geom.Polar(f.Radius, geom.Angle(f.From+f.To)/2), f.Width
	}
	return geom.Point{X: f.X, Y: f.Y}, f.Diameter
}
