package pdf_test

import (
	"bytes"
	"errors"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/export/pdf"
)

// a4 is a page with one shape on it.
func a4(l drawing.Layer, shapes ...drawing.Shape) drawing.Page {
	p := drawing.Page{Width: 210, Height: 297}
	for _, s := range shapes {
		p.Add(l, s)
	}
	return p
}

func written(t testing.TB, meta pdf.Meta, pages ...drawing.Page) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, pages, meta))
	return b.Bytes()
}

func TestBytesRepeat(t *testing.T) {
	page := a4(drawing.Lettering, drawing.Text{At: geom.Point{X: 20, Y: 20}, Size: 3, Text: "Größe ⌀4.5 → 36°"}, drawing.Circle{Centre: geom.Point{X: 90, Y: 90}, Radius: 40})
	want := written(t, pdf.Meta{Title: "a"}, page, page)
	for range 5 {
		require.True(t, bytes.Equal(want, written(t, pdf.Meta{Title: "a"}, page, page)))
	}
	dated := written(t, pdf.Meta{Title: "a", Date: time.Date(2026, 11, 20, 8, 0, 0, 0, time.UTC)}, page, page)
	assert.False(t, bytes.Equal(want, dated), "a given date is in the file")
}

func TestWhatIsNoNumberIsRefused(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	at := geom.Point{X: 10, Y: 10}
	for _, c := range []struct {
		why   string
		shape drawing.Shape
	}{
		{"a line to nowhere", drawing.Line{A: at, B: geom.Point{X: nan}}},
		{"a line to infinity", drawing.Line{A: geom.Point{Y: -inf}, B: at}},
		{"a circle of no size", drawing.Circle{Centre: at}},
		{"a circle of no number", drawing.Circle{Centre: at, Radius: nan}},
		{"a circle less than nothing", drawing.Circle{Centre: at, Radius: -1}},
		{"an arc without end", drawing.Arc{Centre: at, Radius: 1, Sweep: inf}},
		{"an arc that is a circle", drawing.Arc{Centre: at, Radius: 1, Sweep: 360}},
		{"an arc from nowhere", drawing.Arc{Centre: at, Radius: 1, Start: nan, Sweep: 90}},
		{"a figure of two corners", drawing.Polygon{Points: []geom.Point{at, at}}},
		{"a figure with a corner nowhere", drawing.Polygon{Points: []geom.Point{at, at, {X: inf}}}},
		{"letters of no size", drawing.Text{At: at, Text: "a"}},
		{"letters turned by no number", drawing.Text{At: at, Size: 1, Angle: nan, Text: "a"}},
		{"no shape", nil},
	} {
		var b bytes.Buffer
		err := pdf.Write(&b, []drawing.Page{a4(drawing.Outline, drawing.Line{B: at}), a4(drawing.Outline, c.shape)}, pdf.Meta{})
		require.Error(t, err, c.why)
		assert.Contains(t, err.Error(), "page 2", c.why)
		assert.Zero(t, b.Len(), "nothing is written: %s", c.why)
	}
	require.Error(t, pdf.Write(&bytes.Buffer{}, nil, pdf.Meta{}), "no page")
	for _, size := range [][2]float64{{0, 297}, {210, -1}, {nan, 297}, {210, inf}} {
		require.Error(t, pdf.Write(&bytes.Buffer{}, []drawing.Page{{Width: size[0], Height: size[1]}}, pdf.Meta{}), "paper of %v", size)
	}
}

type full struct{}

var errFull = errors.New("disk full")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestAFullDiskIsReported(t *testing.T) {
	require.ErrorIs(t, pdf.Write(full{}, []drawing.Page{a4(drawing.Outline)}, pdf.Meta{}), errFull)
}
