package ink

import (
	"image"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/image/font/sfnt"

	"stopwright/assets/fonts"
	"stopwright/export/drawing"
)

func TestFontIsWhole(t *testing.T) {
	_, err := sfnt.Parse(fonts.Regular)
	require.NoError(t, err)
}

// The font draws a capital H from the base line to the height of a capital.
func TestAlignment(t *testing.T) {
	const size = 30
	width := New(1, 1).TextWidth("H", size)
	for _, tc := range []struct {
		align        drawing.Align
		left, bottom float64 // of the letter's own box
	}{
		{drawing.Left, 100, 100},
		{drawing.Centre, 100 - width/2, 100 + size/2.0},
		{drawing.Right, 100 - width, 100},
		{drawing.Top, 100 - width/2, 100 + size},
		{drawing.Bottom, 100 - width/2, 100},
	} {
		c := New(200, 200)
		c.Text(Px{100, 100}, size, 0, tc.align, "H", black)
		e := extentOf(c)
		middle := float64(e.Min.X+e.Max.X) / 2
		assert.InDelta(t, tc.left+width/2, middle, 1, "alignment %d across: H is symmetrical in its box", tc.align)
		assert.InDelta(t, tc.bottom, float64(e.Max.Y), 1, "alignment %d: foot", tc.align)
		assert.InDelta(t, size, float64(e.Dy()), 1.5, "alignment %d: height of a capital, and the font's own rounding of ends", tc.align)
	}
}

func TestWidthAgreesWithTheSheets(t *testing.T) {
	c := New(1, 1)
	for _, s := range []string{"", "0", "22.5°", "Turntable, underside", "− ± ⌀ ø µ", "\U0001F600"} {
		assert.InDelta(t, drawing.TextWidth(s, 7), c.TextWidth(s, 7), 1e-9, "%q: rounding only", s)
	}
}

func TestSlope(t *testing.T) {
	level, upright := New(120, 120), New(120, 120)
	level.Text(Px{60, 60}, 14, 0, drawing.Left, "R7 a", black)
	upright.Text(Px{60, 60}, 14, 90, drawing.Left, "R7 a", black)
	for y := range 120 {
		for x := range 120 {
			// A place is kept in quarters of a pixel, rounded up on the one side
			// and down on the other.
			assert.InDelta(t, share(level.Img, x, y), share(upright.Img, y, 119-x), 0.35, "%d, %d turned anticlockwise", x, y)
		}
	}
	a, b := measure(level), measure(upright)
	assert.InEpsilon(t, a.area, b.area, 0.01)
	assert.InDelta(t, a.centre.X, 120-b.centre.Y, 0.2)
	assert.InDelta(t, a.centre.Y, b.centre.X, 0.2)

	sloping := New(120, 120)
	sloping.Text(Px{60, 60}, 14, 30, drawing.Left, "R7 a", black)
	m := measure(sloping)
	dx, dy := a.centre.X-60, a.centre.Y-60
	sin, cos := math.Sincos(30 * math.Pi / 180)
	assert.InDelta(t, 60+dx*cos+dy*sin, m.centre.X, 0.3)
	assert.InDelta(t, 60-dx*sin+dy*cos, m.centre.Y, 0.3)
}

// Large letters are filled from their outlines, small ones from a store of
// masks: nothing may change where the one takes over from the other.
func TestLargeAndSmallLettersAgree(t *testing.T) {
	var area [2]float64
	var place [2]Px
	for i, size := range []float64{maxKeptSize, maxKeptSize + 0.01} {
		c := New(400, 200)
		c.Text(Px{20.25, 120}, size, 0, drawing.Left, "Ball 6", black)
		m := measure(c)
		area[i], place[i] = m.area, m.centre
	}
	assert.InEpsilon(t, area[0], area[1], 0.005)
	assert.InDelta(t, place[0].X, place[1].X, 0.2, "a place is kept in quarters of a pixel")
	assert.InDelta(t, place[0].Y, place[1].Y, 0.2)
}

func TestLettersBeyondTheImage(t *testing.T) {
	c := New(100, 100)
	c.Text(Px{50, 50}, 1e7, 0, drawing.Centre, "0", black)
	c.Text(Px{-1e9, 50}, 12, 0, drawing.Left, "0", black)
	assert.Equal(t, image.Rectangle{}, extentOf(c), "inside a nought as large as a town there is nothing")

	c.Text(Px{-20, 50}, 12, 0, drawing.Left, "0123456789", black)
	assert.NotZero(t, extentOf(c).Dx(), "a text that begins outside shows where it comes in")
}

func TestStoreOfMasksIsBounded(t *testing.T) {
	c := New(100, 100)
	for size := 20.0; size < 60; size += 0.125 {
		c.Text(Px{-500, 50}, size, 0, drawing.Left, strings.Repeat("ABCDEFGHIJKLMNOPQRSTUVWXYZ", 2), black)
	}
	for angle := range 360 {
		c.Text(Px{50, 50}, 40, float64(angle), drawing.Centre, "WM8%@", black)
	}
	assert.Less(t, len(c.glyphs.store), 2*maxKeptBytes)
	assert.NotEmpty(t, c.glyphs.masks)
}
