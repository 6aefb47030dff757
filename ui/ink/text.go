package ink

import (
	"image/color"
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// Text letters one line. Size is the height of a capital (px), angle the slope
// of the base line; align says which point of the text stands at at.
func (c *Canvas) Text(at Px, size, angle float64, align drawing.Align, text string, colour color.RGBA) {
	if !placeable(at.X, at.Y, size, angle) || size <= 0 {
		return
	}
	width := c.glyphs.width(text) * size
	if reach := width + 2*size; c.outside(Px{at.X - reach, at.Y - reach}, Px{at.X + reach, at.Y + reach}) {
		return
	}
	sin, cos := geom.Angle(angle).SinCos()
	along, up := Px{cos, -sin}, Px{-sin, -cos}
	right, rise := 0.0, 0.0
	switch align {
	case drawing.Centre:
		right, rise = -width/2, -size/2
	case drawing.Right:
		right = -width
	case drawing.Top:
		right, rise = -width/2, -size
	case drawing.Bottom:
		right = -width / 2
	}
	pen := Px{at.X + right*along.X + rise*up.X, at.Y + right*along.Y + rise*up.Y}
	// A level or upright base line stands on whole pixels, which keeps the feet
	// of the letters sharp.
	switch {
	case sin == 0:
		pen.Y = math.Round(pen.Y)
	case cos == 0:
		pen.X = math.Round(pen.X)
	}
	t := tintOf(colour)
	for _, r := range text {
		l := c.glyphs.letter(r)
		c.letter(l, pen, size, angle, t)
		pen.X += l.advance * size * along.X
		pen.Y += l.advance * size * along.Y
	}
}

// TextWidth returns the width (px) of a text with capitals of the given height.
func (c *Canvas) TextWidth(text string, size float64) float64 { return c.glyphs.width(text) * size }

// outside reports whether the upright rectangle from lo to hi misses the image.
func (c *Canvas) outside(lo, hi Px) bool {
	b := c.Img.Rect
	return hi.X < float64(b.Min.X) || lo.X > float64(b.Max.X) ||
		hi.Y < float64(b.Min.Y) || lo.Y > float64(b.Max.Y)
}
