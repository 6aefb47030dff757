package ink

import (
	"image"
	"image/color"
	"image/draw"
	"math"

	"golang.org/x/image/vector"
)

// filler turns closed outlines of straight sides into a mask of coverage, by
// the non-zero winding rule. Its memory is reused.
type filler struct {
	points []Px  // of all outlines, one after the other
	ends   []int // where each outline ends in points
	cut    [2][]Px
	kept   []Px // what is left of points after clipping
	stops  []int
	raster vector.Rasterizer
	mask   image.Alpha
}

func (f *filler) reset() { f.points, f.ends = f.points[:0], f.ends[:0] }

func (f *filler) add(p Px) { f.points = append(f.points, p) }

// close ends an outline.
func (f *filler) close() { f.ends = append(f.ends, len(f.points)) }

// fill rasterises the outlines as far as they lie within clip. It returns where
// on the image f.mask lies; an empty rectangle if nothing is covered.
func (f *filler) fill(clip image.Rectangle) image.Rectangle {
	f.kept, f.stops = f.kept[:0], f.stops[:0]
	from := 0
	for _, to := range f.ends {
		f.kept = append(f.kept, f.clip(f.points[from:to], clip)...)
		f.stops = append(f.stops, len(f.kept))
		from = to
	}
	r := extent(f.kept).Intersect(clip)
	if r.Empty() {
		return image.Rectangle{}
	}
	f.raster.Reset(r.Dx(), r.Dy())
	f.raster.DrawOp = draw.Src
	origin := Px{float64(r.Min.X), float64(r.Min.Y)}
	from = 0
	for _, to := range f.stops {
		for i, p := range f.kept[from:to] {
			x, y := float32(p.X-origin.X), float32(p.Y-origin.Y)
			if i == 0 {
				f.raster.MoveTo(x, y)
			} else {
				f.raster.LineTo(x, y)
			}
		}
		f.raster.ClosePath()
		from = to
	}
	f.size(r.Dx(), r.Dy())
	f.raster.Draw(&f.mask, f.mask.Rect, image.Opaque, image.Point{})
	return r
}

// size gives the mask a size, px.
func (f *filler) size(width, height int) {
	if n := width * height; cap(f.mask.Pix) < n {
		f.mask.Pix = make([]uint8, n)
	} else {
		f.mask.Pix = f.mask.Pix[:n]
	}
	f.mask.Stride, f.mask.Rect = width, image.Rect(0, 0, width, height)
}

// extent returns the pixels that the points span.
func extent(pts []Px) image.Rectangle {
	if len(pts) == 0 {
		return image.Rectangle{}
	}
	lo, hi := pts[0], pts[0]
	for _, p := range pts {
		lo = Px{min(lo.X, p.X), min(lo.Y, p.Y)}
		hi = Px{max(hi.X, p.X), max(hi.Y, p.Y)}
	}
	return image.Rect(int(math.Floor(lo.X)), int(math.Floor(lo.Y)), int(math.Ceil(hi.X)), int(math.Ceil(hi.Y)))
}

// clip returns the outline cut to the rectangle, side by side (Sutherland and
// Hodgman, 1974), so that the rasteriser never sees a coordinate that its single
// precision or its loops could not bear. The result is valid until the next call.
func (f *filler) clip(outline []Px, r image.Rectangle) []Px {
	// The part to keep is where x·a + y·b + c is at least 0.
	for i, side := range [4][3]float64{
		{1, 0, -float64(r.Min.X)},
		{-1, 0, float64(r.Max.X)},
		{0, 1, -float64(r.Min.Y)},
		{0, -1, float64(r.Max.Y)},
	} {
		out := f.cut[i%2][:0]
		for j, q := range outline {
			p := outline[(j+len(outline)-1)%len(outline)]
			dp := p.X*side[0] + p.Y*side[1] + side[2]
			dq := q.X*side[0] + q.Y*side[1] + side[2]
			if (dp < 0) != (dq < 0) {
				k := dp / (dp - dq)
				out = append(out, Px{p.X + k*(q.X-p.X), p.Y + k*(q.Y-p.Y)})
			}
			if dq >= 0 {
				out = append(out, q)
			}
		}
		f.cut[i%2] = out
		outline = out
	}
	return outline
}

// Polygon fills a closed figure of straight sides.
func (c *Canvas) Polygon(corners []Px, colour color.RGBA) {
	c.filler.reset()
	for _, p := range corners {
		c.filler.add(p)
	}
	c.polygon(colour)
}

// polygon fills the figure whose corners have been given to the filler.
func (c *Canvas) polygon(colour color.RGBA) {
	for _, p := range c.filler.points {
		if !placeable(p.X, p.Y) {
			return
		}
	}
	c.filler.close()
	at := c.filler.fill(c.Img.Rect)
	c.stamp(c.filler.mask.Pix, at, tintOf(colour))
}

// stamp blends the tint over the image through a mask that lies at the given
// rectangle and may reach beyond the image.
func (c *Canvas) stamp(mask []uint8, at image.Rectangle, t tint) {
	seen := at.Intersect(c.Img.Rect)
	for y := seen.Min.Y; y < seen.Max.Y; y++ {
		i := (y-at.Min.Y)*at.Dx() + seen.Min.X - at.Min.X
		px := c.cut(c.row(y), seen.Min.X, seen.Max.X)
		for _, m := range mask[i : i+seen.Dx()] {
			if m > 0 {
				t.blend(px, (uint32(m)*whole+127)/255)
			}
			px = px[4:]
		}
	}
}
