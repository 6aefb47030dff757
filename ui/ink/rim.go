package ink

import (
	"image/color"
	"math"
)

// rim is the edge of a smoothed disc: it covers k·clamp(r + 1/2 − d) of a pixel
// whose centre is d from the disc's.
//
// A slope one pixel wide about radius r holds π(r² + 1/12), so r is drawn in by
// that twelfth, which is also what the curvature of the edge takes from the
// pixels on it. Below r = 1/2 nothing is left to draw in and the cone of that
// radius, which holds π/3, is thinned instead. The area is exact either way.
type rim struct{ r, k float64 }

// nothing is the rim of a disc that covers no pixel.
var nothing = rim{r: -0.5}

func rimOf(radius float64) rim {
	switch q := radius*radius - 1.0/12; {
	case radius <= 0:
		return nothing
	case q < 0.25:
		return rim{0.5, 3 * radius * radius}
	default:
		return rim{math.Sqrt(q), 1}
	}
}

// cover returns the share of a pixel that the disc covers.
func (e rim) cover(d float64) float64 {
	switch t := e.r + 0.5 - d; {
	case t <= 0:
		return 0
	case t >= 1:
		return e.k
	default:
		return e.k * t
	}
}

// Disc paints a disc of the given radius, px.
func (c *Canvas) Disc(centre Px, radius float64, colour color.RGBA) {
	if placeable(centre.X, centre.Y, radius) {
		c.annulus(centre, nothing, rimOf(radius), tintOf(colour), nil)
	}
}

// Circle paints a circle as a line of the given width (px), broken by dash. The
// dashes are stretched or squeezed a little so that a whole number of them goes
// round, the first centred on the right.
func (c *Canvas) Circle(centre Px, radius, width float64, colour color.RGBA, dash []float64) {
	if !placeable(centre.X, centre.Y, radius, width) || radius <= 0 || width <= 0 {
		return
	}
	in, out := rimOf(radius-width/2), rimOf(radius+width/2)
	turn := 2 * math.Pi * radius
	p := dashesRound(dash, turn)
	if !p.broken() {
		c.annulus(centre, in, out, tintOf(colour), nil)
		return
	}
	c.annulus(centre, in, out, tintOf(colour), &bend{
		along: along{lo: math.Inf(-1), hi: math.Inf(1), square: upright, stripes: p},
		axis:  Px{1, 0}, radius: radius, shift: p.first() / 2,
	})
}

// annulus paints what lies inside rim out and outside rim in. Where b is given
// it says which parts along the way round are inked.
func (c *Canvas) annulus(o Px, in, out rim, t tint, b *bend) {
	reach := out.r + 0.5
	if t.invisible() || c.col(o.X-reach) == c.col(o.X+reach) {
		return
	}
	y0, y1 := c.rows(o.Y-reach, o.Y+reach)
	for y := y0; y < y1; y++ {
		dy := float64(y) + 0.5 - o.Y
		hole := halfChord(in.r-0.5, dy)               // nothing within
		inner := halfChord(in.r+0.5, dy)              // from here
		outer := max(inner, halfChord(out.r-0.5, dy)) // to here all is covered
		end := halfChord(reach, dy)                   // nothing beyond
		row := c.row(y)
		if b != nil {
			outer = inner // no pixel is known to be covered
		}
		x0, x1, x2, x3 := c.col(o.X-end), c.col(o.X-outer), c.col(o.X-inner), c.col(o.X-hole)
		x4, x5, x6, x7 := c.col(o.X+hole), c.col(o.X+inner), c.col(o.X+outer), c.col(o.X+end)
		c.edge(row, x0, x1, o, dy, in, out, t, b)
		t.run(c.cut(row, x1, x2), out.k)
		c.edge(row, x2, x3, o, dy, in, out, t, b)
		c.edge(row, x4, x5, o, dy, in, out, t, b)
		t.run(c.cut(row, x5, x6), out.k)
		c.edge(row, x6, x7, o, dy, in, out, t, b)
	}
}

// edge paints the part of an annulus in one row from column from up to to,
// pixel by pixel.
func (c *Canvas) edge(row []uint8, from, to int, o Px, dy float64, in, out rim, t tint, b *bend) {
	if from >= to {
		return
	}
	px := c.cut(row, from, to)
	dx := float64(from) + 0.5 - o.X
	for ; len(px) > 0; px, dx = px[4:], dx+1 {
		d := math.Sqrt(dx*dx + dy*dy)
		share := out.cover(d) - in.cover(d)
		if share > 0 && b != nil {
			share *= b.cover(dx, dy, d)
		}
		t.put(px, share)
	}
}

// halfChord returns half the chord of a circle at distance dy from its centre;
// 0 where there is none.
func halfChord(radius, dy float64) float64 {
	if math.Abs(dy) >= radius {
		return 0
	}
	return math.Sqrt(radius*radius - dy*dy)
}
