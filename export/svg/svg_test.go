package svg_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/export/svg"
)

func written(t require.TestingT, d drawing.Drawing) string {
	var b bytes.Buffer
	require.NoError(t, svg.Write(&b, d))
	return b.String()
}

func TestWrite(t *testing.T) {
	// SVG 1.1, 7.2 and 7.7: width and height in mm with a viewBox of the same
	// numbers make one user unit one millimetre; y grows downwards.
	var d drawing.Drawing
	d.Add(drawing.Ring, drawing.Circle{Radius: 30})
	d.Rect(drawing.Outline, geom.Point{X: -40, Y: -20}, geom.Point{X: 40, Y: 35})
	d.Add(drawing.Lettering, drawing.Text{At: geom.Point{X: 10, Y: -10}, Size: 3.6, Angle: 90, Align: drawing.Centre, Text: `A & "B"`})
	d.Add(drawing.Shade, drawing.Polygon{Points: []geom.Point{{X: 500}, {X: 600}, {Y: 500}}})
	want := `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="90mm" height="75mm" viewBox="-45 -40 90 75">
<g id="OUTLINE" fill="none" stroke="#000000" stroke-width="0.5">
<path d="M-40 20 L40 20 L40 -35 L-40 -35 Z"/>
</g>
<g id="RING" fill="none" stroke="#808080" stroke-width="0.25" stroke-dasharray="8 1.5 1 1.5">
<circle cx="0" cy="0" r="30"/>
</g>
<g id="TEXT" fill="none" stroke="#000000" stroke-width="0.25">
<text fill="#000000" stroke="none" font-family="sans-serif" font-size="5" text-anchor="middle" x="11.8" y="10" transform="rotate(-90 11.8 10)">A &amp; &quot;B&quot;</text>
</g>
</svg>
`
	assert.Equal(t, want, written(t, d))
}

func TestNothingDrawnIsAnEmptySheet(t *testing.T) {
	assert.Contains(t, written(t, drawing.Drawing{}), `width="10mm" height="10mm" viewBox="-5 -5 10 10"`)
}

func TestPathsFollowTheirPieces(t *testing.T) {
	p := func(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }
	half := drawing.Arc{Centre: p(5, 0), Radius: 5, Start: 0, Sweep: 180} // from 10,0 over the top to 0,0
	for _, c := range []struct {
		why   string
		parts []drawing.Shape
		want  []string
	}{
		{"end to end", []drawing.Shape{drawing.Line{A: p(0, 0), B: p(1, 0)}, drawing.Line{A: p(1, 0), B: p(1, 1)}}, []string{"M0 0 L1 0 L1 -1"}},
		{"one the other way round", []drawing.Shape{drawing.Line{A: p(0, 0), B: p(1, 0)}, drawing.Line{A: p(1, 1), B: p(1, 0)}}, []string{"M0 0 L1 0 L1 -1"}},
		{"the first the other way round", []drawing.Shape{drawing.Line{A: p(1, 0), B: p(0, 0)}, drawing.Line{A: p(1, 0), B: p(1, 1)}}, []string{"M0 0 L1 0 L1 -1"}},
		{"apart", []drawing.Shape{drawing.Line{A: p(0, 0), B: p(1, 0)}, drawing.Line{A: p(1, 1e-5), B: p(1, 1)}}, []string{"M0 0 L1 0", "M1 -0.00001 L1 -1"}},
		{"closed by an arc", []drawing.Shape{drawing.Line{A: p(0, 0), B: p(10, 0)}, half}, []string{"M0 0 L10 0 A5 5 0 0 0 0 0 Z"}},
		{"an arc the other way", []drawing.Shape{drawing.Line{A: p(-5, 0), B: p(0, 0)}, half}, []string{"M-5 0 L0 0 A5 5 0 0 1 10 0"}},
		{"over half a circle", []drawing.Shape{drawing.Arc{Radius: 2, Sweep: 270}}, []string{"M2 0 A2 2 0 0 0 -1.414213562 -1.414213562 A2 2 0 0 0 0 2"}},
		{"a closed one takes no more", []drawing.Shape{
			drawing.Line{A: p(0, 0), B: p(10, 0)}, half, drawing.Line{A: p(0, 0), B: p(0, 5)},
		}, []string{"M0 0 L10 0 A5 5 0 0 0 0 0 Z", "M0 0 L0 -5"}},
	} {
		var d drawing.Drawing
		for _, s := range c.parts {
			d.Add(drawing.Slots, s)
		}
		assert.Equal(t, c.want, pathsOf(t, written(t, d)), c.why)
	}
	var d drawing.Drawing
	d.AddItem(drawing.Slots, drawing.Line{B: p(1, 0)}, drawing.Item{Kind: drawing.FeatureItem})
	d.AddItem(drawing.Slots, drawing.Line{A: p(1, 0), B: p(2, 0)}, drawing.Item{Kind: drawing.FeatureItem, Index: 1})
	assert.Len(t, pathsOf(t, written(t, d)), 2, "two features that touch stay two")
}

// pathsOf returns the d of every path.
func pathsOf(t *testing.T, file string) []string {
	t.Helper()
	var out []string
	for _, g := range parsed(t, file).Groups {
		for _, p := range g.Paths {
			out = append(out, p.D)
		}
	}
	return out
}

// sheet is what the standard library's reader finds.
type sheet struct {
	Width   string `xml:"width,attr"`
	Height  string `xml:"height,attr"`
	ViewBox string `xml:"viewBox,attr"`
	Groups  []struct {
		ID      string `xml:"id,attr"`
		Circles []struct {
			X float64 `xml:"cx,attr"`
			Y float64 `xml:"cy,attr"`
			R float64 `xml:"r,attr"`
		} `xml:"circle"`
		Paths []struct {
			D string `xml:"d,attr"`
		} `xml:"path"`
		Texts []string `xml:"text"`
	} `xml:"g"`
}

func parsed(t require.TestingT, file string) sheet {
	var s sheet
	require.NoError(t, xml.Unmarshal([]byte(file), &s))
	return s
}

func TestAnyTextComesThrough(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.String().Draw(t, "text") + rapid.StringOf(rapid.RuneFrom([]rune("<>&'\"]\x00\x1f\x7f\u0085\ufffe\uffff\u2028漢\U0001F600"))).Draw(t, "odd")
		var d drawing.Drawing
		d.Add(drawing.Lettering, drawing.Text{Size: 2, Text: "(" + text + ")"})
		got := parsed(t, written(t, d)).Groups[0].Texts[0]
		kept := strings.Map(func(r rune) rune {
			if r < ' ' || r >= 0x7f && r < 0xa0 || r == 0xfffe || r == 0xffff {
				return ' '
			}
			return r
		}, "("+text+")")
		assert.Equal(t, strings.Join(strings.Fields(kept), ""), strings.Join(strings.Fields(got), ""), "nothing that can be seen is lost")
		assert.NotContains(t, got, "\n")
	})
	var d drawing.Drawing
	d.Add(drawing.Lettering, drawing.Text{Size: 2, Text: "a\xffb"})
	d.Add(drawing.Lettering, drawing.Text{Size: 2, Text: "\x01 \n"})
	assert.Equal(t, []string{"a\ufffdb"}, parsed(t, written(t, d)).Groups[0].Texts, "bytes that are no text are seen; a text of nothing is not written")
}

func TestWhatIsNoNumberIsRefused(t *testing.T) {
	for _, s := range []drawing.Shape{
		nil,
		drawing.Circle{},
		drawing.Line{A: geom.Point{X: math.NaN()}},
		drawing.Arc{Radius: 1, Sweep: 360},
		drawing.Text{At: geom.Point{Y: math.Inf(1)}, Size: 1, Text: "a"},
	} {
		var d drawing.Drawing
		d.Add(drawing.Outline, drawing.Line{B: geom.Point{X: 1}})
		d.Add(drawing.Seats, s)
		var b bytes.Buffer
		err := svg.Write(&b, d)
		require.Error(t, err, "%+v", s)
		assert.Contains(t, err.Error(), "shape 1 on layer SEATS")
		assert.Zero(t, b.Len())
	}
}

var errFull = errors.New("disk full")

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestAFullDiskIsTold(t *testing.T) {
	require.ErrorIs(t, svg.Write(full{}, drawing.Drawing{}), errFull)
}
