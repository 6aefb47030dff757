package ink

import (
	"image/color"
	"math"

	"stopwright/detent/geom"
)

// bend lays an [along] round a circle: s runs anticlockwise at the given radius
// from shift at the axis, t outwards from the circle.
type bend struct {
	along
	axis   Px // unit vector in the middle of the stroke, y up
	radius float64
	shift  float64
}

// cover returns how much of the pixel at (dx, dy) from the centre, and d away
// from it, is inked.
func (b *bend) cover(dx, dy, d float64) float64 {
	cos := dx*b.axis.X - dy*b.axis.Y
	sin := -dy*b.axis.X - dx*b.axis.Y
	pixel := b.radius / max(d, 0.5) // a pixel no nearer the centre than half its size
	return b.along.cover(b.radius*math.Atan2(sin, cos)+b.shift, d-b.radius, pixel)
}

// Arc paints part of a circle as a line of the given width (px), broken by dash,
// running anticlockwise from start through sweep degrees, sweep above 0. Its
// ends are cut square; a broken arc begins and ends with a whole dash. A sweep
// of 360 or more is the whole circle.
func (c *Canvas) Arc(centre Px, radius, start, sweep, width float64, colour color.RGBA, dash []float64) {
	switch {
	case sweep >= 360:
		c.Circle(centre, radius, width, colour, dash)
	case placeable(centre.X, centre.Y, radius, start, sweep, width) && radius > 0 && sweep > 0 && width > 0:
		length, axis := arcMiddle(radius, start, sweep)
		c.annulus(centre, rimOf(radius-width/2), rimOf(radius+width/2), tintOf(colour), &bend{
			along: along{hi: length, square: upright, stripes: dashesBetween(dash, length)},
			axis:  axis, radius: radius, shift: length / 2,
		})
	}
}

// arcMiddle returns an arc's length (px) and the direction of its middle from
// its centre, y up.
func arcMiddle(radius, start, sweep float64) (length float64, axis Px) {
	sin, cos := geom.Angle(start + sweep/2).SinCos()
	return radius * sweep * (math.Pi / 180), Px{cos, sin}
}
