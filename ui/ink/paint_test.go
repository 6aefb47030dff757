package ink

import (
	"image/color"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// one paints a single shape 2 px to the mm, pivot in the middle of 200 by 200.
func one(s drawing.Shape, k Stroke, density float64) *Canvas {
	var d drawing.Drawing
	d.Add(drawing.Seats, s)
	n := int(200 * density)
	c := New(n, n)
	Paint(c, d, View{Scale: 2, Origin: Px{100, 100}}.Dense(density), func(drawing.Entity) Stroke { return k })
	return c
}

var thick = Stroke{Colour: black, Width: 2}

func TestPaintPlacesShapes(t *testing.T) {
	c := one(drawing.Circle{Centre: geom.Point{X: 20, Y: 30}, Radius: 10}, thick, 1)
	m := measure(c)
	sameArea(t, 2*math.Pi*20*2, m.area, "circle")
	assert.InDelta(t, 140, m.centre.X, placeTolerance)
	assert.InDelta(t, 40, m.centre.Y, placeTolerance)

	c = one(drawing.Line{A: geom.Point{X: -20, Y: -10}, B: geom.Point{X: 20, Y: 10}}, thick, 1)
	assert.Positive(t, share(c.Img, 62, 119), "lower left to")
	assert.Positive(t, share(c.Img, 138, 80), "upper right")

	c = one(drawing.Arc{Radius: 40, Start: 20, Sweep: 50}, thick, 1)
	e := extentOf(c)
	assert.True(t, e.Min.X > 100 && e.Max.Y < 100, "anticlockwise from the right: %v", e)

	c = one(drawing.Polygon{Points: []geom.Point{{}, {X: 20}, {Y: 20}}}, thick, 1)
	assert.InEpsilon(t, 800, measure(c).area, areaTolerance, "polygon")
	assert.InDelta(t, 100-40.0/3, measure(c).centre.Y, 0.05, "centre of a triangle")

	c = one(drawing.Text{Size: 8, Align: drawing.Centre, Text: "H"}, thick, 1)
	assert.InDelta(t, 16, float64(extentOf(c).Dy()), 1.5, "capitals of 8 mm at 2 px to the mm")
}

func TestStrokesKeepTheirSizeOnAFineScreen(t *testing.T) {
	k := Stroke{
		Colour: black, Width: 1.8, Dash: []float64{6, 4},
		Hatch: Hatch{Depth: 6, Spacing: 4, Width: 1, Colour: black}, Sign: Halo,
	}
	for name, s := range map[string]drawing.Shape{
		"circle": drawing.Circle{Radius: 30},
		"arc":    drawing.Arc{Radius: 30, Start: 40, Sweep: 200},
		"line":   drawing.Line{A: geom.Point{X: -30, Y: 2}, B: geom.Point{X: 30, Y: 2}},
		"text":   drawing.Text{Size: 10, Align: drawing.Centre, Text: "45"},
	} {
		coarse, fine := measure(one(s, k, 1)), measure(one(s, k, 2))
		assert.InEpsilon(t, 4*coarse.area, fine.area, 0.03, "%s: four pixels for one", name)
	}
}

func TestPaintLeavesOut(t *testing.T) {
	c := one(drawing.Text{Size: 2.9, Text: "H"}, thick, 1)
	assert.Zero(t, extentOf(c), "capitals of 5.8 px cannot be read")
	c = one(drawing.Text{Size: 3, Text: "H"}, thick, 1)
	assert.NotZero(t, extentOf(c), "those of 6 px can")
	c = one(drawing.Text{Size: 2.9, Text: "H"}, thick, 2)
	assert.Zero(t, extentOf(c), "nor can 11.6 px of a fine screen")

	c = one(drawing.Circle{Centre: geom.Point{X: 1e6}, Radius: 3}, thick, 1)
	assert.Zero(t, extentOf(c), "far outside")
	c = one(drawing.Circle{Centre: geom.Point{X: 52}, Radius: 1.9}, Stroke{Colour: black, Width: 2, Sign: Halo}, 1)
	assert.NotZero(t, extentOf(c), "outside, but its halo comes in")

	var d drawing.Drawing
	d.Add(drawing.Seats, drawing.Circle{Radius: 5})
	blank := New(200, 200)
	Paint(blank, d, View{Scale: 2, Origin: Px{100, 100}}, Layers(map[drawing.Layer]Stroke{drawing.Ring: thick}))
	assert.Zero(t, extentOf(blank), "a layer with no stroke")
}

func TestLetteringStopsGrowing(t *testing.T) {
	for _, density := range []float64{1, 2} {
		c := one(drawing.Text{Size: 40, Align: drawing.Centre, Text: "H"}, Stroke{Colour: black, Letter: 16}, density)
		assert.InDelta(t, 16*density, float64(extentOf(c).Dy()), 1.5, "80 px are held to 16, at density %v", density)
		c = one(drawing.Text{Size: 6, Align: drawing.Centre, Text: "H"}, Stroke{Colour: black, Letter: 16}, density)
		assert.InDelta(t, 12*density, float64(extentOf(c).Dy()), 1.5, "12 px are left, at density %v", density)
	}
}

func TestOutlineIsClosedAtItsCorners(t *testing.T) {
	var d drawing.Drawing
	d.Rect(drawing.Outline, geom.Point{X: -40, Y: -40}, geom.Point{X: 40, Y: 40})
	c := New(200, 200)
	Paint(c, d, View{Scale: 2, Origin: Px{100, 100}}, func(drawing.Entity) Stroke { return thick })
	for _, p := range [][2]int{{19, 19}, {180, 19}, {19, 180}, {180, 180}} {
		assert.InDelta(t, 1, share(c.Img, p[0], p[1]), 0.01, "outer corner %v", p)
	}
	sameArea(t, 162*162-158*158, measure(c).area, "frame 2 px wide")
}

func TestHatchingFallsInsideThePart(t *testing.T) {
	k := Stroke{Hatch: Hatch{Depth: 6, Spacing: 4, Width: 1, Colour: black}}
	var d drawing.Drawing
	d.Rect(drawing.Outline, geom.Point{X: -40, Y: -40}, geom.Point{X: 40, Y: 40})
	c := New(200, 200)
	Paint(c, d, View{Scale: 2, Origin: Px{100, 100}}, func(drawing.Entity) Stroke { return k })
	e := extentOf(c)
	assert.True(t, e.Min.X >= 20 && e.Min.Y >= 20 && e.Max.X <= 180 && e.Max.Y <= 180, "%v", e)
	assert.Zero(t, share(c.Img, 100, 100))
}

// What is marked must differ in shape, since not everyone sees the colour and
// not every screen shows it.
func TestSignsDoNotRelyOnColour(t *testing.T) {
	seat := drawing.Circle{Radius: 4}
	plain := Stroke{Colour: black, Width: ThickLine}
	mono := Palette{Ink: black, Accent: black, Fault: black}
	drawn := map[string]*Canvas{
		"plain":    one(seat, plain, 1),
		"selected": one(seat, mono.Selected(plain), 1),
		"faulty":   one(seat, mono.Faulty(plain), 1),
	}
	for a, x := range drawn {
		for b, y := range drawn {
			if a < b {
				assert.Greater(t, worst(x.Img, y.Img), 0.9, "%s and %s", a, b)
			}
		}
	}
}

func TestPaletteDrawsEveryLayer(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light, "dark": Dark} {
		style := p.Style()
		for _, pen := range drawing.Pens {
			if pen.Layer == drawing.Shade {
				continue // a tint of printed sheets only
			}
			k := style(drawing.Entity{Layer: pen.Layer})
			assert.NotZero(t, k.Colour, "%s %s", name, pen.Layer)
			assert.Equal(t, pen.Width == drawing.ThickLine, k.Width == ThickLine, "%s %s: as heavy as on paper", name, pen.Layer)
			assert.Equal(t, pen.Dash != nil, k.Dash != nil, "%s %s: as broken as on paper", name, pen.Layer)
		}
	}
}

// WCAG 2.2 asks 4.5:1 of text and 3:1 of what a picture cannot do without.
func TestPaletteContrast(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light, "dark": Dark} {
		assert.GreaterOrEqual(t, contrast(p.Ink, p.Paper), 7.0, name+": ink")
		assert.GreaterOrEqual(t, contrast(p.Accent, p.Paper), 4.5, name+": accent")
		assert.GreaterOrEqual(t, contrast(p.Fault, p.Paper), 4.5, name+": fault")
		assert.GreaterOrEqual(t, contrast(p.Faint, p.Paper), 3.0, name+": construction lines")
	}
}

// contrast is the ratio of relative luminances by WCAG 2.2.
func contrast(a, b color.RGBA) float64 {
	lin := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	lum := func(c color.RGBA) float64 { return 0.2126*lin(c.R) + 0.7152*lin(c.G) + 0.0722*lin(c.B) }
	x, y := lum(a)+0.05, lum(b)+0.05
	return max(x, y) / min(x, y)
}

func TestSecondPaintingAsksForNoMemory(t *testing.T) {
	d := sample(9)
	c := New(400, 400)
	style := Light.Style()
	for _, density := range []float64{1, 2} {
		v := Fit(d.Bounds(), 400/density, 400/density, 10).Dense(density)
		paint := func() {
			c.Resize(400, 400)
			c.Clear(Light.Paper)
			Paint(c, d, v, style)
		}
		paint()
		require.LessOrEqual(t, testing.AllocsPerRun(5, paint), 1.0, "no more than the image's own header")
	}
}
