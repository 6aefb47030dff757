package drawing_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

var window = drawing.Bounds{Min: geom.Point{X: -10, Y: -5}, Max: geom.Point{X: 10, Y: 5}}

func clipped(s drawing.Shape) []drawing.Shape {
	var d drawing.Drawing
	d.AddItem(drawing.Seats, s, drawing.Item{Kind: drawing.SeatItem, Index: 3})
	var out []drawing.Shape
	for _, e := range d.Clip(window).Entities {
		out = append(out, e.Shape)
	}
	return out
}

func TestClip(t *testing.T) {
	p := func(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }
	for _, c := range []struct {
		why  string
		in   drawing.Shape
		want []drawing.Shape
	}{
		{"a line within stays", drawing.Line{A: p(-1, 0), B: p(3, 2)}, []drawing.Shape{drawing.Line{A: p(-1, 0), B: p(3, 2)}}},
		{"a line across is cut at both sides", drawing.Line{A: p(-20, 0), B: p(20, 0)}, []drawing.Shape{drawing.Line{A: p(-10, 0), B: p(10, 0)}}},
		{"a line on the edge stays", drawing.Line{A: p(-20, 5), B: p(0, 5)}, []drawing.Shape{drawing.Line{A: p(-10, 5), B: p(0, 5)}}},
		{"a line beside the edge goes", drawing.Line{A: p(-20, 5.001), B: p(20, 5.001)}, nil},
		{"a line past the corner goes", drawing.Line{A: p(8, 8), B: p(14, 2)}, nil},
		{"a circle within stays one", drawing.Circle{Centre: p(2, 1), Radius: 3}, []drawing.Shape{drawing.Circle{Centre: p(2, 1), Radius: 3}}},
		{"a circle that touches stays one", drawing.Circle{Radius: 5}, []drawing.Shape{drawing.Circle{Radius: 5}}},
		{"a circle that touches from outside goes", drawing.Circle{Centre: p(15, 0), Radius: 5}, nil},
		{"a circle that touches a corner from outside goes", drawing.Circle{Centre: p(13, 9), Radius: 5}, nil},
		{"an arc whose middle touches from outside goes", drawing.Arc{Centre: p(0, -9), Radius: 4, Start: 30, Sweep: 120}, nil},
		{"an arc whose middle touches from within stays", drawing.Arc{Centre: p(0, 1), Radius: 4, Start: 30, Sweep: 120}, []drawing.Shape{drawing.Arc{Centre: p(0, 1), Radius: 4, Start: 30, Sweep: 120}}},
		{"a circle round it goes", drawing.Circle{Radius: 30}, nil},
		{"half a circle", drawing.Circle{Centre: p(0, 5), Radius: 4}, []drawing.Shape{drawing.Arc{Centre: p(0, 5), Radius: 4, Start: 180, Sweep: 180}}},
		{"the half over the circle's beginning is one piece", drawing.Circle{Centre: p(-10, 0), Radius: 4}, []drawing.Shape{drawing.Arc{Centre: p(-10, 0), Radius: 4, Start: 270, Sweep: 180}}},
		{"an arc in two", drawing.Arc{Centre: p(0, 5), Radius: 4, Start: 170, Sweep: 370 - 20}, []drawing.Shape{drawing.Arc{Centre: p(0, 5), Radius: 4, Start: 180, Sweep: 180}}},
		{"a figure loses its corner", drawing.Polygon{Points: []geom.Point{p(0, 0), p(20, 0), p(0, 4)}}, []drawing.Shape{drawing.Polygon{Points: []geom.Point{p(0, 0), p(10, 0), p(10, 2), p(0, 4)}}}},
		{"a figure outside goes", drawing.Polygon{Points: []geom.Point{p(20, 20), p(30, 20), p(20, 30)}}, nil},
		{"a text whose middle is within stays", drawing.Text{At: p(9.9, 0), Size: 1, Align: drawing.Centre, Text: "AAAA"}, []drawing.Shape{drawing.Text{At: p(9.9, 0), Size: 1, Align: drawing.Centre, Text: "AAAA"}}},
		{"a text whose middle is not goes", drawing.Text{At: p(9.9, 0), Size: 1, Text: "AAAA"}, nil},
	} {
		got := clipped(c.in)
		require.Len(t, got, len(c.want), c.why)
		for i := range got {
			assert.Equal(t, rounded(c.want[i]), rounded(got[i]), c.why)
		}
	}
	var d drawing.Drawing
	d.AddItem(drawing.Seats, drawing.Circle{Radius: 1}, drawing.Item{Kind: drawing.SeatItem, Index: 3})
	assert.Equal(t, d, d.Clip(window), "layer and item stay")
}

// rounded takes what rounding leaves out of an arc's angles, degrees.
func rounded(s drawing.Shape) drawing.Shape {
	const grain = 1e9
	if a, ok := s.(drawing.Arc); ok {
		a.Start, a.Sweep = math.Round(a.Start*grain)/grain, math.Round(a.Sweep*grain)/grain
		return a
	}
	return s
}

// TestClippedArcsKeepWhatLiesWithin compares the length of what is kept with
// that of many short pieces, counted where their middle is within.
func TestClippedArcsKeepWhatLiesWithin(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawing.Arc{
			Centre: geom.Point{X: rapid.Float64Range(-15, 15).Draw(t, "x"), Y: rapid.Float64Range(-15, 15).Draw(t, "y")},
			Radius: rapid.Float64Range(0.5, 30).Draw(t, "r"), Start: rapid.Float64Range(0, 359.9).Draw(t, "start"), Sweep: rapid.Float64Range(0.5, 359.9).Draw(t, "sweep"),
		}
		whole := rapid.Bool().Draw(t, "circle")
		var got float64
		shape := drawing.Shape(a)
		if whole {
			shape, a.Start, a.Sweep = drawing.Circle{Centre: a.Centre, Radius: a.Radius}, 0, 360
		}
		for _, s := range clipped(shape) {
			switch s := s.(type) {
			case drawing.Arc:
				assert.GreaterOrEqual(t, s.Start, 0.0)
				assert.Less(t, s.Start, 360.0)
				got += s.Sweep
			case drawing.Circle:
				got += 360
			}
		}
		const pieces = 7200
		var want float64
		for i := range pieces {
			s, c := math.Sincos((a.Start + a.Sweep*(float64(i)+0.5)/pieces) * math.Pi / 180)
			if window.Contains(a.Centre.Add(geom.Point{X: a.Radius * c, Y: a.Radius * s})) {
				want += a.Sweep / pieces
			}
		}
		// A piece at each of up to eight crossings may be counted wrongly, and at
		// a touch a few.
		assert.InDelta(t, want, got, 12*a.Sweep/pieces+0.5)
	})
}
