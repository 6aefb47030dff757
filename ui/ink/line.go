package ink

import (
	"image/color"
	"math"
)

// Line paints a straight line of the given width (px), broken by dash. Its ends
// are cut square; a broken line begins and ends with a whole dash.
func (c *Canvas) Line(a, b Px, width float64, colour color.RGBA, dash []float64) {
	length := math.Hypot(b.X-a.X, b.Y-a.Y)
	if !placeable(length, a.X, a.Y, width) || length == 0 || width <= 0 {
		return
	}
	c.band(a, b, length, -width/2, width/2, tintOf(colour), &along{
		hi: length, square: upright, stripes: dashesBetween(dash, length),
	})
}

// band paints the strip along the line from a to b between distances lo and hi
// across it, positive to the left as seen along the line, as far as f says.
func (c *Canvas) band(a, b Px, length, lo, hi float64, t tint, f *along) {
	if t.invisible() {
		return
	}
	u := Px{(b.X - a.X) / length, (b.Y - a.Y) / length}
	// The strip with half a pixel round it, and what a mitre adds to its ends.
	more := 0.5 + math.Abs(f.mitre)*max(math.Abs(lo), math.Abs(hi))
	s0, s1, t0, t1 := -more, length+more, lo-0.5, hi+0.5
	y0, y1 := c.rows(
		a.Y+min(s0*u.Y, s1*u.Y)+min(-t0*u.X, -t1*u.X),
		a.Y+max(s0*u.Y, s1*u.Y)+max(-t0*u.X, -t1*u.X),
	)
	for y := y0; y < y1; y++ {
		dy := float64(y) + 0.5 - a.Y
		// s = dx·ux + dy·uy and t = dx·uy − dy·ux, each between its limits.
		l1, r1 := between(u.X, dy*u.Y, s0, s1)
		l2, r2 := between(u.Y, -dy*u.X, t0, t1)
		from, to := c.col(a.X+max(l1, l2)), c.col(a.X+min(r1, r2))
		if from >= to {
			continue
		}
		px := c.cut(c.row(y), from, to)
		dx := float64(from) + 0.5 - a.X
		for ; len(px) > 0; px, dx = px[4:], dx+1 {
			across := dx*u.Y - dy*u.X
			share := overlap(across-0.5, across+0.5, lo, hi)
			if share > 0 {
				t.put(px, share*f.cover(dx*u.X+dy*u.Y, across, 1))
			}
		}
	}
}

// between returns the interval of x in which k·x + m lies between lo and hi;
// from is above to where there is none.
func between(k, m, lo, hi float64) (from, to float64) {
	if k == 0 {
		if m < lo || m > hi {
			return math.Inf(1), math.Inf(-1)
		}
		return math.Inf(-1), math.Inf(1)
	}
	from, to = (lo-m)/k, (hi-m)/k
	if from > to {
		from, to = to, from
	}
	return from, to
}

// lengthen moves both ends of the line from a to b outwards by d; a line of no
// length has no direction and stays.
func lengthen(a, b Px, d float64) (Px, Px) {
	length := math.Hypot(b.X-a.X, b.Y-a.Y)
	if length == 0 {
		return a, b
	}
	u := Px{d * (b.X - a.X) / length, d * (b.Y - a.Y) / length}
	return Px{a.X - u.X, a.Y - u.Y}, Px{b.X + u.X, b.Y + u.Y}
}
