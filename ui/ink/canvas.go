package ink

import (
	"image"
	"image/color"
	"math"
)

// Px is a place on the image in pixels, X to the right and Y down.
type Px struct{ X, Y float64 }

// Canvas is an image with what is needed to draw on it again and again without
// new memory. Nothing drawn outside the image has any effect or cost. Shapes
// with a number that is NaN or beyond 1e12 px, and strokes no wider than 0, are
// not drawn.
//
// A Canvas must not be used from two goroutines at once.
type Canvas struct {
	Img    *image.RGBA
	filler filler
	glyphs glyphs
	dash   []float64 // a dash on its way to the pixels of a fine screen
}

// New returns a canvas on a new transparent image of the given size, px. A size
// below 0 counts as 0.
func New(width, height int) *Canvas {
	c := &Canvas{}
	c.Resize(width, height)
	return c
}

// Resize gives the canvas an image of the given size (px), in the memory it has
// if that is enough. What the image holds afterwards is unspecified: call
// [Canvas.Clear]. An image handed out before shares that memory.
func (c *Canvas) Resize(width, height int) {
	width, height = max(0, width), max(0, height)
	n := 4 * width * height
	if c.Img == nil || cap(c.Img.Pix) < n {
		c.Img = image.NewRGBA(image.Rect(0, 0, width, height))
		return
	}
	c.Img = &image.RGBA{Pix: c.Img.Pix[:n], Stride: 4 * width, Rect: image.Rect(0, 0, width, height)}
}

// Clear paints the whole image in one colour, replacing what was there.
func (c *Canvas) Clear(colour color.RGBA) {
	b := c.Img.Rect
	if b.Empty() {
		return
	}
	first := c.row(b.Min.Y)
	tintOf(colour).lay(first)
	for y := b.Min.Y + 1; y < b.Max.Y; y++ {
		copy(c.row(y), first)
	}
}

// Fill paints the upright rectangle between two opposite corners.
func (c *Canvas) Fill(p, q Px, colour color.RGBA) {
	if !placeable(p.X, p.Y, q.X, q.Y) {
		return
	}
	t := tintOf(colour)
	if t.invisible() {
		return
	}
	left, right := min(p.X, q.X), max(p.X, q.X)
	top, bottom := min(p.Y, q.Y), max(p.Y, q.Y)
	x0, x1 := c.col(left-0.5), c.col(left+0.5)
	x2, x3 := max(x1, c.col(right-0.5)), c.col(right+0.5)
	y0, y1 := c.rows(top-0.5, bottom+0.5)
	for y := y0; y < y1; y++ {
		row := c.row(y)
		share := overlap(float64(y), float64(y)+1, top, bottom)
		for x := x0; x < x1; x++ {
			t.put(c.at(row, x), share*overlap(float64(x), float64(x)+1, left, right))
		}
		t.run(c.cut(row, x1, x2), share)
		for x := x2; x < x3; x++ {
			t.put(c.at(row, x), share*overlap(float64(x), float64(x)+1, left, right))
		}
	}
}

// overlap returns the length common to the intervals [a, b] and [c, d].
func overlap(a, b, c, d float64) float64 { return max(0, min(b, d)-max(a, c)) }

// row returns the bytes of one row of the image; y must lie inside it.
func (c *Canvas) row(y int) []uint8 {
	b := c.Img.Rect
	i := c.Img.PixOffset(b.Min.X, y)
	return c.Img.Pix[i : i+4*b.Dx()]
}

// at returns the rest of a row from column x on.
func (c *Canvas) at(row []uint8, x int) []uint8 { return row[4*(x-c.Img.Rect.Min.X):] }

// cut returns the part of a row from column from up to column to.
func (c *Canvas) cut(row []uint8, from, to int) []uint8 {
	return row[4*(from-c.Img.Rect.Min.X) : 4*(to-c.Img.Rect.Min.X)]
}

// rows returns the half-open range of the image's rows whose centres lie from
// y0 up to y1.
func (c *Canvas) rows(y0, y1 float64) (from, to int) {
	b := c.Img.Rect
	return firstCentre(y0, b.Min.Y, b.Max.Y), firstCentre(y1, b.Min.Y, b.Max.Y)
}

// col returns the first of the image's columns whose centre is at x or right of
// it.
func (c *Canvas) col(x float64) int { return firstCentre(x, c.Img.Rect.Min.X, c.Img.Rect.Max.X) }

// firstCentre returns the first whole n in [lo, hi] with n + 1/2 >= v. The
// comparison comes before the conversion, which is not defined for values that
// no int can hold; what is not a number gives lo.
func firstCentre(v float64, lo, hi int) int {
	v -= 0.5
	if !(v > float64(lo)) {
		return lo
	}
	if v >= float64(hi) {
		return hi
	}
	n := int(v)
	if float64(n) < v {
		n++
	}
	return n
}

// farthest (px) is as far as a shape may reach and as large as it may be: at
// 1e12 px, squares in float64 still tell distances 1e-4 px apart.
const farthest = 1e12

// placeable reports whether every number is one that a pixel can be found by.
func placeable(v ...float64) bool {
	for _, x := range v {
		if !(math.Abs(x) <= farthest) { // so written that NaN fails
			return false
		}
	}
	return true
}
