package ink

import "stopwright/export/drawing"

const (
	// MinLettering is the height of capitals (px of layout) below which a text
	// is left out, as nobody could read it.
	MinLettering = 6

	// signReach is how far a sign reaches beyond its circle, px of layout.
	signReach = 5

	// maxReach is as far as any stroke may reach beyond the line it follows, px
	// of layout: entities further outside the image are passed over.
	maxReach = 64
)

// Paint draws every entity in turn as style says. The lines of an outline run
// anticlockwise round the part they bound, so that hatching falls inside it.
// Strokes may reach up to 64 px of layout beyond the line they follow.
func Paint(c *Canvas, d drawing.Drawing, v View, style Style) {
	p := painter{Canvas: c, View: v, density: v.density()}
	for i := range d.Entities {
		p.entity(&d.Entities[i], style)
	}
}

// painter draws one drawing in one view.
type painter struct {
	*Canvas
	View
	density float64
}

func (p *painter) entity(e *drawing.Entity, style Style) {
	switch s := e.Shape.(type) {
	case drawing.Line:
		if a, b := p.Pixel(s.A), p.Pixel(s.B); p.near(a, b) {
			p.line(a, b, p.dense(style(*e)))
		}
	case drawing.Circle:
		if at, r := p.Pixel(s.Centre), s.Radius*p.Scale; p.nearCircle(at, r) {
			p.circle(at, r, p.dense(style(*e)))
		}
	case drawing.Arc:
		if at, r := p.Pixel(s.Centre), s.Radius*p.Scale; p.nearCircle(at, r) {
			k := p.dense(style(*e))
			p.HatchArc(at, r, s.Start, s.Sweep, k.Hatch)
			p.Arc(at, r, s.Start, s.Sweep, k.Width, k.Colour, k.Dash)
		}
	case drawing.Polygon:
		p.filler.reset()
		for _, q := range s.Points {
			p.filler.add(p.Pixel(q))
		}
		p.polygon(style(*e).Colour)
	case drawing.Text:
		if size := s.Size * p.Scale; size >= MinLettering*p.density {
			k := style(*e)
			if k.Letter > 0 {
				size = min(size, k.Letter*p.density)
			}
			p.Text(p.Pixel(s.At), size, s.Angle, s.Align, s.Text, k.Colour)
		}
	}
}

// near reports whether a stroke along what lies between two opposite corners
// may touch the image.
func (p *painter) near(a, b Px) bool {
	m := maxReach * p.density
	return !p.outside(
		Px{min(a.X, b.X) - m, min(a.Y, b.Y) - m},
		Px{max(a.X, b.X) + m, max(a.Y, b.Y) + m},
	)
}

func (p *painter) nearCircle(at Px, r float64) bool {
	return p.near(Px{at.X - r, at.Y - r}, Px{at.X + r, at.Y + r})
}

// line draws a line. The pen's tip reaches half its width beyond the ends of an
// unbroken one, which closes the corners of an outline.
func (p *painter) line(a, b Px, k Stroke) {
	p.HatchLine(a, b, k.Hatch)
	if k.Dash == nil {
		a, b = lengthen(a, b, k.Width/2)
	}
	p.Line(a, b, k.Width, k.Colour, k.Dash)
}

func (p *painter) circle(at Px, r float64, k Stroke) {
	p.Disc(at, r, k.Fill)
	p.HatchCircle(at, r, k.Hatch)
	p.Circle(at, r, k.Width, k.Colour, k.Dash)
	reach := r + signReach*p.density
	switch k.Sign {
	case Cross:
		const diagonal = 0.7071067811865476 // sine and cosine of 45°
		d := reach * diagonal
		p.Line(Px{at.X - d, at.Y - d}, Px{at.X + d, at.Y + d}, k.Width, k.Colour, nil)
		p.Line(Px{at.X - d, at.Y + d}, Px{at.X + d, at.Y - d}, k.Width, k.Colour, nil)
	case Halo:
		p.Circle(at, reach, k.Width, k.Colour, nil)
	}
}

// dense returns the stroke measured in image px. Its dash is valid until the
// next call.
func (p *painter) dense(k Stroke) Stroke {
	if p.density == 1 {
		return k
	}
	k.Width *= p.density
	k.Hatch.Depth *= p.density
	k.Hatch.Spacing *= p.density
	k.Hatch.Width *= p.density
	if k.Dash != nil {
		p.dash = p.dash[:0]
		for _, v := range k.Dash {
			p.dash = append(p.dash, v*p.density)
		}
		k.Dash = p.dash
	}
	return k
}
