package ink

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestClearAndFill(t *testing.T) {
	c := New(31, 17)
	c.Clear(Light.Paper)
	for y := range 17 {
		for x := range 31 {
			assert.Equal(t, Light.Paper, c.Img.RGBAAt(x, y))
		}
	}

	for _, r := range []struct {
		why  string
		p, q Px
		area float64
	}{
		{"whole pixels", Px{3, 4}, Px{10, 9}, 35},
		{"parts of pixels", Px{3.25, 4.5}, Px{10.75, 9.25}, 7.5 * 4.75},
		{"corners the other way round", Px{10.75, 4.5}, Px{3.25, 9.25}, 7.5 * 4.75},
		{"within one pixel", Px{3.25, 4.25}, Px{3.75, 4.75}, 0.25},
		{"narrower than a pixel, over two", Px{3.75, 4}, Px{4.25, 10}, 3},
		{"partly outside", Px{-5, -5}, Px{2, 2}, 4},
	} {
		c = New(31, 17)
		c.Fill(r.p, r.q, black)
		assert.InDelta(t, r.area, measure(c).area, r.area*0.01+0.01, r.why)
	}
}

func TestResizeKeepsMemory(t *testing.T) {
	c := New(100, 100)
	pix := &c.Img.Pix[0]
	c.Resize(40, 60)
	assert.Equal(t, 40*60*4, len(c.Img.Pix))
	assert.Equal(t, 160, c.Img.Stride, "rows follow one another")
	assert.Same(t, pix, &c.Img.Pix[0], "smaller: the same memory")
	c.Resize(100, 100)
	assert.Same(t, pix, &c.Img.Pix[0], "back again: the same memory")
	c.Resize(101, 100)
	assert.NotSame(t, pix, &c.Img.Pix[0])
	assert.Equal(t, 101, c.Img.Rect.Dx())
}

func TestPolygon(t *testing.T) {
	c := New(50, 50)
	c.Polygon([]Px{{10, 10}, {40, 10}, {10, 40}}, black)
	assert.InEpsilon(t, 450, measure(c).area, areaTolerance, "half of 30 by 30")

	c = New(50, 50)
	c.Polygon([]Px{{10, 40}, {40, 10}, {10, 10}}, black)
	assert.InEpsilon(t, 450, measure(c).area, areaTolerance, "the other way round")

	c = New(50, 50)
	c.Polygon([]Px{{-1e9, -1e9}, {1e9, -1e9}, {1e9, 1e9}, {-1e9, 1e9}}, black)
	assert.InEpsilon(t, 2500, measure(c).area, areaTolerance, "all round the image")

	c = New(50, 50)
	c.Polygon([]Px{{-1e9, 25}, {1e9, 25}, {1e9, 1e9}, {-1e9, 1e9}}, black)
	assert.InEpsilon(t, 1250, measure(c).area, areaTolerance, "half the image")
}
