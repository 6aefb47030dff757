package pdf

import (
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// pointsPerMM converts a font's size: a point is 1/72 inch in PDF.
const pointsPerMM = 72 / 25.4

// text letters one line. The letters are filled outlines and take no pen.
func (p *pen) text(s drawing.Text) {
	line := drawing.Lettered(s.Text)
	if line == "" {
		return
	}
	p.f.SetFont(family, "", s.Size/drawing.CapsPerEm()*pointsPerMM)
	start := s.At.Add(s.Align.Offset(drawing.TextWidth(line, s.Size), s.Size).Rotate(geom.Angle(-s.Angle)))
	if s.Angle == 0 {
		p.f.Text(start.X, p.down(start), line)
		return
	}
	p.f.TransformBegin()
	p.f.TransformRotate(s.Angle, start.X, p.down(start))
	p.f.Text(start.X, p.down(start), line)
	p.f.TransformEnd()
}
