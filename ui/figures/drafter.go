package figures

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The layers of a figure.
const (
	Cut     drawing.Layer = "CUT"     // edge of what is cut through
	Hatch   drawing.Layer = "HATCH"   // cut wood
	Metal   drawing.Layer = "METAL"   // cut metal: closer strokes
	Ball    drawing.Layer = "BALL"    // not cut, as balls are not
	Spring  drawing.Layer = "SPRING"  // seen behind the cut
	Axis    drawing.Layer = "AXIS"    // centre line
	Measure drawing.Layer = "MEASURE" // the size that is explained
)

// Sizes of lettering and arrows, mm of a figure.
const (
	letter    = 1.5
	arrowLong = 1.3
	arrowHalf = 0.42
	overshoot = 0.6 // of an extension line beyond the arrow it carries
)

// drafter draws a figure: x to the right and y up, the catch above the seat;
// turned upside down where the plan has the catch below.
type drafter struct {
	drawing.Drawing
	bounds drawing.Bounds
	value  string // lettered at the size that is measured
	below  bool   // the catch is below

	// Of the seat that is drawn: the radius of its rim, that of the tool, which
	// is smaller where there is a chamfer, and the depth of its floor.
	rim, tool, floor float64
}

// at returns a place of the figure.
func (d *drafter) at(x, y float64) geom.Point {
	if d.below {
		y = -y
	}
	return geom.Point{X: x, Y: y + 0}
}

// frame sets what must be seen.
func (d *drafter) frame(left, bottom, right, top float64) {
	d.bounds = drawing.NoBounds()
	d.bounds.Add(d.at(left, bottom))
	d.bounds.Add(d.at(right, top))
}

func (d *drafter) add(l drawing.Layer, s drawing.Shape) {
	d.Entities = append(d.Entities, drawing.Entity{Layer: l, Shape: s})
}

// path draws straight lines from place to place.
func (d *drafter) path(l drawing.Layer, pts ...geom.Point) {
	for i := 1; i < len(pts); i++ {
		d.add(l, drawing.Line{A: d.at(pts[i-1].X, pts[i-1].Y), B: d.at(pts[i].X, pts[i].Y)})
	}
}

// ball draws a ball.
func (d *drafter) ball(x, y, r float64) {
	d.add(Ball, drawing.Circle{Centre: d.at(x, y), Radius: r})
}

// text letters the value in the middle of a place.
func (d *drafter) text(x, y float64) {
	d.add(Measure, drawing.Text{At: d.at(x, y), Size: letter, Align: drawing.Centre, Text: d.value})
}

// arrow draws an arrowhead with its tip at p, pointing towards u.
func (d *drafter) arrow(p, u geom.Point) {
	back := geom.Point{X: p.X - u.X*arrowLong, Y: p.Y - u.Y*arrowLong}
	d.add(Measure, drawing.Polygon{Points: []geom.Point{
		d.at(p.X, p.Y),
		d.at(back.X-u.Y*arrowHalf, back.Y+u.X*arrowHalf),
		d.at(back.X+u.Y*arrowHalf, back.Y-u.X*arrowHalf),
	}})
}

// span draws the dimension line from a to b: arrows between them where there is
// room, else from outside.
func (d *drafter) span(a, b geom.Point) {
	length := math.Hypot(b.X-a.X, b.Y-a.Y)
	u := geom.Point{X: (b.X - a.X) / length, Y: (b.Y - a.Y) / length}
	back := geom.Point{X: -u.X, Y: -u.Y}
	if length > 2.5*arrowLong {
		d.path(Measure, a, b)
		d.arrow(a, back)
		d.arrow(b, u)
		return
	}
	const tail = 2 * arrowLong
	d.path(Measure, geom.Point{X: a.X - u.X*tail, Y: a.Y - u.Y*tail}, a)
	d.path(Measure, b, geom.Point{X: b.X + u.X*tail, Y: b.Y + u.Y*tail})
	d.arrow(a, u)
	d.arrow(b, back)
}

// upright measures from y0 to y1 at x, with extension lines from the two places
// that are measured, and the value to the right.
func (d *drafter) upright(x, x0, y0, x1, y1 float64) {
	d.path(Measure, geom.Point{X: x0, Y: y0}, geom.Point{X: x + overshoot, Y: y0})
	d.path(Measure, geom.Point{X: x1, Y: y1}, geom.Point{X: x + overshoot, Y: y1})
	d.span(geom.Point{X: x, Y: y0}, geom.Point{X: x, Y: y1})
	d.beside(x+1.2, (y0+y1)/2)
}

// beside letters the value to the right of a place.
func (d *drafter) beside(x, y float64) {
	p := d.at(x, y)
	p.Y -= letter / 2
	d.add(Measure, drawing.Text{At: p, Size: letter, Align: drawing.Left, Text: d.value})
}

// level measures from x0 to x1 at y, with extension lines from the height from,
// and the value beyond.
func (d *drafter) level(y, x0, x1, from float64) {
	away := math.Copysign(1, y-from)
	for _, x := range [2]float64{x0, x1} {
		d.path(Measure, geom.Point{X: x, Y: from}, geom.Point{X: x, Y: y + away*overshoot})
	}
	d.span(geom.Point{X: x0, Y: y}, geom.Point{X: x1, Y: y})
	d.text((x0+x1)/2, y+away*(letter+0.3))
}
