package drawing_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

func engraved(x drawing.Text) drawing.Drawing {
	var d drawing.Drawing
	d.Engrave(x)
	return d
}

func TestEngravedLettersStandWhereTheyShould(t *testing.T) {
	const exact = 1e-9 // mm
	for _, c := range []struct {
		why    string
		align  drawing.Align
		angle  float64
		lo, hi geom.Point // of "HH", 6 high, at 100, 50
	}{
		{"from the left", drawing.Left, 0, geom.Point{X: 100, Y: 50}, geom.Point{X: 110, Y: 56}},
		{"to the right", drawing.Right, 0, geom.Point{X: 90, Y: 50}, geom.Point{X: 100, Y: 56}},
		{"in the middle", drawing.Centre, 0, geom.Point{X: 95, Y: 47}, geom.Point{X: 105, Y: 53}},
		{"upwards", drawing.Left, 90, geom.Point{X: 94, Y: 50}, geom.Point{X: 100, Y: 60}},
	} {
		b := engraved(drawing.Text{At: geom.Point{X: 100, Y: 50}, Size: 6, Angle: c.angle, Align: c.align, Text: "hH"}).Bounds()
		assert.InDelta(t, c.lo.X, b.Min.X, exact, c.why)
		assert.InDelta(t, c.lo.Y, b.Min.Y, exact, c.why)
		assert.InDelta(t, c.hi.X, b.Max.X, exact, c.why)
		assert.InDelta(t, c.hi.Y, b.Max.Y, exact, c.why)
	}
	assert.InDelta(t, 10, drawing.StrokeWidth("hH", 6), exact)
}

func TestWhatCannotBeEngravedIsSeen(t *testing.T) {
	same := func(a, b string) {
		t.Helper()
		assert.Equal(t, engraved(drawing.Text{Size: 1, Text: b}), engraved(drawing.Text{Size: 1, Text: a}), "%q as %q", a, b)
	}
	same("5 sides", "5 SIDES")
	same("größe", "GRÖSSE")
	same("−30", "-30")
	same("café", "CAFE")
	same("漢", "?")
	same("a\n\tb", "A B")
	assert.Empty(t, engraved(drawing.Text{Size: 1, Text: " "}).Entities)
}

// TestEngravedLettersKeepApart: no two characters touch, and the width is that
// of the strokes.
func TestEngravedLettersKeepApart(t *testing.T) {
	letters := strings.Split("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-+.,:/()°'", "")
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.SampledFrom(letters).Draw(t, "a"), rapid.SampledFrom(letters).Draw(t, "b")
		both := engraved(drawing.Text{Size: 6, Text: a + b})
		n := len(engraved(drawing.Text{Size: 6, Text: a}).Entities)
		first, second := drawing.Drawing{Entities: both.Entities[:n]}.Bounds(), drawing.Drawing{Entities: both.Entities[n:]}.Bounds()
		assert.Greater(t, second.Min.X, first.Max.X+1, "%s%s", a, b)
		assert.LessOrEqual(t, second.Max.X, drawing.StrokeWidth(a+b, 6)+1e-9)
	})
}
