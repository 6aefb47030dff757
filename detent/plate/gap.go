package plate

import (
	"math"

	"stopwright/detent/geom"
)

// Gap is the material left between a feature and what it comes nearest to.
type Gap struct {
	Size     float64    // mm; negative where they overlap
	From, To geom.Point // on the feature's outline and on the other; seen from above
	Seat     int        // the other is this seat's mouth; -1: the part's own edge or bore
	Bore     bool       // it is the bore, not the outer edge
}

// WebOf returns the material between a feature and the nearest seat, and false
// where its part has none.
func (pl *Plate) WebOf(f Feature) (Gap, bool) {
	g := Gap{Size: math.Inf(1), Seat: -1}
	if f.Part != pl.SeatsPart {
		return g, false
	}
	mouth := pl.Plan.Seat.Mouth() / 2
	for i, s := range pl.Seats {
		if web := f.Clear(s.Centre, mouth); web < g.Size {
			g.Size, g.Seat = web, i
		}
	}
	if g.Seat < 0 {
		return g, false
	}
	seat := pl.Seats[g.Seat].Centre
	near := f.Core.Nearest(seat)
	u := unit(near, seat)
	g.From, g.To = near.Add(u.Scale(f.Half)), seat.Sub(u.Scale(mouth))
	return g, true
}

// EdgeOf returns the material between a feature and its part's outer edge or
// bore, whichever is nearer.
func (pl *Plate) EdgeOf(f Feature) Gap {
	outline := OutlineOf(pl.Plan, f.Part)
	g := Gap{Size: math.Inf(1), Seat: -1}
	for _, p := range extremes(f.Core) {
		if left := outline.Inside(p) - f.Half; left < g.Size-gapSlack {
			u := outline.outward(p)
			g = Gap{Size: left, From: p.Add(u.Scale(f.Half)), To: p.Add(u.Scale(f.Half + left)), Seat: -1}
		}
	}
	bore := BoreOf(pl.Plan, f.Part)
	if bore == 0 {
		return g
	}
	p := f.Core.Nearest(geom.Point{})
	if left := p.Norm() - bore/2 - f.Half; left < g.Size-gapSlack {
		u := unit(p, geom.Point{})
		g = Gap{Size: left, From: p.Add(u.Scale(f.Half)), To: p.Add(u.Scale(f.Half + left)), Seat: -1, Bore: true}
	}
	return g
}

// gapSlack is how much (mm) a gap must be less to be the nearest: of equal ones
// the first is.
const gapSlack = 1e-9

// extremes returns the points of a centre line of which one is nearest to the
// outer edge, whatever its form: a distance to a side or to a disc's rim is
// least at an end or, on an arc, where it crosses an axis. An arc's middle comes
// first: along a rim all its points are as near.
func extremes(c Core) []geom.Point {
	a, curved := c.(geom.Arc)
	if !curved {
		s := c.(geom.Segment) // the only other kind there is
		return []geom.Point{s.A, s.B}
	}
	points := []geom.Point{geom.Polar(a.Radius, a.From+a.Sweep/2), a.Start(), a.End()}
	for q := range 4 {
		if az := geom.Angle(90 * q); a.Contains(az) {
			points = append(points, geom.Polar(a.Radius, az))
		}
	}
	return points
}

// outward returns the direction from p straight to the outer edge.
func (o Outline) outward(p geom.Point) geom.Point {
	if o.Diameter > 0 {
		return unit(geom.Point{}, p)
	}
	if o.Width/2-math.Abs(p.X) < o.Height/2-math.Abs(p.Y) {
		return geom.Point{X: math.Copysign(1, p.X)}
	}
	return geom.Point{Y: math.Copysign(1, p.Y)}
}

// unit returns the direction from a to b; away from the operator where they are
// one.
func unit(a, b geom.Point) geom.Point {
	d := a.Distance(b)
	if d == 0 {
		return geom.Point{Y: 1}
	}
	return b.Sub(a).Scale(1 / d)
}
