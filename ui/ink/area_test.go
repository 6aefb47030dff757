package ink

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func sameArea(t assert.TestingT, want, got float64, name string) {
	assert.InDelta(t, want, got, strokeTolerance*want+strokeSlack, name)
}

func TestInkedAreas(t *testing.T) {
	o := Px{400.3, 399.8}
	for _, r := range []float64{2.25, 5, 20.4, 350} {
		c := New(800, 800)
		c.Disc(o, r, black)
		m := measure(c)
		assert.InEpsilon(t, math.Pi*r*r, m.area, areaTolerance, "disc of radius %v", r)
		assert.InDelta(t, o.X, m.centre.X, placeTolerance, "disc of radius %v", r)
		assert.InDelta(t, o.Y, m.centre.Y, placeTolerance, "disc of radius %v", r)

		for _, w := range []float64{0.4, 1, 1.8, 4} {
			name := fmt.Sprintf("radius %v, width %v", r, w)
			c = New(800, 800)
			c.Circle(o, r, w, black, nil)
			sameArea(t, 2*math.Pi*r*w, measure(c).area, "circle of "+name)

			c = New(800, 800)
			c.Arc(o, r, 37, 200, w, black, nil)
			sameArea(t, 2*math.Pi*r*w*200/360, measure(c).area, "arc of "+name)

			c = New(800, 800)
			c.Line(o, Px{o.X + 17*r/20, o.Y - 9*r/20}, w, black, nil)
			sameArea(t, r*math.Hypot(17, 9)/20*w, measure(c).area, "line of "+name)
		}
	}
}

// A dot smaller than a pixel is a thin grey one, whose weight depends a little
// on where it falls; on average over all places it must be right.
func TestTinyDiscsKeepTheirWeight(t *testing.T) {
	const steps = 8
	for _, r := range []float64{0.1, 0.3, 0.5, 0.6, 1, 1.4} {
		var sum float64
		for i := range steps * steps {
			c := New(10, 10)
			c.Disc(Px{5 + float64(i%steps)/steps, 5 + float64(i/steps)/steps}, r, black)
			sum += measure(c).area
		}
		assert.InEpsilon(t, math.Pi*r*r, sum/(steps*steps), 0.05, "radius %v: the smallest covers at most 8 in 256 of a pixel, rounded by up to a half", r)
	}
}

func TestAreaAndPlaceDoNotDependOnTheGrid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		unit := rapid.Float64Range(0, 1)
		o := Px{30 + unit.Draw(t, "x"), 30 + unit.Draw(t, "y")}
		for name, draw := range map[string]func(*Canvas, Px){
			"disc":   func(c *Canvas, p Px) { c.Disc(p, 11.3, black) },
			"circle": func(c *Canvas, p Px) { c.Circle(p, 11.3, 1.8, black, nil) },
			"line":   func(c *Canvas, p Px) { c.Line(Px{p.X - 13, p.Y - 7}, Px{p.X + 13, p.Y + 7}, 1.8, black, nil) },
			"fill":   func(c *Canvas, p Px) { c.Fill(Px{p.X - 13.2, p.Y - 7.6}, Px{p.X + 13.2, p.Y + 7.6}, black) },
		} {
			still, moved := New(60, 60), New(60, 60)
			draw(still, Px{30, 30})
			draw(moved, o)
			a, b := measure(still), measure(moved)
			sameArea(t, a.area, b.area, name)
			assert.InDelta(t, o.X, b.centre.X, placeTolerance, name)
			assert.InDelta(t, o.Y, b.centre.Y, placeTolerance, name)
		}
	})
}

func TestMirrored(t *testing.T) {
	// Each shape and the same one mirrored in the middle of the image.
	flip := func(p Px) Px { return Px{100 - p.X, p.Y} }
	a, b := Px{31.2, 40.7}, Px{66.4, 71.1}
	for name, draw := range map[string][2]func(*Canvas){
		"disc":   {func(c *Canvas) { c.Disc(a, 9.7, black) }, func(c *Canvas) { c.Disc(flip(a), 9.7, black) }},
		"circle": {func(c *Canvas) { c.Circle(a, 9.7, 1.8, black, nil) }, func(c *Canvas) { c.Circle(flip(a), 9.7, 1.8, black, nil) }},
		"line":   {func(c *Canvas) { c.Line(a, b, 1.8, black, nil) }, func(c *Canvas) { c.Line(flip(b), flip(a), 1.8, black, nil) }},
		"arc":    {func(c *Canvas) { c.Arc(a, 20, 10, 100, 1.8, black, nil) }, func(c *Canvas) { c.Arc(flip(a), 20, 70, 100, 1.8, black, nil) }},
		"dashed": {func(c *Canvas) { c.Arc(a, 20, 10, 100, 1.8, black, []float64{4, 3}) }, func(c *Canvas) { c.Arc(flip(a), 20, 70, 100, 1.8, black, []float64{4, 3}) }},
	} {
		t.Run(name, func(t *testing.T) {
			one, other := New(100, 100), New(100, 100)
			draw[0](one)
			draw[1](other)
			for y := range 100 {
				for x := range 100 {
					assert.InDelta(t, share(one.Img, x, y), share(other.Img, 99-x, y), 1.01/255, "pixel %d, %d: at most a rounding apart", x, y)
				}
			}
		})
	}
}
