package figures

import (
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// Style returns how a figure is drawn in a palette: what is cut in the thick
// weight, the size that is explained in the accent colour.
func Style(p ink.Palette) ink.Style {
	thick, thin := p.Weight(ink.ThickLine), p.Weight(ink.ThinLine)
	sheet := p.Style()
	strokes := map[drawing.Layer]ink.Stroke{
		Cut:     {Colour: p.Ink, Width: thick},
		Hatch:   {Colour: p.Faint, Width: 0.7 * thin},
		Metal:   {Colour: p.Faint, Width: 0.7 * thin},
		Ball:    {Colour: p.Ink, Width: thick, Fill: p.Hollow},
		Spring:  {Colour: p.Faint, Width: thin},
		Axis:    {Colour: p.Faint, Width: 0.7 * thin, Dash: []float64{10, 3, 2, 3}},
		Measure: {Colour: p.Accent, Width: 1.2 * thin, Letter: letterHeight},
	}
	return func(e drawing.Entity) ink.Stroke {
		if s, ok := strokes[e.Layer]; ok {
			return s
		}
		return sheet(e)
	}
}

// letterHeight is the height of capitals, px of layout, however large a figure.
const letterHeight = 10
