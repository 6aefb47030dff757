package ink

import (
	"image"
	"image/color"
	"math"
)

// black is laid on transparent images, so that the alpha of a pixel is the
// share of it that is inked.
var black = color.RGBA{A: 255}

// Tolerances of this package's tests.
const (
	// areaTolerance is the relative error allowed in the area of what is
	// filled. Each pixel is right only to within edgeTolerance, which cancels
	// along an edge.
	areaTolerance = 0.005

	// strokeTolerance is the same for strokes, which are nothing but edge, and
	// strokeSlack, px², what is allowed besides at the ends of a short one. The
	// largest seen were 0.008 and 0.28.
	strokeTolerance = 0.015
	strokeSlack     = 0.3

	// placeTolerance, px, is the error allowed in the centre of what is inked,
	// for the same reason; the eye does not see a tenth.
	placeTolerance = 0.08

	// edgeTolerance is by how much the share of one pixel may differ from its
	// exact share beside one smoothed edge: an edge at 45° that just misses the
	// square pixel's half cuts a corner of (√2/2 − 1/2)² = 0.043 off it; the
	// rest is two roundings to 256ths.
	edgeTolerance = 0.051
)

// inked is what lies on a transparent canvas: its area (px²) and the centre of
// that area.
type inked struct {
	area   float64
	centre Px
}

func measure(c *Canvas) (m inked) {
	b := c.Img.Rect
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			a := share(c.Img, x, y)
			m.area += a
			m.centre.X += a * (float64(x) + 0.5)
			m.centre.Y += a * (float64(y) + 0.5)
		}
	}
	m.centre.X /= m.area
	m.centre.Y /= m.area
	return m
}

// share returns the inked share of one pixel, 0 to 1.
func share(im *image.RGBA, x, y int) float64 { return float64(im.RGBAAt(x, y).A) / 255 }

// worst returns the largest difference of share between two images of a size.
func worst(a, b *image.RGBA) (d float64) {
	for i := 3; i < len(a.Pix); i += 4 {
		d = max(d, math.Abs(float64(a.Pix[i])-float64(b.Pix[i]))/255)
	}
	return d
}

// extentOf returns the pixels that are inked by more than a fifth: a fringe of
// less is not seen as the shape's edge.
func extentOf(c *Canvas) (r image.Rectangle) {
	b := c.Img.Rect
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			if share(c.Img, x, y) > 0.2 {
				r = r.Union(image.Rect(x, y, x+1, y+1))
			}
		}
	}
	return r
}
