package chart_test

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/export/chart"
	"stopwright/export/drawing"
	"stopwright/export/internal/oracle"
)

// pointTenth is how near a page's size must be, in points of 1/72 inch: the
// library writes hundredths.
const pointTenth = 0.01

// run hands a PDF to one of poppler's programs and returns what it prints.
func run(t *testing.T, data []byte, program string, args ...string) []byte {
	t.Helper()
	path := filepath.Join(t.TempDir(), "chart.pdf")
	require.NoError(t, os.WriteFile(path, data, 0o600))
	args = append(args, path)
	if program == "pdftotext" {
		args = append(args, "-") // or it would write a file
	}
	out, err := exec.Command(oracle.Need(t, program), args...).Output()
	require.NoError(t, err, program)
	return out
}

// TestPDFReadAgain reads the chart's PDF with poppler: the paper's size on
// every page, and the row of every seat.
func TestPDFReadAgain(t *testing.T) {
	for _, paper := range []drawing.Paper{drawing.A4, drawing.Letter} {
		for _, n := range []int{9, 60, 720} {
			c := chartOf(t, plantest.Equal(n))
			data := pdfOf(t, c, paper)
			path := filepath.Join(t.TempDir(), "chart.pdf")
			require.NoError(t, os.WriteFile(path, data, 0o600))
			facts, err := exec.Command(oracle.Need(t, "pdfinfo"), "-l", "999", path).Output()
			require.NoError(t, err)
			sizes := regexp.MustCompile(`(?m)size: +([\d.]+) x ([\d.]+) pts`).FindAllSubmatch(facts, -1)
			require.Len(t, sizes, len(chart.Pages(c, paper)))
			for _, s := range sizes {
				assert.InDelta(t, paper.Width*72/25.4, number(t, s[1]), pointTenth)
				assert.InDelta(t, paper.Height*72/25.4, number(t, s[2]), pointTenth)
			}
			lines := strings.Split(string(run(t, data, "pdftotext", "-layout")), "\n")
			for _, r := range c.Sheets[0].Seats {
				found := false
				for i, line := range lines {
					f := strings.Fields(line)
					if len(f) > 2 && f[0] == r.Tag && strings.Contains(line, fmt.Sprintf(" %.2f", r.At.X+0)) &&
						strings.Contains(line, fmt.Sprintf(" %.2f", r.At.Y+0)) {
						found = found || i+1 < len(lines) && strings.Contains(lines[i+1], fmt.Sprintf("%.3f°", float64(r.Azimuth)))
					}
				}
				assert.True(t, found, "%d seats on %s: no row for %s at %v", n, paper.Name, r.Tag, r.At)
			}
		}
	}
}

// TestTheMirroredChartNamesItsView reads the words of the view, where no
// picture can be asked.
func TestTheMirroredChartNamesItsView(t *testing.T) {
	text := string(run(t, pdfOf(t, chartOf(t, mitres(plantest.Arrangements[3])), drawing.A4), "pdftotext", "-layout"))
	assert.Contains(t, text, "Turntable, underside up")
	assert.Contains(t, text, "clockwise in this view")
	for _, caution := range []string{"Unplug", "Clamp the work", "eye protection", "manual"} {
		assert.Contains(t, text, caution)
	}
}

// scaleTrue is how true the small drawing must be, mm on paper.
const scaleTrue = 0.2

// The dots of a raster, fine enough for a tenth of that.
const (
	perInch = 600
	perMM   = perInch / 25.4
)

// TestTheSmallDrawingIsTrue measures the width of the part in a raster of the
// sheet, along rows of dots that no lettering crosses, against the part's own
// width at the scale the sheet states.
func TestTheSmallDrawingIsTrue(t *testing.T) {
	for _, paper := range []drawing.Paper{drawing.A4, drawing.Letter} {
		for _, c := range []struct {
			why   string
			width float64 // of the part along that row, mm
			set   func(p *plan.Plan)
			depth float64 // of the row that is measured, below the pivot, mm
		}{
			{"a rectangle at 1:5", 340, func(*plan.Plan) {}, 140},
			{"a disc at 1:2: a chord of it", 2 * 60 * 0.6, func(p *plan.Plan) {
				p.Base.Shape, p.Base.Diameter, p.Turntable.Diameter, p.Catches[0].Radius = plan.Disc, 120, 110, 35
			}, 60 * 0.8},
		} {
			p := plantest.Equal(9)
			c.set(&p)
			ch := chartOf(t, p).Only(plan.PartBase)
			data := pdfOf(t, ch, paper)
			m := regexp.MustCompile(`\b(\d+):(\d+)\b`).FindSubmatch(run(t, data, "pdftotext", "-f", "1", "-l", "1"))
			require.NotNil(t, m, "the scale is stated")
			k := number(t, m[1]) / number(t, m[2])
			raster := grey(t, run(t, data, "pdftoppm", "-r", strconv.Itoa(perInch), "-gray", "-f", "1", "-l", "1"))
			x, y := pivotOf(t, ch, paper)
			row := int((paper.Height - (y - c.depth*k)) * perMM)
			const outside = 3.0 // mm, where nothing is drawn
			reach := c.width*k/2 + outside
			from, to := raster.edge(row, x-reach, 1), raster.edge(row, x+reach, -1)
			assert.InDelta(t, c.width*k, (to-from)/perMM, scaleTrue, "%s on %s", c.why, paper.Name)
			assert.InDelta(t, x, (to+from)/2/perMM, scaleTrue, "and it is centred on the pivot")
		}
	}
}

// raster is a grey picture, a byte a dot.
type raster struct {
	width int
	dots  []byte
}

// grey reads a binary PGM.
func grey(t *testing.T, data []byte) raster {
	t.Helper()
	var w, h, most int
	n, err := fmt.Fscanf(bytes.NewReader(data), "P5\n%d %d\n%d\n", &w, &h, &most)
	require.NoError(t, err)
	require.Equal(t, 3, n)
	return raster{w, data[len(data)-w*h:]}
}

// edge returns the middle of the first line met in a row, going from x mm to
// one side.
func (r raster) edge(row int, x float64, step int) float64 {
	const ink = 128
	at := func(i int) byte { return r.dots[row*r.width+i] }
	i := int(x * perMM)
	for at(i) >= ink {
		i += step
	}
	first := i
	for at(i) < ink {
		i += step
	}
	return float64(first+i-step)/2 + 0.5
}

func number(t *testing.T, s []byte) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(string(s), 64)
	require.NoError(t, err)
	return v
}

func TestPDFBytesRepeat(t *testing.T) {
	a, b := pdfOf(t, chartOf(t, mitres(plantest.Arrangements[0])), drawing.A4), pdfOf(t, chartOf(t, mitres(plantest.Arrangements[0])), drawing.A4)
	assert.True(t, bytes.Equal(a, b))
}

func BenchmarkPDF(b *testing.B) {
	pages := chart.Pages(chartOf(b, plantest.Equal(720)), drawing.A4)
	b.ReportAllocs()
	for b.Loop() {
		writePDF(b, pages)
	}
}
