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

// OutlineOf returns the outer edge of a part. A plan without a collar has none
// for it: the zero Outline.
func OutlineOf(p plan.Plan, part plan.Part) Outline {
	switch part {
	case plan.PartTurntable:
		return Outline{Diameter: p.Turntable.Diameter}
	case plan.PartCollar:
		if p.Collar == nil {
			return Outline{}
		}
		return Outline{Diameter: p.Collar.OutsideDiameter}
	}
	if p.Base.Shape == plan.Disc {
		return Outline{Diameter: p.Base.Diameter}
	}
	return Outline{Width: p.Base.Width, Height: p.Base.Depth}
}

// BoreOf returns the diameter (mm) of the round opening on the pivot: the pivot
// bore, which passes through turntable and base alike, or the collar's bore. 0
// is none.
func BoreOf(p plan.Plan, part plan.Part) float64 {
	if part == plan.PartCollar {
		if p.Collar == nil {
			return 0
		}
		return p.Collar.Bore(p.Turntable)
	}
	return p.Turntable.PivotBore
}

// ThicknessOf returns the thickness of a part, mm; 0 for a collar there is not.
func ThicknessOf(p plan.Plan, part plan.Part) float64 {
	switch {
	case part == plan.PartTurntable:
		return p.Turntable.Thickness
	case part == plan.PartBase:
		return p.Base.Thickness
	case p.Collar != nil:
		return p.Collar.Thickness
	}
	return 0
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
