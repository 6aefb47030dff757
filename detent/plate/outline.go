package plate

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Outline is the outer edge of a part, centred on the pivot: a disc when
// Diameter is above 0, else a rectangle.
type Outline struct {
	Diameter      float64
	Width, Height float64 // along x and along y
}

// OutlineOf returns the outer edge of a part; the zero Outline for one that the
// plan has not. A catch carrier and its pad are centred on the catch, their
// width along y.
func OutlineOf(p plan.Plan, part plan.Part) Outline {
	switch part {
	case plan.PartTurntable:
		return Outline{Diameter: p.TableDiameter()}
	case plan.PartCollar:
		if p.Collar == nil {
			return Outline{}
		}
		return Outline{Diameter: p.Collar.OutsideDiameter}
	case plan.PartWearRing:
		_, outer := WearRing(p)
		return Outline{Diameter: outer}
	case plan.PartCarrier, plan.PartPad:
		if c := p.Making.Carrier; ThicknessOf(p, part) > 0 {
			return Outline{Width: c.Length, Height: c.Width}
		}
		return Outline{}
	}
	if p.Base.Shape == plan.Disc {
		return Outline{Diameter: p.Base.Diameter}
	}
	return Outline{Width: p.Base.Width, Height: p.Base.Depth}
}

// BoreOf returns the diameter (mm) of the round opening on the middle of a part:
// the pivot bore with the part's fit, the collar's bore, the inner edge of a
// wear ring, or the bore for the catch's body. 0 is none.
func BoreOf(p plan.Plan, part plan.Part) float64 {
	switch part {
	case plan.PartCollar:
		return p.CollarBore()
	case plan.PartWearRing:
		inner, _ := WearRing(p)
		return inner
	case plan.PartCarrier, plan.PartPad:
		if ThicknessOf(p, part) > 0 {
			return p.Catch.BodyDiameter + p.Catch.BodyAllowance
		}
		return 0
	}
	switch bore := p.Turntable.PivotBore; {
	case bore == 0:
		return 0
	case part == plan.PartTurntable:
		return bore + p.Making.Pivot.Turntable
	default:
		return bore + p.Making.Pivot.Base
	}
}

// ThicknessOf returns the thickness of a part, mm; 0 for one the plan has not.
func ThicknessOf(p plan.Plan, part plan.Part) float64 {
	m := p.Making
	switch {
	case part == plan.PartTurntable:
		return p.Turntable.Thickness
	case part == plan.PartBase:
		return p.Base.Thickness
	case part == plan.PartCollar && p.Collar != nil:
		return p.Collar.Thickness
	case part == plan.PartWearRing && m.WearRing.Width > 0:
		return m.WearRing.Thickness
	case part == plan.PartCarrier && m.Carrier.Width > 0:
		return m.Carrier.Thickness
	case part == plan.PartPad && m.Carrier.Width > 0:
		return m.Carrier.PadThickness
	}
	return 0
}

// MaterialOf returns what a part is made of, as plans write it; empty for one
// the plan has not. A pad is of what the carrier is of.
func MaterialOf(p plan.Plan, part plan.Part) string {
	switch {
	case ThicknessOf(p, part) == 0:
		return ""
	case part == plan.PartTurntable:
		return p.Turntable.Material
	case part == plan.PartBase:
		return p.Base.Material
	case part == plan.PartCollar:
		return p.Collar.Material
	case part == plan.PartWearRing:
		return p.Making.WearRing.Material
	}
	return p.Making.Carrier.Material
}

// WearRing returns the inner and the outer diameter (mm) of the wear ring, 0 for
// none. It reaches half its width past the innermost and the outermost ring;
// inner is 0 where that is past the pivot.
func WearRing(p plan.Plan) (inner, outer float64) {
	width := p.Making.WearRing.Width
	if width == 0 {
		return 0, 0
	}
	least, most := math.Inf(1), 0.0
	for _, c := range p.Catches {
		least, most = min(least, c.Radius), max(most, c.Radius)
	}
	return max(0, 2*least-width), 2*most + width
}

// Inside returns how far (mm) p lies inside the outer edge; negative outside,
// where past a corner it is the larger of the two distances to the sides' lines.
func (o Outline) Inside(p geom.Point) float64 {
	if o.Diameter > 0 {
		return o.Diameter/2 - p.Norm()
	}
	return math.Min(o.Width/2-math.Abs(p.X), o.Height/2-math.Abs(p.Y))
}

// Farthest returns how far from the pivot the outer edge is at most, mm.
func (o Outline) Farthest() float64 {
	if o.Diameter > 0 {
		return o.Diameter / 2
	}
	return math.Hypot(o.Width, o.Height) / 2
}

// InsideArc returns how far (mm) the arc, all along, keeps inside the outer
// edge; negative where it leaves it.
func (o Outline) InsideArc(a geom.Arc) float64 {
	least := math.Min(o.Inside(a.Start()), o.Inside(a.End()))
	// Only where it crosses an axis can an arc about the pivot come nearer to
	// an edge than at its ends.
	for q := range 4 {
		if az := geom.Angle(90 * q); a.Contains(az) {
			least = math.Min(least, o.Inside(geom.Polar(a.Radius, az)))
		}
	}
	return least
}

// Reach returns how far the outer edge is from the pivot in direction az, mm.
func (o Outline) Reach(az geom.Angle) float64 {
	if o.Diameter > 0 {
		return o.Diameter / 2
	}
	s, c := az.SinCos()
	return math.Min(o.Width/2/math.Abs(s), o.Height/2/math.Abs(c)) // one may be infinite, never both
}

// ToEdge returns the material (mm) between seat i and the outer edge of its
// part; negative where it breaks out.
func (pl *Plate) ToEdge(i int) float64 {
	return OutlineOf(pl.Plan, pl.SeatsPart).Inside(pl.Seats[i].Centre) - pl.Plan.Seat.Mouth()/2
}

// ToBore returns the material (mm) between seat i and the pivot bore; negative
// where it breaks out, infinite where there is no bore.
func (pl *Plate) ToBore(i int) float64 {
	bore := BoreOf(pl.Plan, pl.SeatsPart)
	if bore == 0 {
		return math.Inf(1)
	}
	return pl.Seats[i].Radius - bore/2 - pl.Plan.Seat.Mouth()/2
}
