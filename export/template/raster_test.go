package template_test

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/export/internal/oracle"
	"stopwright/export/pdf"
)

const (
	perInch = 600
	perMM   = perInch / 25.4
)

// raster is one page as poppler paints it, the first row at the top.
type raster struct {
	width, height int
	dots          []byte
}

// painted writes pages as a PDF and has poppler paint them.
func painted(t testing.TB, pages []drawing.Page) []raster {
	t.Helper()
	program := oracle.Need(t, "pdftoppm")
	dir := t.TempDir()
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, pages, pdf.Meta{}))
	file := filepath.Join(dir, "a.pdf")
	require.NoError(t, os.WriteFile(file, b.Bytes(), 0o600))
	var all []raster
	for n := range pages {
		data, err := exec.Command(program, "-r", fmt.Sprint(perInch), "-gray", "-f", fmt.Sprint(n+1), "-l", fmt.Sprint(n+1), file).Output()
		require.NoError(t, err)
		var w, h, most int
		_, err = fmt.Sscanf(string(data[:40]), "P5\n%d %d\n%d\n", &w, &h, &most)
		require.NoError(t, err)
		all = append(all, raster{w, h, data[len(data)-w*h:]})
	}
	return all
}

// ink returns how dark a dot is, 0 to 255.
func (r raster) ink(x, y int) float64 {
	if x < 0 || y < 0 || x >= r.width || y >= r.height {
		return 0
	}
	return float64(255 - r.dots[(r.height-1-y)*r.width+x])
}

// centre finds the middle of a round mark near a place, mm from the lower left:
// the centre of gravity of the ink, first of all that lies about it, for the
// whole mark to be seen, then of the mark alone.
func (r raster) centre(near geom.Point, radius float64) geom.Point {
	const about, rim = 1.2, 0.4 // mm
	return r.gravity(r.gravity(near, radius+about), radius+rim)
}

// gravity returns the centre of gravity of the ink within a radius, taken again
// round what was found until it stays.
func (r raster) gravity(at geom.Point, radius float64) geom.Point {
	for range 60 {
		var sum float64
		var mean geom.Point
		for y := int((at.Y - radius) * perMM); y <= int((at.Y+radius)*perMM)+1; y++ {
			for x := int((at.X - radius) * perMM); x <= int((at.X+radius)*perMM)+1; x++ {
				dot := geom.Point{X: (float64(x) + 0.5) / perMM, Y: (float64(y) + 0.5) / perMM}
				if w := r.ink(x, y); w > 0 && dot.Distance(at) <= radius {
					sum, mean = sum+w, mean.Add(dot.Scale(w))
				}
			}
		}
		if sum == 0 {
			return geom.Point{X: math.NaN(), Y: math.NaN()}
		}
		to := mean.Scale(1 / sum)
		if to.Distance(at) < 1e-4 {
			return to
		}
		at = to
	}
	return at
}

// span returns the distance between the middles of the first and the last mark
// that a row (or column) of dots crosses, mm.
func (r raster) span(along func(i int) float64, n int) float64 {
	first, last := math.NaN(), math.NaN()
	for i := 0; i < n; {
		if along(i) < 128 {
			i++
			continue
		}
		start := i
		for i < n && along(i) >= 128 {
			i++
		}
		mid := float64(start+i) / 2 / perMM
		if math.IsNaN(first) {
			first = mid
		}
		last = mid
	}
	return last - first
}
