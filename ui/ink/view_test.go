package ink

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

func TestViewPutsThePartUpright(t *testing.T) {
	v := View{Scale: 2, Origin: Px{100, 80}}
	assert.Equal(t, Px{100, 80}, v.Pixel(geom.Point{}), "the pivot")
	assert.Equal(t, Px{120, 80}, v.Pixel(geom.Point{X: 10}), "+x is right")
	assert.Equal(t, Px{100, 60}, v.Pixel(geom.Point{Y: 10}), "+y is up")
	assert.Equal(t, Px{240, 120}, v.Dense(2).Pixel(geom.Point{X: 10, Y: 10}), "a fine screen has twice the pixels")
	assert.Equal(t, geom.Point{X: 10, Y: 10}, v.Point(Px{120, 60}))
	assert.False(t, math.Signbit(v.Point(Px{100, 80}).Y), "no -0")
}

func TestPointIsTheInverseOfPixel(t *testing.T) {
	const rounding = 1e-9 // mm; some units in the last place of 1e5 px
	rapid.Check(t, func(t *rapid.T) {
		v := View{
			Scale:  rapid.Float64Range(0.05, 200).Draw(t, "scale"),
			Origin: Px{rapid.Float64Range(-1e4, 1e4).Draw(t, "x"), rapid.Float64Range(-1e4, 1e4).Draw(t, "y")},
		}
		p := geom.Point{X: rapid.Float64Range(-500, 500).Draw(t, "px"), Y: rapid.Float64Range(-500, 500).Draw(t, "py")}
		for _, density := range []float64{1, 2} {
			w := v.Dense(density)
			assert.Equal(t, density, w.Density)
			q := w.Point(w.Pixel(p))
			assert.InDelta(t, p.X, q.X, rounding)
			assert.InDelta(t, p.Y, q.Y, rounding)
		}
	})
}

func TestZoomKeepsThePlaceUnderThePointer(t *testing.T) {
	v := View{Scale: 2, Origin: Px{100, 80}, Density: 1}
	at := Px{37, 150}
	w := v.Zoom(1.25, at)
	assert.Equal(t, 2.5, w.Scale)
	assert.InDelta(t, v.Point(at).X, w.Point(at).X, 1e-12)
	assert.InDelta(t, v.Point(at).Y, w.Point(at).Y, 1e-12)
}

func TestFit(t *testing.T) {
	b := drawing.NoBounds()
	b.Add(geom.Point{X: -170, Y: -100})
	b.Add(geom.Point{X: 170, Y: 220})
	v := Fit(b, 800, 700, 20)
	assert.InDelta(t, 660.0/320, v.Scale, 1e-12, "the height binds")
	lo, hi := v.Pixel(b.Min), v.Pixel(b.Max)
	// Moving the pivot to the middle of a pixel takes up to half of one.
	assert.InDelta(t, 20, hi.Y, 0.5)
	assert.InDelta(t, 680, lo.Y, 0.5)
	assert.InDelta(t, 800, lo.X+hi.X, 1, "centred")
	_, part := math.Modf(v.Origin.X)
	assert.Equal(t, 0.5, part, "the pivot is in the middle of a pixel")

	assert.Equal(t, 1.0, Fit(drawing.NoBounds(), 800, 700, 20).Scale, "nothing drawn")
	point := drawing.NoBounds()
	point.Add(geom.Point{X: 5})
	assert.Equal(t, 1.0, Fit(point, 800, 700, 20).Scale, "no size")
	assert.Equal(t, 1.0, Fit(b, 30, 30, 20).Scale, "no room")
	flat := drawing.NoBounds()
	flat.Add(geom.Point{})
	flat.Add(geom.Point{X: 100})
	assert.Equal(t, 7.6, Fit(flat, 800, 700, 20).Scale, "a level line fills the width")
}
