package drawing

import (
	"strings"
	"unicode"

	"stopwright/detent/geom"
)

// Engrave appends a text as single strokes, which a router or a laser follows
// with no font at hand: capitals, digits and a few marks. Small letters become
// capitals, other accents than those of German go, and what has no strokes is a
// question mark.
func (d *Drawing) Engrave(x Text) {
	unit := x.Size / strokeCap
	pen := x.Align.Offset(StrokeWidth(x.Text, x.Size), x.Size)
	place := func(x0, at geom.Point) geom.Point {
		return x.At.Add(x0.Add(at.Scale(unit)).Rotate(geom.Angle(-x.Angle)))
	}
	for _, r := range stroked(x.Text) {
		g := strokeGlyphs[r]
		for _, path := range g.paths {
			for i := 1; i < len(path); i++ {
				d.Add(Engraving, Line{place(pen, path[i-1]), place(pen, path[i])})
			}
		}
		pen.X += (g.width + strokeGap) * unit
	}
}

// StrokeWidth returns the width (mm) of a text as strokes, with capitals size mm
// high.
func StrokeWidth(text string, size float64) float64 {
	w := 0.0
	for i, r := range stroked(text) {
		if i > 0 {
			w += strokeGap
		}
		w += strokeGlyphs[r].width
	}
	return w * size / strokeCap
}

// stroked returns the characters with strokes that stand for a text.
func stroked(text string) []rune {
	var out []rune
	for _, r := range strings.Join(strings.Fields(text), " ") {
		r = unicode.ToUpper(r)
		if same, ok := strokeSame[r]; ok {
			out = append(out, []rune(same)...)
			continue
		}
		if _, ok := strokeGlyphs[r]; !ok {
			r = missing
		}
		out = append(out, r)
	}
	return out
}

// strokeSame names what stands for characters without strokes of their own.
var strokeSame = map[rune]string{
	'\u2212': "-", '–': "-", '—': "-", 'ß': "SS", 'ẞ': "SS", '’': "'", '′': "'", '″': `"`, 'Ø': "⌀", '·': ".",
	'À': "A", 'Á': "A", 'Â': "A", 'Ã': "A", 'Å': "A", 'Ç': "C", 'È': "E", 'É': "E", 'Ê': "E", 'Ë': "E",
	'Ì': "I", 'Í': "I", 'Î': "I", 'Ï': "I", 'Ñ': "N", 'Ò': "O", 'Ó': "O", 'Ô': "O", 'Õ': "O", 'Ù': "U", 'Ú': "U", 'Û': "U",
}
