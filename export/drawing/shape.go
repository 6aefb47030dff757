package drawing

import "stopwright/detent/geom"

// Shape is one of [Line], [Circle], [Arc], [Polygon] and [Text].
type Shape interface {
	// transform returns the shape moved, scaled and mirrored.
	transform(t Transform) Shape
	// bounds grows b to hold the shape. Text counts with its laid-out extent.
	bounds(b *Bounds)
}

// Line is a straight line from A to B.
type Line struct{ A, B geom.Point }

// Circle is a full circle; Radius is above 0.
type Circle struct {
	Centre geom.Point
	Radius float64
}

// Arc is part of a circle, running anticlockwise from Start (degrees from +x,
// in [0, 360)) through Sweep degrees, above 0 and below 360.
type Arc struct {
	Centre geom.Point
	Radius float64
	Start  float64
	Sweep  float64
}

// Polygon is a closed figure of straight sides, filled in the layer's ink. It
// serves arrowheads and the witness mark; cut outlines are lines and arcs.
type Polygon struct{ Points []geom.Point }

// Text is one line of lettering. Size is the height of a capital letter, in mm
// on the sheet it stands on.
type Text struct {
	At    geom.Point
	Size  float64
	Angle float64 // degrees anticlockwise
	Align Align
	Text  string
}

// Align says which point of a text stands at At.
type Align int

// The alignments: across, then up.
const (
	Left   Align = iota // at the left end of the base line
	Centre              // in the middle, both ways
	Right               // at the right end of the base line
	Top                 // in the middle of the top of the capitals
	Bottom              // in the middle of the base line
)

// Offset returns where the base line of a text of a width and size starts, from
// its own place, before it is turned.
func (a Align) Offset(width, size float64) geom.Point {
	switch a {
	case Centre:
		return geom.Point{X: -width / 2, Y: -size / 2}
	case Right:
		return geom.Point{X: -width}
	case Top:
		return geom.Point{X: -width / 2, Y: -size}
	case Bottom:
		return geom.Point{X: -width / 2}
	}
	return geom.Point{}
}

// FromAzimuth converts an azimuth (clockwise from +y) to degrees anticlockwise
// from +x, in [0, 360).
func FromAzimuth(az geom.Angle) float64 { return (90 - az).Turn().Degrees() }

// leastSweep is the least turn that is drawn as an arc, and the least that is
// left open of a whole one: at 10 m radius it is under a millionth of a millimetre,
// and readers do not tell the ends of less apart.
const leastSweep geom.Angle = 4e-9

// settled returns an arc that hardly turns as a point, and one that hardly
// leaves a gap as a whole circle.
func settled(a geom.Arc) geom.Arc {
	switch {
	case a.Sweep < leastSweep:
		a.Sweep = 0
	case a.Sweep > geom.FullTurn-leastSweep:
		a.Sweep = geom.FullTurn
	}
	return a
}

// ArcOf returns the drawing of an arc about the pivot: an [Arc], or a [Circle]
// when it goes all the way round.
func ArcOf(a geom.Arc) Shape {
	if a = settled(a); a.Whole() {
		return Circle{Radius: a.Radius}
	}
	return Arc{Radius: a.Radius, Start: FromAzimuth(a.From + a.Sweep), Sweep: a.Sweep.Degrees()}
}
