package ui

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/ui/ink"
)

// dimension is one measure of a feature: a line between two places of its part,
// seen from above, and what it says.
type dimension struct {
	from, to geom.Point
	text     string
	gap      bool // it is material that is left: between arrowheads, lettered beside
}

// feature measures the selected feature, and reports whether there is one in
// sight.
func (m measurer) feature() bool {
	for i, f := range m.plate.Features {
		if m.marks.Selected.Features[i] && !f.Screw && m.shows(f.Part) {
			for _, d := range featureDims(m.plate, f, m.w) {
				m.draw(f.Part, d)
			}
			return true
		}
	}
	return false
}

// featureDims returns how far a feature lies from the pivot both ways, or the
// radius of a curved slot, and what is left to the nearest seat and to the
// nearest edge. A slot is measured to its first end.
func featureDims(pl *plate.Plate, f plate.Feature, w *words.Catalogue) []dimension {
	var all []dimension
	switch core := f.Core.(type) {
	case geom.Arc:
		text := w.Text("dim.radius", words.Args{"Radius": words.MM(core.Radius)})
		all = append(all, dimension{to: geom.Polar(core.Radius, core.From+core.Sweep/2), text: text})
	case geom.Segment:
		at := core.A
		all = append(
			all,
			dimension{geom.Point{Y: at.Y}, at, w.Text("dim.x", words.Args{"X": words.MM(at.X)}), false},
			dimension{geom.Point{X: at.X}, at, w.Text("dim.y", words.Args{"Y": words.MM(at.Y)}), false},
		)
	}
	if web, ok := pl.WebOf(f); ok {
		all = append(all, dimension{web.From, web.To, w.Text("dim.web", words.Args{"Web": words.MM(web.Size)}), true})
	}
	edge, key := pl.EdgeOf(f), "dim.edge"
	if edge.Bore {
		key = "dim.bore"
	}
	return append(all, dimension{edge.From, edge.To, w.Text(key, words.Args{"Left": words.MM(edge.Size)}), true})
}

// draw draws a dimension in the frame of a part. Between one place and itself
// there is no line, and nothing but a gap to tell of.
func (m measurer) draw(part plan.Part, d dimension) {
	a, b := m.v.Pixel(m.fromPart(part, d.from)), m.v.Pixel(m.fromPart(part, d.to))
	u, length := direction(a, b)
	mid := along(a, u, length/2)
	if length > 0 {
		m.c.Line(a, b, m.p.Weight(ink.ThinLine)*m.d, m.p.Accent, nil)
	}
	if !d.gap {
		if length > 0 {
			m.figure(mid, d.text)
		}
		return
	}
	m.arrow(a, u)
	m.arrow(b, ink.Px{X: -u.X, Y: -u.Y})
	const aside = 16                         // px of layout
	for _, side := range [2]float64{1, -1} { // where one side is taken, the other
		if m.figure(along(mid, ink.Px{X: -u.Y, Y: u.X}, side*aside*m.d), d.text) {
			return
		}
	}
}
