package pdf_test

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/export/internal/oracle"
	"stopwright/export/pdf"
)

// run hands a PDF to one of poppler's programs; tail is what follows its name.
func run(t testing.TB, data []byte, program string, tail []string, args ...string) []byte {
	t.Helper()
	path := filepath.Join(t.TempDir(), "a.pdf")
	require.NoError(t, os.WriteFile(path, data, 0o600))
	out, err := exec.Command(oracle.Need(t, program), append(append(args, path), tail...)...).Output()
	require.NoError(t, err, program)
	return out
}

var toStdout = []string{"-"}

func TestPaperAndDescription(t *testing.T) {
	data := written(t, pdf.Meta{Title: "Größe 漢 \U0001F600\n(a)\\", Date: time.Date(2026, 11, 20, 8, 0, 0, 0, time.UTC)},
		a4(drawing.Outline), drawing.Page{Width: 279.4, Height: 215.9})
	facts := string(run(t, data, "pdfinfo", nil, "-isodates", "-l", "9"))
	assert.Regexp(t, `Page +1 size: +595\.28 x 841\.89 pts \(A4\)`, facts)
	assert.Regexp(t, `Page +2 size: +792 x 612 pts \(letter\)`, facts, "a page wider than high stays so")
	assert.Regexp(t, `Title: +Größe 漢 \? \(a\)\\`, facts)
	assert.Contains(t, facts, "2026-11-20T08:00:00Z")
}

// word is a word as pdftotext -bbox finds it, in points from the upper left.
type word struct {
	XMin float64 `xml:"xMin,attr"`
	XMax float64 `xml:"xMax,attr"`
	YMin float64 `xml:"yMin,attr"`
	YMax float64 `xml:"yMax,attr"`
	Text string  `xml:",chardata"`
}

func wordsOf(t testing.TB, data []byte) []word {
	t.Helper()
	var doc struct {
		Words []word `xml:"body>doc>page>word"`
	}
	require.NoError(t, xml.Unmarshal(run(t, data, "pdftotext", toStdout, "-bbox"), &doc))
	return doc.Words
}

// placed is how near letters must stand to their place, mm: the library's
// rounding of points, and of letter widths to a thousandth of the size.
const placed = 0.05

func TestTextStandsWhereItsAlignmentSays(t *testing.T) {
	const size, text = 5.0, "Ring-105"
	at := geom.Point{X: 100, Y: 150}
	wide := drawing.TextWidth(text, size)
	base := math.NaN()
	for _, c := range []struct {
		align drawing.Align
		angle float64
		lo    geom.Point // of the letters' box along the base line, from at, mm
		hi    geom.Point
	}{
		{drawing.Left, 0, geom.Point{}, geom.Point{X: wide}},
		{drawing.Right, 0, geom.Point{X: -wide}, geom.Point{}},
		{drawing.Bottom, 0, geom.Point{X: -wide / 2}, geom.Point{X: wide / 2}},
		{drawing.Top, 0, geom.Point{X: -wide / 2, Y: -size}, geom.Point{X: wide / 2, Y: -size}},
		{drawing.Centre, 0, geom.Point{X: -wide / 2, Y: -size / 2}, geom.Point{X: wide / 2, Y: -size / 2}},
	} {
		data := written(t, pdf.Meta{}, a4(drawing.Lettering, drawing.Text{At: at, Size: size, Angle: c.angle, Align: c.align, Text: text}))
		got := wordsOf(t, data)
		require.Len(t, got, 1)
		assert.Equal(t, text, got[0].Text)
		assert.InDelta(t, at.X+c.lo.X, got[0].XMin*25.4/72, placed, "alignment %d", c.align)
		assert.InDelta(t, at.X+c.hi.X, got[0].XMax*25.4/72, placed, "alignment %d", c.align)
		// The box's foot is the font's own, the same below every base line.
		foot := 297 - got[0].YMax*25.4/72 - c.lo.Y
		if math.IsNaN(base) {
			base = foot
		}
		assert.InDelta(t, base, foot, placed, "alignment %d", c.align)
	}
}

// TestTurnedTextGoesUp finds the letters of a text turned by 90 degrees in a
// raster: they fill the place above where it starts, capital high to the left.
func TestTurnedTextGoesUp(t *testing.T) {
	const size = 10.0
	text := "HHHH"
	r := rasterOf(t, a4(drawing.Lettering, drawing.Text{At: geom.Point{X: 100, Y: 150}, Size: size, Angle: 90, Text: text}))
	x1, y1, x2, y2 := r.inked()
	assert.InDelta(t, 100-size, x1, 0.3, "capitals stand left of the base line")
	assert.InDelta(t, 100, x2, 0.3)
	wide := drawing.TextWidth(text, size)
	const bearing = 1.5 // mm, the space at an H's sides at this size
	assert.InDelta(t, 150+bearing/2, y1, bearing)
	assert.InDelta(t, 150+wide-bearing/2, y2, bearing)
}

func TestMissingLettersAreSeen(t *testing.T) {
	data := written(t, pdf.Meta{}, a4(drawing.Lettering, drawing.Text{At: geom.Point{X: 20, Y: 20}, Size: 3, Text: "a漢b\U0001F600c\xffd é ⌀ 36°"}))
	assert.Equal(t, "a?b?c?d é ⌀ 36°", strings.TrimSpace(string(run(t, data, "pdftotext", toStdout))))
}

// exactLength is half a dot at 600 to the inch, and the weight's own rounding.
const exactLength = 0.06

func TestLengthsAndWeightsAreExact(t *testing.T) {
	for _, c := range []struct {
		layer drawing.Layer
		why   string
	}{{drawing.Outline, "thick"}, {drawing.Witness, "thin"}} {
		r := rasterOf(t, a4(c.layer, drawing.Circle{Centre: geom.Point{X: 105, Y: 148}, Radius: 50}))
		x1, y1, x2, y2 := r.inked()
		w := drawing.PenOf(c.layer).Width
		assert.InDelta(t, 55-w/2, x1, exactLength, c.why)
		assert.InDelta(t, 155+w/2, x2, exactLength, c.why)
		assert.InDelta(t, 98-w/2, y1, exactLength, c.why)
		assert.InDelta(t, 198+w/2, y2, exactLength, c.why)
	}
	r := rasterOf(t, a4(drawing.Outline, drawing.Arc{Centre: geom.Point{X: 100, Y: 100}, Radius: 40, Start: 30, Sweep: 30}))
	_, y1, x2, _ := r.inked()
	w := drawing.PenOf(drawing.Outline).Width / 2
	assert.InDelta(t, 100+40*math.Cos(math.Pi/6)+w, x2, 0.2, "an arc starts anticlockwise from +x")
	assert.InDelta(t, 100+40*0.5-w, y1, 0.2)
}

func TestDashesShadeAndFill(t *testing.T) {
	r := rasterOf(t, a4(drawing.Track, drawing.Line{A: geom.Point{X: 20, Y: 100}, B: geom.Point{X: 110, Y: 100}}))
	dash := drawing.PenOf(drawing.Track).Dash
	assert.InDelta(t, 90/(dash[0]+dash[1]), float64(r.runs(100)), 1, "as many dashes as fit the layer's pattern")
	square := drawing.Polygon{Points: []geom.Point{{X: 50, Y: 50}, {X: 90, Y: 50}, {X: 90, Y: 90}, {X: 50, Y: 90}}}
	page := a4(drawing.Lettering, drawing.Line{A: geom.Point{X: 40, Y: 70}, B: geom.Point{X: 100, Y: 70}})
	page.Add(drawing.Shade, square)
	r = rasterOf(t, page)
	assert.Less(t, r.at(70, 70), byte(100), "a tint lies under the ink, whatever the order")
	assert.Greater(t, r.at(70, 60), byte(200), "it is light")
	assert.Less(t, r.at(70, 60), byte(250), "and is there")
	assert.Equal(t, byte(0), rasterOf(t, a4(drawing.Witness, square)).at(70, 60), "other figures are filled in ink")
}

const (
	perInch = 600
	perMM   = perInch / 25.4
)

type raster struct {
	width, height int
	dots          []byte
}

func rasterOf(t testing.TB, page drawing.Page) raster {
	t.Helper()
	data := run(t, written(t, pdf.Meta{}, page), "pdftoppm", nil, "-r", fmt.Sprint(perInch), "-gray")
	var w, h, most int
	_, err := fmt.Sscanf(string(data[:40]), "P5\n%d %d\n%d\n", &w, &h, &most)
	require.NoError(t, err)
	return raster{w, h, data[len(data)-w*h:]}
}

// at returns the grey at a place in mm from the lower left: 0 is black.
func (r raster) at(x, y float64) byte {
	return r.dots[(r.height-1-int(y*perMM))*r.width+int(x*perMM)]
}

// inked returns the extent of all that is darker than half, mm.
func (r raster) inked() (x1, y1, x2, y2 float64) {
	x1, y1 = math.Inf(1), math.Inf(1)
	for i, v := range r.dots {
		if v < 128 {
			x, y := float64(i%r.width), float64(r.height-1-i/r.width)
			x1, x2 = min(x1, x/perMM), max(x2, (x+1)/perMM)
			y1, y2 = min(y1, y/perMM), max(y2, (y+1)/perMM)
		}
	}
	return x1, y1, x2, y2
}

// runs counts the dark stretches along a row.
func (r raster) runs(y float64) int {
	n, dark := 0, false
	for x := 0.0; x < 200; x += 1 / perMM {
		now := r.at(x, y) < 128
		if now && !dark {
			n++
		}
		dark = now
	}
	return n
}

func FuzzText(f *testing.F) {
	for _, s := range []string{"", "plain", "(", ")\\", "\x00\r\n", "\xff\xc3", "\U0010FFFF", "\ufeff\ufffe", "漢", "{nb}", "%%EOF endstream"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		page := a4(drawing.Lettering, drawing.Text{At: geom.Point{X: 20, Y: 20}, Size: 3, Text: s},
			drawing.Text{At: geom.Point{X: 20, Y: 40}, Size: 3, Angle: 90, Align: drawing.Centre, Text: "end"})
		data := written(t, pdf.Meta{Title: s}, page)
		require.True(t, strings.HasPrefix(string(data), "%PDF-"))
		if _, err := exec.LookPath("pdftotext"); err == nil {
			require.Contains(t, string(run(t, data, "pdftotext", toStdout)), "end")
		}
	})
}

// TestStretchedPagesPrintStretched measures a circle on a page that makes up for
// a printer which is 1 % short across and 1.5 % long up the page.
func TestStretchedPagesPrintStretched(t *testing.T) {
	page := a4(drawing.Witness, drawing.Circle{Centre: geom.Point{X: 100, Y: 140}, Radius: 50})
	page.Stretch = drawing.Stretch{X: 1.01, Y: 0.985}
	x1, y1, x2, y2 := rasterOf(t, page).inked()
	w := drawing.PenOf(drawing.Witness).Width / 2
	assert.InDelta(t, (50-w)*1.01, x1, exactLength)
	assert.InDelta(t, (150+w)*1.01, x2, exactLength)
	assert.InDelta(t, (90-w)*0.985, y1, exactLength)
	assert.InDelta(t, (190+w)*0.985, y2, exactLength)
	page.Stretch.Y = 0
	require.ErrorContains(t, pdf.Write(&bytes.Buffer{}, []drawing.Page{page}, pdf.Meta{}), "stretched")
}
