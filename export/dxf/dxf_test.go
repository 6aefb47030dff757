package dxf

import (
	"bytes"
	"errors"
	"flag"
	"math"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

var update = flag.Bool("update", false, "write the golden files anew")

func TestGolden(t *testing.T) {
	var d drawing.Drawing
	d.Add(drawing.Outline, drawing.Circle{Radius: 130})
	d.Add(drawing.Seats, drawing.Circle{Centre: geom.Polar(105, 30), Radius: 2.25})
	d.Add(drawing.Track, drawing.Arc{Radius: 105, Start: 30, Sweep: 120})
	d.Add(drawing.Centres, drawing.Line{A: geom.Point{X: -3}, B: geom.Point{X: 3}})
	d.Add(drawing.Lettering, drawing.Text{At: geom.Point{Y: 20}, Size: 3.5, Align: drawing.Centre, Text: "36°"})
	path := filepath.Join("testdata", "small.dxf")
	got := bytesOf(t, d)
	if *update {
		require.NoError(t, os.WriteFile(path, got, 0o600))
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, string(want), string(got))
}

func TestAnotherDrawingChangesNothing(t *testing.T) {
	a := bytesOf(t, sample())
	b := bytesOf(t, other())
	assert.NotEqual(t, a, b)
	assert.Equal(t, a, bytesOf(t, sample()), "as before the other was written")
	assert.Equal(t, b, bytesOf(t, other()))
}

func TestDrawingsWrittenAtOnceDoNotMix(t *testing.T) {
	want := [2][]byte{bytesOf(t, sample()), bytesOf(t, other())}
	var wg sync.WaitGroup
	const writers = 16
	var got [writers]bytes.Buffer
	for i := range writers {
		wg.Go(func() {
			d := sample()
			if i%2 == 1 {
				d = other()
			}
			assert.NoError(t, Write(&got[i], d))
		})
	}
	wg.Wait()
	for i := range writers {
		assert.Equal(t, want[i%2], got[i].Bytes(), "writer %d", i)
	}
}

func TestWritingLeavesTheDrawingAlone(t *testing.T) {
	d := sample()
	bytesOf(t, d)
	assert.Equal(t, sample(), d)
}

func TestShadeIsInkOnPaperOnly(t *testing.T) {
	d := one(drawing.Shade, drawing.Circle{Radius: math.NaN()})
	assert.Equal(t, bytesOf(t, drawing.Drawing{}), bytesOf(t, d), "not even looked at")
}

func TestNothingToSeeIsLeftOut(t *testing.T) {
	for name, s := range map[string]drawing.Shape{
		"line with no length":            drawing.Line{A: geom.Point{X: 3, Y: 4}, B: geom.Point{X: 3, Y: 4}},
		"line shorter than the rounding": drawing.Line{B: geom.Point{X: grain / 2}},
		"no letters":                     drawing.Text{Size: 3},
		"only blanks":                    drawing.Text{Size: 3, Text: " \t\r\n\u00a0\u2028\x00"},
	} {
		assert.Empty(t, entityGroups(t, bytesOf(t, one(drawing.Centres, s))), name)
	}
}

func TestNumbers(t *testing.T) {
	for _, c := range []struct {
		in        float64
		want, why string
	}{
		{0, "0.0", "always a decimal point"},
		{math.Copysign(0, -1), "0.0", "no -0"},
		{-4e-10, "0.0", "no -0 after rounding either"},
		{-6e-10, "-0.000000001", "rounds away to the grain"},
		{105.1, "105.1", "short decimals come back as typed"},
		{-12345.5, "-12345.5", ""},
		{100, "100.0", "zeros before the point stay"},
		{1.0 / 3, "0.333333333", "nine decimals"},
		{0.1 + 0.2, "0.3", "the last bits are noise"},
		{1e22, "10000000000000000000000.0", "no exponent"},
	} {
		assert.Equal(t, c.want, string(appendNumber([]byte("x"), c.in))[1:], c.why)
	}
}

func TestArcEndsStayInOneTurn(t *testing.T) {
	for _, c := range []struct{ start, sweep, from, to float64 }{
		{0, 90, 0, 90},
		{300, 180, 300, 120},
		{270, 90, 270, 0},
		{-90, 45, 270, 315},
		{720, 1, 0, 1},
	} {
		e := entityGroups(t, bytesOf(t, one(drawing.Slots, drawing.Arc{Radius: 1, Start: c.start, Sweep: c.sweep})))[0]
		assert.Equal(t, string(appendNumber(nil, c.from)), value(t, e, 50), "%+v", c)
		assert.Equal(t, string(appendNumber(nil, c.to)), value(t, e, 51), "%+v", c)
	}
}

func TestUnreadableDrawingsAreRefused(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(-1)
	arc := func(change func(*drawing.Arc)) drawing.Arc {
		a := drawing.Arc{Radius: 5, Sweep: 90}
		change(&a)
		return a
	}
	for _, c := range []struct {
		layer drawing.Layer
		shape drawing.Shape
		want  string // what the message says of the value
	}{
		{"SEATS", drawing.Circle{Radius: 0}, "circle radius 0 mm"},
		{"SEATS", drawing.Circle{Radius: -1}, "circle radius -1 mm"},
		{"SEATS", drawing.Circle{Radius: grain / 3}, "circle radius 3.33"},
		{"SEATS", drawing.Circle{Radius: nan}, "circle radius NaN mm"},
		{"SEATS", drawing.Circle{Radius: 1, Centre: geom.Point{Y: inf}}, "circle centre y -Inf mm"},
		{"OUTLINE", drawing.Line{A: geom.Point{X: nan}}, "line start x NaN mm"},
		{"OUTLINE", drawing.Line{B: geom.Point{Y: nan}}, "line end y NaN mm"},
		{"SLOTS", arc(func(a *drawing.Arc) { a.Sweep = 0 }), "arc sweep 0 degrees"},
		{"SLOTS", arc(func(a *drawing.Arc) { a.Sweep = -30 }), "arc sweep -30 degrees"},
		{"SLOTS", arc(func(a *drawing.Arc) { a.Sweep = 360 }), "arc sweep 360 degrees"},
		{"SLOTS", arc(func(a *drawing.Arc) { a.Sweep = nan }), "arc sweep NaN degrees"},
		{"SLOTS", arc(func(a *drawing.Arc) { a.Start = inf }), "arc start -Inf degrees"},
		{"SLOTS", arc(func(a *drawing.Arc) { a.Radius = 0 }), "arc radius 0 mm"},
		{"SLOTS", arc(func(a *drawing.Arc) { a.Centre.X = nan }), "arc centre x NaN mm"},
		{"WITNESS", drawing.Polygon{Points: make([]geom.Point, 2)}, "polygon of 2 corners"},
		{"WITNESS", drawing.Polygon{Points: []geom.Point{{}, {X: nan}, {}}}, "polygon corner 1 x NaN mm"},
		{"TEXT", drawing.Text{Text: "a"}, "text height 0 mm"},
		{"TEXT", drawing.Text{Text: "a", Size: 1, Angle: nan}, "text angle NaN degrees"},
		{"TEXT", drawing.Text{Text: "a", Size: 1, At: geom.Point{X: inf}}, "text place x -Inf mm"},
		{"TEXT", drawing.Text{Text: "a", Size: 1, Align: 99}, "text alignment 99"},
		{"SEATS", nil, "shape <nil>"},
		{"Seats", drawing.Circle{Radius: 1}, "layer name holds 'e'"},
		{"BAD|NAME", drawing.Circle{Radius: 1}, "layer name holds '|'"},
		{"A\n0", drawing.Circle{Radius: 1}, "layer name holds '\\n'"},
		{"", drawing.Circle{Radius: 1}, "layer name of 0 characters"},
		{drawing.Layer(strings.Repeat("A", 256)), drawing.Circle{Radius: 1}, "layer name of 256 characters"},
	} {
		var d drawing.Drawing
		d.Add(drawing.Pivot, drawing.Circle{Radius: 4})
		d.Add(c.layer, c.shape)
		var b bytes.Buffer
		err := Write(&b, d)
		require.ErrorContains(t, err, c.want)
		assert.ErrorContains(t, err, "entity 1 on layer ")
		if c.layer == "SEATS" {
			assert.ErrorContains(t, err, `layer "SEATS"`)
		}
		assert.NotContains(t, err.Error(), "\n", "one line")
		assert.Empty(t, b.Bytes(), "nothing is half written: %s", c.want)
	}
}

// TestNearlyWholeTurnIsAnArc holds the limits of the sweep from inside.
func TestNearlyWholeTurnIsAnArc(t *testing.T) {
	for _, sweep := range []float64{1e-8, 360 - 1e-8} {
		e := entityGroups(t, bytesOf(t, one(drawing.Slots, drawing.Arc{Radius: 1, Start: 123.456789012345, Sweep: sweep})))[0]
		assert.NotEqual(t, value(t, e, 50), value(t, e, 51), "an arc from a direction to itself is ambiguous")
	}
}

type fullDisk struct{}

var errFull = errors.New("disk full")

func (fullDisk) Write([]byte) (int, error) { return 0, errFull }

func TestAFailedWriteIsReported(t *testing.T) {
	assert.ErrorIs(t, Write(fullDisk{}, sample()), errFull)
}
