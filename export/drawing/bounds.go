package drawing

import (
	"math"

	"stopwright/detent/geom"
)

// Bounds is an upright rectangle, mm. Start from [NoBounds].
type Bounds struct{ Min, Max geom.Point }

// NoBounds holds nothing yet.
func NoBounds() Bounds {
	inf := math.Inf(1)
	return Bounds{geom.Point{X: inf, Y: inf}, geom.Point{X: -inf, Y: -inf}}
}

// Empty reports whether nothing has been added.
func (b Bounds) Empty() bool { return b.Min.X > b.Max.X }

// Width returns the extent along x, 0 when empty.
func (b Bounds) Width() float64 { return math.Max(0, b.Max.X-b.Min.X) }

// Height returns the extent along y, 0 when empty.
func (b Bounds) Height() float64 { return math.Max(0, b.Max.Y-b.Min.Y) }

// Add grows b to hold p.
func (b *Bounds) Add(p geom.Point) {
	b.Min.X, b.Min.Y = math.Min(b.Min.X, p.X), math.Min(b.Min.Y, p.Y)
	b.Max.X, b.Max.Y = math.Max(b.Max.X, p.X), math.Max(b.Max.Y, p.Y)
}

func (l Line) bounds(b *Bounds) { b.Add(l.A); b.Add(l.B) }

func (c Circle) bounds(b *Bounds) {
	r := geom.Point{X: c.Radius, Y: c.Radius}
	b.Add(c.Centre.Sub(r))
	b.Add(c.Centre.Add(r))
}

func (a Arc) bounds(b *Bounds) {
	b.Add(a.at(a.Start))
	b.Add(a.at(a.Start + a.Sweep))
	for q := math.Ceil(a.Start/90) * 90; q < a.Start+a.Sweep; q += 90 {
		b.Add(a.at(q))
	}
}

// at returns the point of the arc's circle in a draughting direction.
func (a Arc) at(deg float64) geom.Point {
	return a.Centre.Add(geom.Polar(a.Radius, geom.Angle(90-deg)))
}

// Ends returns the arc's first and last points, anticlockwise.
func (a Arc) Ends() (first, last geom.Point) { return a.at(a.Start), a.at(a.Start + a.Sweep) }

func (p Polygon) bounds(b *Bounds) {
	for _, q := range p.Points {
		b.Add(q)
	}
}

func (x Text) bounds(b *Bounds) {
	w := TextWidth(x.Text, x.Size)
	var lo, hi geom.Point
	switch x.Align {
	case Left:
		hi = geom.Point{X: w, Y: x.Size}
	case Right:
		lo, hi = geom.Point{X: -w}, geom.Point{Y: x.Size}
	case Centre:
		lo, hi = geom.Point{X: -w / 2, Y: -x.Size / 2}, geom.Point{X: w / 2, Y: x.Size / 2}
	case Top:
		lo, hi = geom.Point{X: -w / 2, Y: -x.Size}, geom.Point{X: w / 2}
	case Bottom:
		lo, hi = geom.Point{X: -w / 2}, geom.Point{X: w / 2, Y: x.Size}
	}
	for _, c := range [4]geom.Point{lo, {X: hi.X, Y: lo.Y}, hi, {X: lo.X, Y: hi.Y}} {
		b.Add(x.At.Add(c.Rotate(geom.Angle(-x.Angle))))
	}
}
