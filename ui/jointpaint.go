package ui

import (
	"image/color"
	"math"
	"strconv"

	"stopwright/assets/words"
	"stopwright/detent/angles"
	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// paintJoint paints two corners of a frame cut with the least true stop, one and
// the last, their gaps drawn so many times as wide that they can be seen.
func (v *truthView) paintJoint(c *ink.Canvas, d float64, p ink.Palette) {
	_, worst, ok := v.w.store.Report().Plate.Trueness.WorstZeroed()
	if !ok {
		return
	}
	n, length := v.sideCount(), v.jointLength()
	corner, _ := angles.CornerGap(length, worst.Interval95)
	last, closes := angles.ClosingGap(length, n, worst.Interval95)
	if !closes {
		return
	}
	times := exaggeration(last / length)
	t := v.w.words.Text
	size := c.Img.Bounds().Size()
	half := float64(size.X) / 2
	for i, k := range []struct {
		key string
		gap float64
	}{{"truth.joint.corner", corner}, {"truth.joint.last", last}} {
		j := jointPicture{c: c, d: d, p: p, middle: half * (float64(i) + 0.5), wide: half, high: float64(size.Y)}
		j.paint(n, times*k.gap/length)
		j.label(t(k.key)+": "+v.w.words.Length(k.gap), 18*d, p.Ink)
	}
	c.Text(ink.Px{X: half, Y: float64(size.Y) - 8*d}, letter*d, 0, drawing.Bottom,
		t("truth.joint.times", words.Args{"Times": v.w.decimal(strconv.FormatFloat(times, 'f', -1, 64))}), p.Faint)
}

// exaggeration returns by how many times, 1, 2 or 5 and a power of ten, a gap of a
// share of its joint is widened to be seen well: to a third of the joint at most.
func exaggeration(share float64) float64 {
	const most = 1.0 / 3
	if share <= 0 {
		return 1
	}
	step := math.Pow(10, math.Floor(math.Log10(most/share)))
	for _, k := range [...]float64{5, 2} {
		if step*k*share <= most {
			return step * k
		}
	}
	return step
}

// jointPicture paints one corner in its share of a canvas.
type jointPicture struct {
	c          *ink.Canvas
	d          float64
	p          ink.Palette
	middle     float64 // of its share, px
	wide, high float64
}

// paint paints the two boards of a corner of n sides, the joint open at the
// outside by a share of its length.
func (j jointPicture) paint(n int, share float64) {
	const length = 0.42 // of the joint, as a share of the height
	l := j.high * length
	half := geom.Angle(90 - 180/float64(n)) // between the joint and a board's edges
	open := math.Atan(share) / 2
	foot := ink.Px{X: j.middle, Y: j.high * 0.68} // the inside of the corner, where the joint is shut
	reach := j.wide
	for _, side := range [2]float64{-1, 1} {
		// The board is turned about the foot by half the opening.
		place := func(x, up float64) ink.Px {
			sin, cos := math.Sincos(open)
			return ink.Px{X: foot.X + side*(x*cos+up*sin), Y: foot.Y - (up*cos - x*sin)}
		}
		sin, cos := half.SinCos()
		along := func(up float64) ink.Px { return place(reach*sin, up-reach*cos) }
		outline := []ink.Px{place(0, 0), place(0, l), along(l), along(0)}
		j.clip(outline)
	}
}

// clip fills and outlines a board as far as it lies in the picture's share.
func (j jointPicture) clip(outline []ink.Px) {
	left, right := j.middle-j.wide/2+6*j.d, j.middle+j.wide/2-6*j.d
	cut := cutAt(cutAt(outline, func(q ink.Px) float64 { return q.X - left }), func(q ink.Px) float64 { return right - q.X })
	cut = cutAt(cut, func(q ink.Px) float64 { return j.high - 26*j.d - q.Y })
	if len(cut) < 3 {
		return
	}
	j.c.Polygon(cut, j.p.Hollow)
	for i, a := range cut {
		b := cut[(i+1)%len(cut)]
		cutLine := math.Abs(a.X-b.X) < 0.5 && (math.Abs(a.X-left) < 0.5 || math.Abs(a.X-right) < 0.5) ||
			math.Abs(a.Y-b.Y) < 0.5 && math.Abs(a.Y-(j.high-26*j.d)) < 0.5
		if !cutLine { // the board goes on where the picture ends
			j.c.Line(a, b, j.p.Weight(ink.ThickLine)*j.d, j.p.Ink, nil)
		}
	}
}

// cutAt returns the part of a convex outline where inside is not negative.
func cutAt(outline []ink.Px, inside func(ink.Px) float64) []ink.Px {
	var out []ink.Px
	for i, a := range outline {
		b := outline[(i+1)%len(outline)]
		u, w := inside(a), inside(b)
		if u >= 0 {
			out = append(out, a)
		}
		if u >= 0 != (w >= 0) {
			k := u / (u - w)
			out = append(out, ink.Px{X: a.X + k*(b.X-a.X), Y: a.Y + k*(b.Y-a.Y)})
		}
	}
	return out
}

// label writes a line at the top of the picture's share.
func (j jointPicture) label(text string, y float64, colour color.RGBA) {
	j.c.Text(ink.Px{X: j.middle, Y: y}, letter*j.d, 0, drawing.Bottom, text, colour)
}
