package ink

import (
	"image/color"
	"math"
)

// Hatch is how a cut edge is marked: short strokes at 45° to it, in a strip
// along it. The zero Hatch marks nothing.
type Hatch struct {
	Depth   float64 // width of the strip, px: inwards if above 0, outwards if below
	Spacing float64 // from stroke to stroke, square to them, px; above Width
	Width   float64 // of a stroke, px
	Colour  color.RGBA
}

func (h Hatch) drawn() bool {
	return placeable(h.Depth, h.Spacing, h.Width) && h.Depth != 0 && h.Width > 0 && h.Spacing > h.Width
}

// strokes returns the strokes, fitted to a line of the given length.
func (h Hatch) strokes(length float64) stripes {
	return dashesRound([]float64{h.Width, h.Spacing - h.Width}, length/math.Sqrt2)
}

// HatchCircle hatches a circle's edge, inside it if Depth is above 0.
func (c *Canvas) HatchCircle(centre Px, radius float64, h Hatch) {
	if !placeable(centre.X, centre.Y, radius) || radius <= 0 || !h.drawn() {
		return
	}
	in, out := radius-max(0, h.Depth), radius-min(0, h.Depth)
	c.annulus(centre, rimOf(in), rimOf(out), tintOf(h.Colour), &bend{
		along: along{lo: math.Inf(-1), hi: math.Inf(1), square: leaning, stripes: h.strokes(2 * math.Pi * radius)},
		axis:  Px{1, 0}, radius: radius,
	})
}

// HatchArc hatches an arc's edge as [Canvas.HatchCircle] does a circle's; the
// angles are those of [Canvas.Arc].
func (c *Canvas) HatchArc(centre Px, radius, start, sweep float64, h Hatch) {
	switch {
	case sweep >= 360:
		c.HatchCircle(centre, radius, h)
	case placeable(centre.X, centre.Y, radius, start, sweep) && radius > 0 && sweep > 0 && h.drawn():
		in, out := radius-max(0, h.Depth), radius-min(0, h.Depth)
		length, axis := arcMiddle(radius, start, sweep)
		c.annulus(centre, rimOf(in), rimOf(out), tintOf(h.Colour), &bend{
			along: along{hi: length, square: leaning, stripes: h.strokes(length)},
			axis:  axis, radius: radius, shift: length / 2,
		})
	}
}

// HatchLine hatches the edge from a to b of a straight-sided part with square
// corners, the part lying to the left as seen along the line: the strips of
// neighbouring edges meet in a mitre.
func (c *Canvas) HatchLine(a, b Px, h Hatch) {
	length := math.Hypot(b.X-a.X, b.Y-a.Y)
	if !placeable(length, a.X, a.Y) || length == 0 || !h.drawn() {
		return
	}
	c.band(a, b, length, min(0, h.Depth), max(0, h.Depth), tintOf(h.Colour), &along{
		hi: length, mitre: 1, square: leaning, stripes: h.strokes(length),
	})
}
