package svg

import (
	"math"
	"strconv"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// decimals is how exactly numbers are written, mm or degrees: far below what any
// machine resolves. Zeros at the end are dropped.
const decimals = 9

// page is a file being written.
type page struct{ out []byte }

func (p *page) text(s string) { p.out = append(p.out, s...) }

// number writes x with a decimal point, never as an exponent and never as -0.
func (p *page) number(x float64) {
	start := len(p.out)
	p.out = strconv.AppendFloat(p.out, x, 'f', decimals, 64)
	end := len(p.out)
	for p.out[end-1] == '0' {
		end--
	}
	if p.out[end-1] == '.' {
		end--
	}
	if p.out = p.out[:end]; string(p.out[start:]) == "-0" {
		p.out = append(p.out[:start], '0')
	}
}

// numbers writes several with spaces between.
func (p *page) numbers(all ...float64) {
	for i, x := range all {
		if i > 0 {
			p.out = append(p.out, ' ')
		}
		p.number(x)
	}
}

// point writes a place of the drawing as SVG measures it.
func (p *page) point(q geom.Point) { p.numbers(q.X, -q.Y) }

// attribute writes one whose value is a number.
func (p *page) attribute(name string, value float64) {
	p.text(` ` + name + `="`)
	p.number(value)
	p.text(`"`)
}

// layer writes a group.
func (p *page) layer(l drawing.Layer, all []drawing.Entity) {
	pen := drawing.PenOf(l)
	colour := colours[pen.Colour]
	if colour == "" {
		colour = black
	}
	p.text(`<g id="` + escape(string(l)) + `" fill="none" stroke="` + colour + `"`)
	p.attribute("stroke-width", max(pen.Width, drawing.ThinLine))
	if len(pen.Dash) > 0 {
		p.text(` stroke-dasharray="`)
		p.numbers(pen.Dash...)
		p.text(`"`)
	}
	p.text(">\n")
	var s strand
	var item drawing.Item
	for _, e := range all {
		if e.Item != item || !s.takes(e.Shape) {
			p.path(s)
			s, item = strand{}, e.Item
		}
		if s.add(e.Shape) {
			continue
		}
		p.shape(e.Shape, colour)
	}
	p.path(s)
	p.text("</g>\n")
}

// shape writes what is no part of a path.
func (p *page) shape(s drawing.Shape, colour string) {
	switch s := s.(type) {
	case drawing.Circle:
		p.text(`<circle`)
		p.attribute("cx", s.Centre.X)
		p.attribute("cy", -s.Centre.Y)
		p.attribute("r", s.Radius)
		p.text("/>\n")
	case drawing.Polygon:
		p.text(`<polygon fill="` + colour + `" stroke="none" points="`)
		for i, q := range s.Points {
			if i > 0 {
				p.text(" ")
			}
			p.point(q)
		}
		p.text("\"/>\n")
	case drawing.Text:
		p.letters(s, colour)
	}
}

// path writes lines and arcs that follow each other.
func (p *page) path(s strand) {
	if len(s.parts) == 0 {
		return
	}
	p.text(`<path d="M`)
	p.point(s.parts[0].from)
	closed := s.closed()
	for i, k := range s.parts {
		switch {
		case k.radius > 0:
			p.curve(k)
		case closed && i == len(s.parts)-1: // Z draws it
		default:
			p.text(" L")
			p.point(k.to)
		}
	}
	if closed {
		p.text(" Z")
	}
	p.text("\"/>\n")
}

// curve writes an arc, in two halves where it is over half a circle: near a
// whole one its ends alone say too little about it.
func (p *page) curve(k piece) {
	parts := 1
	if math.Abs(k.sweep) > 180 {
		parts = 2
	}
	for i := 1; i <= parts; i++ {
		to := k.to
		if i < parts {
			to = k.centre.Add(geom.Polar(k.radius, geom.Angle(90-k.start-k.sweep/2)))
		}
		p.text(" A")
		p.numbers(k.radius, k.radius, 0)
		if k.sweep > 0 { // anticlockwise to the eye
			p.text(" 0 0 ")
		} else {
			p.text(" 0 1 ")
		}
		p.point(to)
	}
}
