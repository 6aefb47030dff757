package ui

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// dimensions measures the selected feature, or else the tightest web, and for
// the selected stop the ring radius and the web to its neighbour. Figures stay clear of what is taken.
func (sc scene) dimensions(c *ink.Canvas, v ink.View, p ink.Palette, w *words.Catalogue, taken *spots) {
	m := measurer{scene: sc, c: c, v: v, p: p, w: w, d: density(v), taken: taken}
	if m.feature() {
		return
	}
	if !sc.shows(sc.plate.SeatsPart) {
		return
	}
	tight := -1
	for i, s := range sc.plate.Seats {
		if s.Nearest >= 0 && (tight < 0 || s.Web < sc.plate.Seats[tight].Web-tightSlack) {
			tight = i
		}
	}
	chosen := sc.chosen()
	if chosen >= 0 {
		m.radius(chosen)
		m.web(chosen)
	}
	if tight >= 0 && chosen != tight && (chosen < 0 || sc.plate.Seats[chosen].Nearest != tight) {
		m.web(tight)
	}
}

// tightSlack is how much (mm) a web must be less to be the tightest: of equal
// ones the first is measured.
const tightSlack = 1e-6

// chosen returns the seat to measure: of those selected the one farthest
// clockwise, which of a stop and its other side is the stop's own; -1 if none.
func (sc scene) chosen() int {
	best := -1
	for i := range sc.plate.Seats {
		if sc.marks.Selected.Seats[i] && (best < 0 || sc.plate.Seats[i].Angle > sc.plate.Seats[best].Angle) {
			best = i
		}
	}
	return best
}

// measurer draws dimensions on a scene.
type measurer struct {
	scene
	c     *ink.Canvas
	v     ink.View
	p     ink.Palette
	w     *words.Catalogue
	d     float64 // px of the screen to a px of layout
	taken *spots
}

// seat returns where a seat lies on the image.
func (m measurer) seat(i int) ink.Px {
	return m.v.Pixel(m.fromPart(m.plate.SeatsPart, m.plate.Seats[i].Centre))
}

// web draws the web from seat i to its nearest neighbour: arrowheads on the two
// rims, from outside, and its size on the pivot's side.
func (m measurer) web(i int) {
	s := m.plate.Seats[i]
	if s.Nearest < 0 {
		return
	}
	a, b := m.seat(i), m.seat(s.Nearest)
	u, length := direction(a, b)
	if length == 0 {
		return
	}
	rim := m.plate.Plan.Seat.Mouth() / 2 * m.v.Scale
	m.arrow(along(a, u, rim), u)
	m.arrow(along(b, u, -rim), ink.Px{X: -u.X, Y: -u.Y})
	mid := along(a, u, length/2)
	in, _ := direction(mid, m.v.Origin)
	at := along(mid, in, rim+34*m.d)
	m.c.Line(mid, along(mid, in, rim+26*m.d), m.p.Weight(ink.ThinLine)*m.d, m.p.Faint, nil)
	m.figure(at, m.w.Text("dim.web", words.Args{"Web": words.MM(s.Web)}))
}

// radius draws the ring radius from the pivot to seat i.
func (m measurer) radius(i int) {
	a, b := m.v.Pixel(geom.Point{}), m.seat(i)
	u, length := direction(a, b)
	m.c.Line(a, b, m.p.Weight(ink.ThinLine)*m.d, m.p.Accent, nil)
	m.figure(along(a, u, length*0.45), m.w.Text("dim.radius", words.Args{"Radius": words.MM(m.plate.Seats[i].Radius)}))
}

// figure letters a dimension on a patch of paper, unless the place is taken, and
// reports whether it did.
func (m measurer) figure(at ink.Px, text string) bool {
	size := letter * m.d
	w, h := m.c.TextWidth(text, size)/2+3*m.d, size/2+3*m.d
	if !m.taken.take(at, w, h) {
		return false
	}
	m.c.Fill(ink.Px{X: at.X - w, Y: at.Y - h}, ink.Px{X: at.X + w, Y: at.Y + h}, ground(m.p))
	m.c.Text(at, size, 0, drawing.Centre, text, m.p.Accent)
	return true
}

// arrow draws an arrowhead with its tip at tip and its tail at tip + u.
func (m measurer) arrow(tip, u ink.Px) {
	const long, half = 7.0, 2.2
	back := along(tip, u, long*m.d)
	n := ink.Px{X: -u.Y * half * m.d, Y: u.X * half * m.d}
	m.c.Polygon([]ink.Px{tip, {X: back.X + n.X, Y: back.Y + n.Y}, {X: back.X - n.X, Y: back.Y - n.Y}}, m.p.Accent)
}

// direction returns the unit vector from a to b, and how far it is.
func direction(a, b ink.Px) (u ink.Px, length float64) {
	length = math.Hypot(b.X-a.X, b.Y-a.Y)
	if length == 0 {
		return ink.Px{}, 0
	}
	return ink.Px{X: (b.X - a.X) / length, Y: (b.Y - a.Y) / length}, length
}

// along returns the place at a distance from p in direction u.
func along(p, u ink.Px, distance float64) ink.Px {
	return ink.Px{X: p.X + u.X*distance, Y: p.Y + u.Y*distance}
}
