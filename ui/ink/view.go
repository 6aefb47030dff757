package ink

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// View is where a drawing lies on the image: how many pixels a millimetre is,
// and where the pivot is. Pixels are those of the image; on a fine screen
// several make one pixel of layout, in which strokes are measured.
type View struct {
	Scale   float64 // px to a mm, above 0
	Origin  Px      // the drawing's origin, the pivot
	Density float64 // image px to a px of layout: 1, or 2 on a fine screen; 0 counts as 1
}

// Fit returns the view in which b fills an image of the given size, centred,
// with a margin all round (px). Bounds of no size, or a margin that leaves no
// room, give a view of 1 px to a mm. The pivot comes to lie in the middle of a
// pixel, so that centre lines through it are sharp.
func Fit(b drawing.Bounds, width, height, margin float64) View {
	v := View{Scale: 1, Origin: Px{width / 2, height / 2}, Density: 1}
	if b.Empty() {
		return v
	}
	w, h := width-2*margin, height-2*margin
	if k := min(w/b.Width(), h/b.Height()); placeable(k) && k > 0 {
		v.Scale = k
	}
	v.Origin.X = math.Floor(v.Origin.X-v.Scale*(b.Min.X+b.Max.X)/2) + 0.5
	v.Origin.Y = math.Floor(v.Origin.Y+v.Scale*(b.Min.Y+b.Max.Y)/2) + 0.5
	return v
}

// Dense returns the same view on an image with d times the pixels each way.
func (v View) Dense(d float64) View {
	return View{v.Scale * d, Px{v.Origin.X * d, v.Origin.Y * d}, v.density() * d}
}

// Zoom returns the view k times as large, with what lies at p staying there.
func (v View) Zoom(k float64, p Px) View {
	v.Scale *= k
	v.Origin = Px{p.X + k*(v.Origin.X-p.X), p.Y + k*(v.Origin.Y-p.Y)}
	return v
}

// Pixel returns where a point of the drawing (mm) lies on the image.
func (v View) Pixel(p geom.Point) Px {
	return Px{v.Origin.X + v.Scale*p.X, v.Origin.Y - v.Scale*p.Y}
}

// Point returns which point of the drawing (mm) lies at p; the inverse of
// [View.Pixel].
func (v View) Point(p Px) geom.Point {
	return geom.Point{X: (p.X-v.Origin.X)/v.Scale + 0, Y: (v.Origin.Y-p.Y)/v.Scale + 0}
}

func (v View) density() float64 {
	if v.Density == 0 {
		return 1
	}
	return v.Density
}
