package svg_test

import (
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
	"stopwright/export/internal/oracle"
	"stopwright/export/svg"
)

func info() drawing.Info { return drawing.Info{Words: words.English(), Date: "2026-11-20"} }

// sample is a plan with every kind of feature and a label that XML must not eat.
func sample(t testing.TB) plan.Plan {
	t.Helper()
	p := plan.Default()
	p.Title = `<Größe> & "Winkel" 漢`
	p.Stops = []plan.Stop{{Angle: 0, Label: "<0>"}, {Angle: 36, BothSides: true}, {Angle: 50}}
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.Slot, X: -60, Y: -30, X2: -60, Y2: -70, Width: 8, Label: "dust"},
		{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 60, From: 100, To: 160, Width: 8, Label: "dust"},
	}
	require.NoError(t, plan.Validate(p))
	return p
}

// exact is how near a coordinate must come to the report's, mm.
const exact = 1e-6

func TestCoordinatesAreTheReports(t *testing.T) {
	for _, a := range []plan.Arrangement{
		{CatchIn: plan.PartTurntable, PositiveTurn: plan.Clockwise},
		{CatchIn: plan.PartBase, PositiveTurn: plan.Clockwise},
	} {
		p := sample(t)
		p.Arrangement = a
		r := detent.Solve(p)
		file := parsed(t, written(t, drawing.PartSheet(r.Plate, r.Plate.SeatsPart, info())))
		for _, g := range file.Groups {
			if g.ID != "SEATS" {
				continue
			}
			require.Len(t, g.Circles, len(r.Plate.Seats))
			for i, s := range r.Plate.Seats {
				want := s.Centre
				if r.Plate.SeatsPart == plan.PartTurntable {
					want.X = -want.X // as it lies at the drill
				}
				assert.InDelta(t, want.X, g.Circles[i].X, exact)
				assert.InDelta(t, want.Y, -g.Circles[i].Y, exact)
				assert.InDelta(t, p.Seat.Diameter/2, g.Circles[i].R, exact)
			}
		}
	}
}

func TestSlotsAreOneClosedPath(t *testing.T) {
	r := detent.Solve(sample(t))
	for _, g := range parsed(t, written(t, drawing.Part(r.Plate, plan.PartBase, drawing.AsAtDrill))).Groups {
		if g.ID != "SLOTS" {
			continue
		}
		assert.Len(t, g.Paths, 2)
		for _, path := range g.Paths {
			assert.True(t, strings.HasSuffix(path.D, "Z"), path.D)
			assert.Equal(t, 1, strings.Count(path.D, "M"))
		}
	}
}

// saved writes a drawing to a file for another program to read.
func saved(t testing.TB, d drawing.Drawing) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "a.svg")
	require.NoError(t, os.WriteFile(path, []byte(written(t, d)), 0o600))
	return path
}

// TestPythonReadsIt has the drawing read by a parser that is not Go's.
func TestPythonReadsIt(t *testing.T) {
	const script = `
import sys, xml.etree.ElementTree as tree
for g in tree.parse(sys.argv[1]).getroot():
    for e in g:
        if e.tag.endswith('circle'): print(g.get('id'), e.get('cx'), e.get('cy'), e.get('r'))
        if e.tag.endswith('text'): sys.stdout.buffer.write(e.text.encode() + b'\n'); sys.stdout.flush()
`
	python := oracle.Need(t, "python3")
	r := detent.Solve(sample(t))
	out, err := exec.Command(python, "-X", "utf8", "-c", script, saved(t, drawing.AllParts(r.Plate, info()))).Output()
	require.NoError(t, err)
	text := string(out)
	s := r.Plate.Seats[0]
	assert.Contains(t, text, fmt.Sprintf("SEATS %s %s 2.25", number(s.Centre.X), number(-s.Centre.Y)))
	assert.Contains(t, text, `<Größe> & "Winkel" 漢`)
}

// number writes a coordinate as the file does: nine decimals, no zeros.
func number(x float64) string {
	return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.9f", x), "0"), ".")
}

const (
	perInch = 600
	perMM   = perInch / 25.4
	// rendered is how near a size measured in the picture comes, mm: half a dot.
	rendered = 0.03
)

// TestRenderedAtFullSize has the file painted by another program and measures
// it: the extent of the ink, and the centre of a seat's circle.
func TestRenderedAtFullSize(t *testing.T) {
	program := oracle.Need(t, "rsvg-convert")
	var d drawing.Drawing
	d.Rect(drawing.Outline, geom.Point{X: -40, Y: -20}, geom.Point{X: 40, Y: 35})
	at := geom.Point{X: 12.345, Y: -6.789}
	d.Add(drawing.Pivot, drawing.Circle{Centre: at, Radius: 4})
	out := filepath.Join(t.TempDir(), "a.png")
	require.NoError(t, exec.Command(program, "-d", fmt.Sprint(perInch), "-p", fmt.Sprint(perInch), "-b", "white", "-o", out, saved(t, d)).Run())
	dark := darkOf(t, out)
	lo, hi := dark.extent(func(geom.Point) bool { return true })
	const half, edge = drawing.ThickLine / 2, 5.0 // the sheet's margin
	assert.InDelta(t, edge-half, lo.X, rendered)
	assert.InDelta(t, edge+80+half, hi.X, rendered)
	assert.InDelta(t, edge-half, lo.Y, rendered)
	assert.InDelta(t, edge+55+half, hi.Y, rendered)
	middle := geom.Point{X: edge + 40 + at.X, Y: edge + 35 - at.Y} // from the upper left corner
	lo, hi = dark.extent(func(p geom.Point) bool { return p.Distance(middle) < 6 })
	assert.InDelta(t, middle.X, (lo.X+hi.X)/2, rendered)
	assert.InDelta(t, middle.Y, (lo.Y+hi.Y)/2, rendered)
	assert.InDelta(t, 8+2*half, hi.X-lo.X, rendered)
}

func TestDemonstrationsAreReadBySvgPrograms(t *testing.T) {
	program := oracle.Need(t, "rsvg-convert")
	for _, demo := range plans.List() {
		data, err := plans.Open(demo.Name)
		require.NoError(t, err)
		p, err := plan.Decode(strings.NewReader(string(data)))
		require.NoError(t, err)
		d := drawing.AllParts(detent.Solve(p).Plate, info())
		require.NoError(t, exec.Command(program, "-w", "800", "-o", filepath.Join(t.TempDir(), "a.png"), saved(t, d)).Run(), demo.Name)
	}
}

func TestBytesRepeat(t *testing.T) {
	r := detent.Solve(sample(t))
	want := written(t, drawing.AllParts(r.Plate, info()))
	for range 5 {
		require.Equal(t, want, written(t, drawing.AllParts(r.Plate, info())))
	}
	assert.NotContains(t, want, `"-0"`)
	assert.NotRegexp(t, `-0[ "ALZ]`, want)
}

func BenchmarkSVG720Seats(b *testing.B) {
	p := plan.Default()
	p.Turntable.Diameter, p.Base.Width, p.Base.Depth, p.Catches[0].Radius = 2000, 2200, 2200, 900
	for i := range 720 {
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(i) / 2})
	}
	d := drawing.AllParts(detent.Solve(p).Plate, info())
	b.ReportAllocs()
	for b.Loop() {
		if err := svg.Write(io.Discard, d); err != nil {
			b.Fatal(err)
		}
	}
}
