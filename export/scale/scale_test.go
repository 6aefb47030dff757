package scale_test

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/internal/oracle"
	"stopwright/export/pdf"
	"stopwright/export/scale"
	"stopwright/export/tile"
)

// exact is what rounding leaves, mm.
const exact = 1e-9

func info() drawing.Info { return drawing.Info{Words: words.English(), Date: "2026-11-20"} }

func planOf(sense plan.Sense, from, to float64, stops ...plan.Stop) plan.Plan {
	p := plan.Default()
	p.Arrangement.PositiveTurn = sense
	p.Travel = plan.Span{From: from, To: to}
	p.Stops = stops
	return p
}

// lines returns the lines of a layer.
func lines(d drawing.Drawing, l drawing.Layer) []drawing.Line {
	var out []drawing.Line
	for _, e := range d.Entities {
		if s, ok := e.Shape.(drawing.Line); ok && e.Layer == l {
			out = append(out, s)
		}
	}
	return out
}

// TestTheIndexReadsTheTurn turns the drawn ring as the table turns, and looks
// which graduation lies at the index: the mark of a stop points at it.
func TestTheIndexReadsTheTurn(t *testing.T) {
	for _, c := range []struct {
		sense     plan.Sense
		clockwise geom.Angle // what a positive turn of 1 degree is, seen from above
	}{{plan.Clockwise, 1}, {plan.Counterclockwise, -1}} {
		for _, index := range []geom.Angle{0, 90, 180, -30} {
			const turn = 33.25
			pl := plate.New(planOf(c.sense, -60, 60, plan.Stop{Angle: turn, Label: "I"}))
			d, err := scale.Drawing(pl, words.English(), scale.Options{Index: index})
			require.NoError(t, err)
			found := false
			for _, l := range lines(d, drawing.Graduations) {
				tip := l.A.Rotate(c.clockwise * turn)
				off := (tip.Azimuth() - (180 + index)).Wrap().Abs().Degrees()
				found = found || off < exact && math.Abs(tip.Norm()-pl.Plan.Turntable.Diameter/2) > 10
			}
			assert.True(t, found, "%s, index at %v: the stop's mark comes to the index", c.sense, index)
		}
	}
}

// atRim returns the azimuths of the lines that begin on a circle.
func atRim(d drawing.Drawing, radius float64) []float64 {
	var out []float64
	for _, l := range lines(d, drawing.Graduations) {
		if math.Abs(l.A.Norm()-radius) < exact {
			out = append(out, l.A.Azimuth().Degrees())
		}
	}
	return out
}

func TestGraduationsOfTheTravel(t *testing.T) {
	for _, c := range []struct {
		why      string
		from, to float64
		step     float64
		r        scale.Reading
		want     int
	}{
		{"both ways, and the vernier's length beyond", -60, 60, 1, scale.Tenth, 120 + 2*10 + 1},
		{"one way only", 0, 90, 1, scale.Tenth, 90 + 10 + 1},
		{"the other way", -90, 0, 0.5, scale.Minutes, 180 + 6 + 1},
		{"without a vernier", -10, 10, 0.25, scale.Plain, 81},
		{"ends that are no graduations", -10.3, 10.3, 1, scale.Plain, 23},
		{"a whole turn", -180, 180, 1, scale.Tenth, 360},
		{"a whole turn one way", 0, 360, 0.5, scale.Tenth, 720},
		{"two turns", -360, 360, 0.25, scale.Minutes, 1440},
		{"nearly a turn, which the vernier fills", -172, 172, 1, scale.Tenth, 360},
	} {
		pl := plate.New(planOf(plan.Clockwise, c.from, c.to))
		d, err := scale.Drawing(pl, words.English(), scale.Options{Step: c.step, Reading: c.r})
		require.NoError(t, err, c.why)
		at := atRim(d, pl.Plan.Turntable.Diameter/2)
		assert.Len(t, at, c.want, c.why)
		seen := map[int]bool{}
		for _, az := range at {
			steps := (az - 180) / c.step
			assert.InDelta(t, math.Round(steps), steps, 1e-6, c.why)
			seen[int(math.Round(steps))] = true
		}
		assert.Len(t, seen, c.want, "%s: each once", c.why)
	}
}

// TestVernierMeetsTheScale: on the drawing, with the table turned to 12.3
// degrees, the third line beside the index meets a graduation and its
// neighbours do not; to the other side as well.
func TestVernierMeetsTheScale(t *testing.T) {
	const gap = 0.5 // rim to vernier
	for _, sense := range []plan.Sense{plan.Clockwise, plan.Counterclockwise} {
		for _, reading := range []float64{12.3, -12.3} {
			pl := plate.New(planOf(sense, -60, 60))
			d, err := scale.Drawing(pl, words.English(), scale.Options{})
			require.NoError(t, err)
			turn := geom.Angle(reading)
			if sense == plan.Counterclockwise {
				turn = -turn
			}
			radius := pl.Plan.Turntable.Diameter / 2
			main, vernier := atRim(d, radius), atRim(d, radius+gap)
			require.Len(t, vernier, 21)
			var meet []float64
			for _, v := range vernier {
				for _, m := range main {
					if (geom.Angle(v-m) - turn).Wrap().Abs() < 1e-6 {
						meet = append(meet, (geom.Angle(v) - 180).Wrap().Abs().Degrees())
					}
				}
			}
			// Line 3 on the side of the reading; on the other side line 7, which
			// reads the same turn from the graduation beyond.
			assert.ElementsMatch(t, []float64{2.7, 6.3}, []float64{math.Round(meet[0]*1e6) / 1e6, math.Round(meet[1]*1e6) / 1e6})
		}
	}
}

func TestStripIsAsLongAsTheRim(t *testing.T) {
	for _, c := range []struct {
		why  string
		rim  float64
		want float64
	}{{"the turntable's", 0, math.Pi * 260}, {"as measured", 261.3, math.Pi * 261.3}} {
		pl := plate.New(planOf(plan.Clockwise, -180, 180))
		pl.Plan.Turntable.Diameter = 260
		d, err := scale.Strip(pl, words.English(), scale.Options{Rim: c.rim})
		require.NoError(t, err)
		assert.InDelta(t, c.want, d.Bounds().Width(), exact, c.why)
		n := 0
		for _, l := range lines(d, drawing.Graduations) {
			if l.A.Y == 0 {
				n++
			}
		}
		assert.Equal(t, 360, n, c.why)
	}
}

// TestStripGrowsTheWayTheTableTurns: from outside, numbers grow to the right when
// a positive turn is clockwise from above.
func TestStripGrowsTheWayTheTableTurns(t *testing.T) {
	for sense, way := range map[plan.Sense]float64{plan.Clockwise: 1, plan.Counterclockwise: -1} {
		pl := plate.New(planOf(sense, -60, 60, plan.Stop{Angle: 30}))
		d, err := scale.Strip(pl, words.English(), scale.Options{})
		require.NoError(t, err)
		want := way * math.Pi * pl.Plan.Turntable.Diameter * 30 / 360
		found := false
		for _, l := range lines(d, drawing.Graduations) {
			found = found || l.A.Y > 5 && math.Abs(l.A.X-want) < exact
		}
		assert.True(t, found, "%s", sense)
	}
}

// TestPiecesAreTheStrip: cut into pieces nothing is lost and no letter is cut.
func TestPiecesAreTheStrip(t *testing.T) {
	for _, c := range []struct{ from, to, diameter float64 }{{-60, 60, 260}, {-180, 180, 260}, {0, 360, 2000}, {-20, 20, 40}} {
		p := planOf(plan.Clockwise, c.from, c.to, plan.Stop{Angle: 15, BothSides: c.from < 0, Label: "12 sides"}, plan.Stop{Angle: 7.5, Label: "a long label"})
		p.Turntable.Diameter = c.diameter
		pl := plate.New(p)
		whole, err := scale.Strip(pl, words.English(), scale.Options{})
		require.NoError(t, err)
		sheets, err := scale.StripSheets(pl, info(), scale.Options{})
		require.NoError(t, err)
		strokes, along := 0, 0.0
		for _, s := range sheets {
			strokes += len(lines(s.Drawing, drawing.Engraving))
			for _, l := range lines(s.Drawing, drawing.Outline) {
				if l.A.Y == l.B.Y && l.A.X < l.B.X {
					along += l.B.X - l.A.X // the lower edge of a piece
				}
			}
			pages, err := tile.Pages(s, drawing.Letter, tile.Correction{X: 147, Y: 196}, words.English())
			require.NoError(t, err)
			assert.Equal(t, 1, len(pages), "a sheet is one page of any paper, however it is stretched")
		}
		flat, err := scale.Drawing(pl, words.English(), scale.Options{})
		require.NoError(t, err)
		index := 0
		for _, l := range lines(flat, drawing.Engraving) {
			if l.A.Norm() > c.diameter/2 {
				index++
			}
		}
		assert.Equal(t, len(lines(whole, drawing.Engraving))+index, strokes, "%v", c)
		assert.InDelta(t, whole.Bounds().Width(), along, 1e-6, "%v", c)
	}
}

// TestPrintedStrip measures the graduations of the first piece in the paint.
func TestPrintedStrip(t *testing.T) {
	const perInch = 600
	perMM := perInch / 25.4
	program := oracle.Need(t, "pdftoppm")
	pl := plate.New(planOf(plan.Clockwise, -60, 60))
	sheets, err := scale.StripSheets(pl, info(), scale.Options{})
	require.NoError(t, err)
	pages, err := tile.Pages(sheets[0], drawing.A4, tile.Correction{}, words.English())
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, pages, pdf.Meta{}))
	file := filepath.Join(t.TempDir(), "a.pdf")
	require.NoError(t, os.WriteFile(file, b.Bytes(), 0o600))
	data, err := exec.Command(program, "-r", fmt.Sprint(perInch), "-gray", file).Output()
	require.NoError(t, err)
	var w, h, most int
	_, err = fmt.Sscanf(string(data[:40]), "P5\n%d %d\n%d\n", &w, &h, &most)
	require.NoError(t, err)
	dots := data[len(data)-w*h:]

	// The lower edge of the first piece is its height below the window's top.
	top, height := 10.0+2, math.Min(20, pl.Plan.Turntable.Thickness)
	row := int((top + height - 1) * perMM)
	var middles []float64
	for x := int(20 * perMM); x < w-int(12*perMM); x++ { // within the window's border
		start := x
		for x < w && dots[row*w+x] < 128 {
			x++
		}
		if x > start {
			middles = append(middles, float64(start+x)/2/perMM)
		}
	}
	ticks := middles[1 : len(middles)-2] // not the piece's ends and its tab
	require.Greater(t, len(ticks), 50)
	const true005 = 0.05 // mm, over the whole piece
	want := math.Pi * pl.Plan.Turntable.Diameter / 360 * float64(len(ticks)-1)
	assert.InDelta(t, want, ticks[len(ticks)-1]-ticks[0], true005)
}

func TestAnyScaleCanBeDrawn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.Float64Range(-360, 360).Draw(t, "from")
		to := rapid.Float64Range(from, 360).Draw(t, "to")
		p := planOf(rapid.SampledFrom([]plan.Sense{plan.Clockwise, plan.Counterclockwise}).Draw(t, "sense"), from, to)
		p.Turntable.Diameter = rapid.Float64Range(0.5, 10_000).Draw(t, "diameter")
		p.Turntable.Thickness = rapid.Float64Range(0.5, 100).Draw(t, "thickness")
		for i := range rapid.IntRange(0, 12).Draw(t, "stops") {
			p.Stops = append(p.Stops, plan.Stop{Angle: rapid.Float64Range(from, to).Draw(t, "angle"), Label: rapid.String().Draw(t, "label"), BothSides: i%2 == 0})
		}
		o := scale.Options{
			Step: rapid.SampledFrom(scale.Steps).Draw(t, "step"), Reading: rapid.SampledFrom(scale.Readings).Draw(t, "reading"),
			Index: geom.Angle(rapid.Float64Range(-360, 360).Draw(t, "index")),
		}
		pl := plate.New(p)
		flat, err := scale.Drawing(pl, words.English(), o)
		if o.Step == 0.25 && o.Reading == scale.Tenth {
			require.Error(t, err)
			return
		}
		require.NoError(t, err)
		strip, err := scale.Strip(pl, words.English(), o)
		require.NoError(t, err)
		sheets, err := scale.StripSheets(pl, info(), o)
		require.NoError(t, err)
		all := []drawing.Drawing{flat, strip}
		for _, s := range sheets {
			all = append(all, s.Drawing)
		}
		for _, d := range all {
			for _, e := range d.Entities {
				require.True(t, drawing.Sound(e.Shape), "%+v", e)
			}
		}
	})
}

func BenchmarkScale720Seats(b *testing.B) {
	p := planOf(plan.Clockwise, 0, 360)
	p.Turntable.Diameter, p.Catches[0].Radius = 2000, 900
	for i := range 720 {
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(i) / 2})
	}
	pl := plate.New(p)
	for name, draw := range map[string]func() error{
		"flat":  func() error { _, err := scale.Drawing(pl, words.English(), scale.Options{Step: 0.5}); return err },
		"strip": func() error { _, err := scale.StripSheets(pl, info(), scale.Options{Step: 0.5}); return err },
	} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if err := draw(); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
