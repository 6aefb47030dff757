package ink

import (
	"image"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stopwright/export/drawing"
)

// anything draws ordinary, huge and impossible numbers.
func anything() *rapid.Generator[float64] {
	return rapid.OneOf(
		rapid.Float64Range(-50, 150),
		rapid.Float64Range(-1e10, 1e10),
		rapid.Float64(),
		rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64, -math.MaxFloat64, 5e-324}),
	)
}

// shapes draws one of each shape from the numbers given.
func shapes(c *Canvas, v []float64) {
	strokes(c, v)
	letters(c, v)
}

// strokes draws those of the shapes that are reckoned pixel by pixel.
func strokes(c *Canvas, v []float64) {
	p, q := Px{v[0], v[1]}, Px{v[2], v[3]}
	dash := []float64{v[8], v[9], v[8]}
	h := Hatch{Depth: v[7], Spacing: v[8], Width: v[9], Colour: black}
	c.Fill(p, q, black)
	c.Line(p, q, v[4], black, nil)
	c.Line(p, q, v[4], black, dash)
	c.Disc(p, v[5], black)
	c.Circle(p, v[5], v[4], black, nil)
	c.Circle(p, v[5], v[4], black, dash)
	c.Arc(p, v[5], v[2], v[6], v[4], black, nil)
	c.Arc(p, v[5], v[2], v[6], v[4], black, dash)
	c.HatchCircle(p, v[5], h)
	c.HatchArc(p, v[5], v[2], v[6], h)
	c.HatchLine(p, q, h)
}

// letters draws text, which is filled like a polygon.
func letters(c *Canvas, v []float64) {
	c.Text(Px{v[0], v[1]}, v[5], v[6], drawing.Centre, "Ø 4.5", black)
}

// Every shape must come back whatever the numbers, and soon: a loop as long as a
// line of 1e9 px would outlast the test's time.
func TestAnyNumbersAreBorne(t *testing.T) {
	c := New(100, 80)
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.SliceOfN(anything(), 10, 10).Draw(t, "numbers")
		shapes(c, v)
		c.Polygon([]Px{{v[0], v[1]}, {v[2], v[3]}, {v[4], v[5]}, {v[6], v[7]}}, black)
	})
}

// What is seen through a part of an image is what is there when it is whole, and
// nothing is drawn beside it.
func TestPartOfAnImage(t *testing.T) {
	seen := func(t *rapid.T, tolerance float64, draw func(*Canvas)) {
		part := image.Rect(20, 30, 70, 60)
		whole, other := New(100, 80), New(100, 80)
		draw(whole)
		draw(&Canvas{Img: other.Img.SubImage(part).(*image.RGBA)})
		for y := range 80 {
			for x := range 100 {
				if image.Pt(x, y).In(part) {
					assert.InDelta(t, share(whole.Img, x, y), share(other.Img, x, y), tolerance, "inside, %d %d", x, y)
				} else {
					assert.Zero(t, share(other.Img, x, y), "outside, %d %d", x, y)
				}
			}
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.SliceOfN(rapid.Float64Range(-20, 120), 10, 10).Draw(t, "numbers")
		seen(t, 1.01/255, func(c *Canvas) { strokes(c, v) })
		// The rasteriser carries a side's slope in 512ths of a pixel a row, so
		// over 80 rows a side strays by up to 80/1024, and a pixel may hold two.
		seen(t, 0.16, func(c *Canvas) { letters(c, v) })
		seen(t, 0.16, func(c *Canvas) {
			c.Polygon([]Px{{v[0], v[1]}, {v[2], v[3]}, {v[4], v[5]}, {v[6], v[7]}}, black)
		})
	})
}

func TestNothingToDraw(t *testing.T) {
	o := Px{50, 40}
	for name, draw := range map[string]func(*Canvas){
		"line of no length":     func(c *Canvas) { c.Line(o, o, 2, black, nil) },
		"line of no width":      func(c *Canvas) { c.Line(o, Px{60, 40}, 0, black, nil) },
		"line of less than no":  func(c *Canvas) { c.Line(o, Px{60, 40}, -2, black, nil) },
		"disc of no radius":     func(c *Canvas) { c.Disc(o, 0, black) },
		"circle of no radius":   func(c *Canvas) { c.Circle(o, 0, 2, black, nil) },
		"circle of no width":    func(c *Canvas) { c.Circle(o, 10, 0, black, nil) },
		"arc of no sweep":       func(c *Canvas) { c.Arc(o, 10, 30, 0, 2, black, nil) },
		"arc the wrong way":     func(c *Canvas) { c.Arc(o, 10, 30, -20, 2, black, nil) },
		"polygon of no corner":  func(c *Canvas) { c.Polygon(nil, black) },
		"polygon of two":        func(c *Canvas) { c.Polygon([]Px{o, {60, 60}}, black) },
		"text of no letter":     func(c *Canvas) { c.Text(o, 12, 0, drawing.Left, "", black) },
		"text of no size":       func(c *Canvas) { c.Text(o, 0, 0, drawing.Left, "12", black) },
		"hatch of no depth":     func(c *Canvas) { c.HatchCircle(o, 20, Hatch{Spacing: 4, Width: 1, Colour: black}) },
		"hatch without a blank": func(c *Canvas) { c.HatchCircle(o, 20, Hatch{Depth: 4, Spacing: 1, Width: 1, Colour: black}) },
		"in no colour":          func(c *Canvas) { c.Disc(o, 20, Palette{}.Ink); c.Fill(o, Px{60, 60}, Palette{}.Ink) },
	} {
		t.Run(name, func(t *testing.T) {
			c := New(100, 80)
			draw(c)
			for _, v := range c.Img.Pix {
				if v != 0 {
					t.Fatal("something was inked")
				}
			}
		})
	}
	for _, size := range [][2]int{{0, 0}, {0, 10}, {10, 0}, {-3, 5}} {
		c := New(size[0], size[1])
		c.Clear(black)
		shapes(c, []float64{1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
		assert.True(t, c.Img.Rect.Empty())
	}
}
