package dxf

import (
	"encoding/json"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/export/internal/oracle"
)

// sameMM is how near (mm) a coordinate must come back: what a drawing promises,
// and 1000 times the rounding of the file.
const sameMM = 1e-6

// sameDegrees is sameMM at the rim of the largest part, radius 5 m.
const sameDegrees = 1e-8

// seen is what the independent reader makes of a file: see testdata/read.py.
type seen struct {
	Header   map[string]string
	Min, Max [2]float64
	View     [3]float64
	Space    string
	Layers   []struct {
		Name   string
		Colour int
		Line   string
		Weight int
		Dash   []float64
	}
	Entities []struct {
		Kind, Layer, Owner, Text, Align string
		Points                          [][2]float64
		Radius                          float64
		Angles                          []float64
		Closed                          bool
	}
	Errors, Fixes []string
}

func readBack(t *testing.T, d drawing.Drawing) seen {
	t.Helper()
	python := oracle.Need(t, oracle.EzDXF)
	path := filepath.Join(t.TempDir(), "drawing.dxf")
	require.NoError(t, os.WriteFile(path, bytesOf(t, d), 0o600))
	cmd := exec.Command(python, filepath.Join("testdata", "read.py"), path)
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	require.NoError(t, err)
	var s seen
	require.NoError(t, json.Unmarshal(out, &s))
	return s
}

func TestReaderFindsNothingToMend(t *testing.T) {
	for name, d := range map[string]drawing.Drawing{
		"every shape": sample(), "no entity": {}, "a layer of its own": other(),
	} {
		t.Run(name, func(t *testing.T) {
			s := readBack(t, d)
			assert.Empty(t, s.Errors)
			assert.Empty(t, s.Fixes)
		})
	}
}

func TestReaderFindsMillimetres(t *testing.T) {
	s := readBack(t, sample())
	assert.Equal(t, map[string]string{
		"$ACADVER": "AC1015", "$DWGCODEPAGE": "ANSI_1252",
		"$INSUNITS": "4", "$MEASUREMENT": "1", "$LUNITS": "2",
	}, s.Header)
	assert.Equal(t, [2]float64{-170, -160}, s.Min, "the plate's own corner: neither shade nor lettering count")
	assert.Equal(t, [2]float64{170, 160}, s.Max)
	assert.InDeltaSlice(t, []float64{0, 0, 320 * viewMargin}, s.View[:], sameMM, "the window opens on the whole plate")
}

func TestReaderFindsAnEmptyDrawingAtTheOrigin(t *testing.T) {
	s := readBack(t, drawing.Drawing{})
	assert.Empty(t, s.Entities)
	assert.Equal(t, [2]float64{}, s.Min)
	assert.Equal(t, [2]float64{}, s.Max)
	assert.Positive(t, s.View[2], "a window of no height shows nothing in some readers")
}

func TestReaderFindsEveryLayer(t *testing.T) {
	s := readBack(t, other())
	want := []string{"0"}
	for _, p := range drawing.Pens {
		if p.Layer != drawing.Shade {
			want = append(want, string(p.Layer))
		}
	}
	var got []string
	for _, l := range s.Layers {
		got = append(got, l.Name)
		p := drawing.PenOf(drawing.Layer(l.Name))
		assert.Equal(t, p.Colour, l.Colour, l.Name)
		assert.Equal(t, int(math.Round(100*p.Width)), l.Weight, "%s: hundredths of a mm", l.Name)
		require.Len(t, l.Dash, len(p.Dash), l.Name)
		for i, v := range l.Dash {
			assert.InDelta(t, p.Dash[i], math.Abs(v), sameMM, "%s: dashes are mm", l.Name)
			assert.Equal(t, i%2 == 1, v < 0, "%s: gaps are negative", l.Name)
		}
	}
	assert.Equal(t, append(want, "ODD_LAYER"), got, "all layers, used or not, in the pens' order")
}

func TestReaderFindsEveryShape(t *testing.T) {
	d := sample()
	s := readBack(t, d)
	asked := written(d).Entities
	require.Len(t, s.Entities, len(asked))
	for i, e := range asked {
		got := s.Entities[i]
		assert.Equal(t, string(e.Layer), got.Layer, "entity %d", i)
		assert.Equal(t, s.Space, got.Owner, "entity %d belongs to the model space", i)
		switch w := e.Shape.(type) {
		case drawing.Line:
			assert.Equal(t, "LINE", got.Kind)
			samePoints(t, got.Points, w.A, w.B)
		case drawing.Circle:
			assert.Equal(t, "CIRCLE", got.Kind)
			samePoints(t, got.Points, w.Centre)
			assert.InDelta(t, w.Radius, got.Radius, sameMM)
		case drawing.Arc:
			assert.Equal(t, "ARC", got.Kind)
			first, last := w.Ends()
			samePoints(t, got.Points, w.Centre, first, last)
			assert.InDelta(t, w.Radius, got.Radius, sameMM)
			turned := math.Mod(got.Angles[1]-got.Angles[0]+360, 360)
			assert.InDelta(t, w.Sweep, turned, sameDegrees, "anticlockwise from start to end")
		case drawing.Polygon:
			assert.Equal(t, "LWPOLYLINE", got.Kind)
			assert.True(t, got.Closed)
			samePoints(t, got.Points, w.Points...)
		case drawing.Text:
			assert.Equal(t, "TEXT", got.Kind)
			samePoints(t, got.Points, w.At)
			assert.InDelta(t, w.Size, got.Radius, sameMM)
			assert.InDelta(t, 270, got.Angles[0], sameDegrees, "-90 degrees is 270")
			assert.Equal(t, "36° Ø4.5 ±0.1 naïve Ω 𝛼 50% \\U+0041 ^I", got.Text,
				"this reader shows the diameter sign as its own letter")
			assert.Equal(t, alignNames[w.Align], got.Align)
		}
	}
}

// alignNames are the reader's words for the alignments.
var alignNames = map[drawing.Align]string{
	drawing.Left: "LEFT", drawing.Centre: "MIDDLE_CENTER", drawing.Right: "RIGHT",
	drawing.Top: "TOP_CENTER", drawing.Bottom: "CENTER",
}

func samePoints(t *testing.T, got [][2]float64, want ...geom.Point) {
	t.Helper()
	require.Len(t, got, len(want))
	for i, p := range want {
		assert.InDelta(t, p.X, got[i][0], sameMM)
		assert.InDelta(t, p.Y, got[i][1], sameMM)
	}
}
