package ink

import (
	"image/color"

	"stopwright/export/drawing"
)

// Palette is the colours of a drawing on the bench. None is told by colour
// alone: what is selected is thicker and has a halo, what is at fault is struck
// out.
type Palette struct {
	Paper  color.RGBA
	Ink    color.RGBA // what is cut or drilled, and lettering
	Faint  color.RGBA // construction: rings, tracks, centres, hatching
	Hollow color.RGBA // within a hole
	Accent color.RGBA // what is selected
	Fault  color.RGBA // what a check has found wrong
	Bold   float64    // how much thicker lines are than on paper; 0 counts as 1
}

// Light is ink on warm paper.
var Light = Palette{
	Paper:  color.RGBA{0xF4, 0xEF, 0xE3, 0xFF},
	Ink:    color.RGBA{0x23, 0x2B, 0x36, 0xFF},
	Faint:  color.RGBA{0x7D, 0x79, 0x6F, 0xFF},
	Hollow: color.RGBA{0xE4, 0xDC, 0xC9, 0xFF},
	Accent: color.RGBA{0x0B, 0x6E, 0x8C, 0xFF},
	Fault:  color.RGBA{0xB3, 0x2A, 0x1D, 0xFF},
}

// Dark is chalk on slate.
var Dark = Palette{
	Paper:  color.RGBA{0x1D, 0x23, 0x2B, 0xFF},
	Ink:    color.RGBA{0xE9, 0xE4, 0xD6, 0xFF},
	Faint:  color.RGBA{0x86, 0x8C, 0x93, 0xFF},
	Hollow: color.RGBA{0x10, 0x14, 0x1A, 0xFF},
	Accent: color.RGBA{0x5C, 0xC4, 0xE0, 0xFF},
	Fault:  color.RGBA{0xFF, 0x8A, 0x73, 0xFF},
}

// BlackOnWhite and WhiteOnBlack are for those who need all the contrast there
// is: lines are thicker, nothing is faint.
var (
	BlackOnWhite = Palette{
		Paper:  color.RGBA{0xFF, 0xFF, 0xFF, 0xFF},
		Ink:    color.RGBA{0x00, 0x00, 0x00, 0xFF},
		Faint:  color.RGBA{0x3A, 0x3A, 0x3A, 0xFF},
		Hollow: color.RGBA{0xE6, 0xE6, 0xE6, 0xFF},
		Accent: color.RGBA{0x00, 0x1F, 0x84, 0xFF},
		Fault:  color.RGBA{0x9A, 0x00, 0x00, 0xFF},
		Bold:   1.5,
	}
	WhiteOnBlack = Palette{
		Paper:  color.RGBA{0x00, 0x00, 0x00, 0xFF},
		Ink:    color.RGBA{0xFF, 0xFF, 0xFF, 0xFF},
		Faint:  color.RGBA{0xC4, 0xC4, 0xC4, 0xFF},
		Hollow: color.RGBA{0x26, 0x26, 0x26, 0xFF},
		Accent: color.RGBA{0x6F, 0xD8, 0xFF, 0xFF},
		Fault:  color.RGBA{0xFF, 0xB0, 0xA0, 0xFF},
		Bold:   1.5,
	}
)

// Weight returns how wide a line of one of the two weights is in the palette.
func (p Palette) Weight(line float64) float64 {
	if p.Bold == 0 {
		return line
	}
	return line * p.Bold
}

// The two weights of line, px of layout, for the two of a printed sheet.
const (
	ThinLine  = 1.0
	ThickLine = 1.8
)

// dashScale is px of layout to a mm of a printed dash.
const dashScale = 2.5

// letterHeight is the height of capitals up to which lettering grows with the
// view, px of layout: a label to be read, not looked at.
const letterHeight = 16

// edgeHatch marks the edge of a part.
var edgeHatch = Hatch{Depth: 5.5, Spacing: 4.5, Width: 0.9}

// Style returns how a drawing is drawn in the palette: every layer of
// [drawing.Pens] in the weight and dash it has on paper, what a tool cuts in
// ink, the rest faint.
func (p Palette) Style() Style {
	strokes := make(map[drawing.Layer]Stroke, len(drawing.Pens))
	for _, pen := range drawing.Pens {
		strokes[pen.Layer] = p.stroke(pen)
	}
	return Layers(strokes)
}

func (p Palette) stroke(pen drawing.Pen) Stroke {
	s := Stroke{Colour: p.Faint, Width: p.Weight(ThinLine), Letter: letterHeight}
	if pen.Width >= drawing.ThickLine {
		s.Width = p.Weight(ThickLine)
	}
	for _, v := range pen.Dash {
		s.Dash = append(s.Dash, v*dashScale)
	}
	if pen.Cut {
		s.Colour, s.Fill = p.Ink, p.Hollow
	}
	switch pen.Layer {
	case drawing.Lettering, drawing.Witness:
		s.Colour = p.Ink
	case drawing.WearRing:
		s.Fill = color.RGBA{} // what lies inside the ring is not cut away
	case drawing.Outline:
		s.Fill = color.RGBA{}
		s.Hatch = edgeHatch
		s.Hatch.Colour = p.Faint
	case drawing.Bore:
		s.Fill = color.RGBA{}
		s.Hatch = edgeHatch
		s.Hatch.Colour = p.Faint
		s.Hatch.Depth = -edgeHatch.Depth // the part lies outside
	}
	return s
}

// Selected returns the stroke of what is selected.
func (p Palette) Selected(s Stroke) Stroke {
	s.Colour, s.Sign = p.Accent, Halo
	return s
}

// Faulty returns the stroke of what a check has found wrong.
func (p Palette) Faulty(s Stroke) Stroke {
	s.Colour, s.Sign = p.Fault, Cross
	return s
}
