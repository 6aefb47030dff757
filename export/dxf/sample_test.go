package dxf

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// sample holds every shape, every alignment and a layer of each line type.
func sample() drawing.Drawing {
	var d drawing.Drawing
	d.Rect(drawing.Outline, geom.Point{X: -170, Y: -160}, geom.Point{X: 170, Y: 160})
	d.Add(drawing.Pivot, drawing.Circle{Radius: 4})
	d.Add(drawing.Seats, drawing.Circle{Centre: geom.Polar(105, 36), Radius: 2.25})
	d.Add(drawing.Ring, drawing.Circle{Radius: 105})
	d.Add(drawing.Track, drawing.ArcOf(geom.ArcBetween(105, -60, 60)))
	d.Add(drawing.Slots, drawing.Arc{Centre: geom.Point{X: 10, Y: -20}, Radius: 4, Start: 300, Sweep: 180})
	d.Add(drawing.Witness, drawing.Polygon{Points: []geom.Point{{X: 100}, {X: 110, Y: 5}, {X: 110, Y: -5}}})
	d.Add(drawing.Shade, drawing.Polygon{Points: []geom.Point{{X: 1e4}, {X: 1e4, Y: 5}, {Y: -1e4}}})
	for i, a := range []drawing.Align{drawing.Left, drawing.Centre, drawing.Right, drawing.Top, drawing.Bottom} {
		d.Add(drawing.Lettering, drawing.Text{
			At: geom.Point{X: 200, Y: float64(10 * i)}, Size: 3.5, Angle: -90, Align: a,
			Text: "36° ⌀4.5 ±0.1 naïve Ω 𝛼 50% \\U+0041 ^I",
		})
	}
	return d
}

func other() drawing.Drawing {
	var d drawing.Drawing
	d.Add("ODD_LAYER", drawing.Line{B: geom.Point{X: 1}})
	d.Add(drawing.Lettering, drawing.Text{Size: 11, Text: "other"})
	return d
}

func one(l drawing.Layer, s drawing.Shape) (d drawing.Drawing) {
	d.Add(l, s)
	return d
}

func bytesOf(t testing.TB, d drawing.Drawing) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, Write(&b, d))
	return b.Bytes()
}
