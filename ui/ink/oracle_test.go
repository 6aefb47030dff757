package ink

import (
	"fmt"
	"image"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"golang.org/x/image/vector"
	"pgregory.net/rapid"
)

// exactly fills closed outlines with the exact-area rasteriser of another
// library: the oracle for every smoothed edge.
func exactly(width, height int, outlines ...[]Px) *image.RGBA {
	z := vector.NewRasterizer(width, height)
	for _, o := range outlines {
		for i, p := range o {
			if i == 0 {
				z.MoveTo(float32(p.X), float32(p.Y))
			} else {
				z.LineTo(float32(p.X), float32(p.Y))
			}
		}
		z.ClosePath()
	}
	im := image.NewRGBA(image.Rect(0, 0, width, height))
	z.Draw(im, im.Rect, image.NewUniform(black), image.Point{})
	return im
}

// around returns part of a circle as corners, from one draughting angle to
// another, close enough that the chords stray by under 0.001 px at 100 px.
func around(o Px, r, from, to float64) []Px {
	const n = 1000
	var out []Px
	for i := range n + 1 {
		a := (from + (to-from)*float64(i)/n) * (math.Pi / 180)
		out = append(out, Px{o.X + r*math.Cos(a), o.Y - r*math.Sin(a)})
	}
	return out
}

func TestShapesAgainstExactAreas(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		place := rapid.Float64Range(35, 65)
		o := Px{place.Draw(t, "x"), place.Draw(t, "y")}
		r := rapid.Float64Range(3, 30).Draw(t, "r")
		w := rapid.Float64Range(1, 3).Draw(t, "w")
		start := rapid.Float64Range(0, 360).Draw(t, "start")
		sweep := rapid.Float64Range(20, 340).Draw(t, "sweep")
		p := Px{place.Draw(t, "x2"), place.Draw(t, "y2")}

		c := New(100, 100)
		c.Disc(o, r, black)
		assert.LessOrEqual(t, worst(c.Img, exactly(100, 100, around(o, r, 0, 360))), edgeTolerance, "disc")

		c = New(100, 100)
		c.Circle(o, r, w, black, nil)
		ring := exactly(100, 100, around(o, r+w/2, 0, 360), around(o, r-w/2, 360, 0))
		assert.LessOrEqual(t, worst(c.Img, ring), 2*edgeTolerance, "circle: two edges")

		c = New(100, 100)
		c.Arc(o, r, start, sweep, w, black, nil)
		arc := exactly(100, 100, append(around(o, r+w/2, start, start+sweep), around(o, r-w/2, start+sweep, start)...))
		assert.LessOrEqual(t, worst(c.Img, arc), 3*edgeTolerance, "arc: two edges and an end")

		length := math.Hypot(p.X-o.X, p.Y-o.Y)
		if length < 2 {
			return
		}
		c = New(100, 100)
		c.Line(o, p, w, black, nil)
		n := Px{(p.Y - o.Y) / length * w / 2, -(p.X - o.X) / length * w / 2}
		line := exactly(100, 100, []Px{{o.X + n.X, o.Y + n.Y}, {p.X + n.X, p.Y + n.Y}, {p.X - n.X, p.Y - n.Y}, {o.X - n.X, o.Y - n.Y}})
		assert.LessOrEqual(t, worst(c.Img, line), 3*edgeTolerance, "line: two edges and an end")
	})
}

func TestHugeCircleIsAStraightLine(t *testing.T) {
	// A plate zoomed in until its radius is 1e9 px: its edge bends by 1e-6 px
	// over the image.
	const r = 1e9
	for _, x := range []float64{50, 50.3, 49.75} {
		t.Run(fmt.Sprint(x), func(t *testing.T) {
			a, b := New(100, 100), New(100, 100)
			a.Circle(Px{x - r, 50}, r, 1.8, black, nil)
			b.Line(Px{x, -10}, Px{x, 110}, 1.8, black, nil)
			assert.LessOrEqual(t, worst(a.Img, b.Img), 1.0/255, "circle")

			a = New(100, 100)
			a.Arc(Px{x - r, 50}, r, 350, 20, 1.8, black, nil)
			assert.LessOrEqual(t, worst(a.Img, b.Img), 1.0/255, "arc")

			a, b = New(100, 100), New(100, 100)
			a.Disc(Px{x - r, 50}, r, black)
			b.Fill(Px{-10, -10}, Px{x, 110}, black)
			assert.LessOrEqual(t, worst(a.Img, b.Img), 1.0/255, "disc")
		})
	}
}
