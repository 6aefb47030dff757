package chart_test

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// The least height of a capital in the table, read at arm's length, and of
// anything, mm.
const (
	leastTable = 2.0
	leastAny   = 1.8
)

// deadEdge is what no printer may be trusted with, mm.
const deadEdge = 10.0

// hard makes every text as long as a plan allows, and numbers as wide.
func hard(n int) plan.Plan {
	p := plantest.Equal(n)
	p.Title = strings.Repeat("A long title ", 40)
	p.Notes = strings.Repeat("Notes that go on. ", 60)
	p.Turntable.Diameter, p.Base.Shape, p.Base.Diameter = 9000, plan.Disc, 10000
	p.Catches[0] = plan.Placement{Name: strings.Repeat("Catch", 20), Azimuth: 12.3456, Radius: 4444.444}
	for i := range p.Stops {
		p.Stops[i].Label = strings.Repeat("label ", 30)
	}
	return p
}

func TestNothingLeavesThePaperOrMeets(t *testing.T) {
	for name, p := range map[string]plan.Plan{
		"none": plantest.Equal(0), "one": plantest.Equal(1), "nine": plantest.Equal(9), "sixteen": plantest.Equal(16), "mirrored": mitres(plantest.Arrangements[3]), "hard": hard(25), "fitted": fitted(),
	} {
		for _, paper := range drawing.Papers {
			pages := chart.Pages(chartOf(t, p), paper)
			require.NotEmpty(t, pages)
			for n, page := range pages {
				where := fmt.Sprintf("%s on %s, page %d", name, paper.Name, n+1)
				assert.Equal(t, paper.Width, page.Width, where)
				assert.Equal(t, paper.Height, page.Height, where)
				b := page.Bounds()
				assert.GreaterOrEqual(t, b.Min.X, deadEdge, where)
				assert.GreaterOrEqual(t, b.Min.Y, deadEdge, where)
				assert.LessOrEqual(t, b.Max.X, paper.Width-deadEdge, where)
				assert.LessOrEqual(t, b.Max.Y, paper.Height-deadEdge, where)
				textsKeepApart(t, page, where)
			}
		}
	}
}

// textsKeepApart requires that no two texts of a page overlap, that upright
// ones cross no upright rule, and that all are tall enough to read.
func textsKeepApart(t *testing.T, page drawing.Page, where string) {
	t.Helper()
	type lettered struct {
		text string
		box  drawing.Bounds
	}
	var all []lettered
	for _, e := range page.Entities {
		if s, ok := e.Shape.(drawing.Text); ok {
			var one drawing.Drawing
			one.Add(e.Layer, s)
			all = append(all, lettered{s.Text, one.Bounds()})
			assert.NotRegexp(t, `\[[a-z-]+\.|\{\{`, s.Text, "%s: a word the catalogue lacks", where)
			assert.GreaterOrEqual(t, s.Size, leastAny, "%s: %q", where, s.Text)
		}
	}
	const touch = 0.05 // mm: letters have room at their sides
	for i, a := range all {
		for _, b := range all[i+1:] {
			if a.box.Min.X < b.box.Max.X-touch && b.box.Min.X < a.box.Max.X-touch &&
				a.box.Min.Y < b.box.Max.Y-touch && b.box.Min.Y < a.box.Max.Y-touch {
				t.Errorf("%s: %q and %q overlap", where, a.text, b.text)
			}
		}
		for _, e := range page.Entities {
			l, ok := e.Shape.(drawing.Line)
			if !ok || e.Layer != drawing.Lettering || l.A.X != l.B.X {
				continue
			}
			lo, hi := min(l.A.Y, l.B.Y), max(l.A.Y, l.B.Y)
			if a.box.Min.X < l.A.X && l.A.X < a.box.Max.X && a.box.Min.Y < hi && lo < a.box.Max.Y {
				t.Errorf("%s: a rule at x %.1f crosses %q", where, l.A.X, a.text)
			}
		}
	}
}

func TestPagesAreCountedAndHeaded(t *testing.T) {
	for _, paper := range []drawing.Paper{drawing.A4, drawing.Letter} {
		pages := chart.Pages(chartOf(t, plantest.Equal(60)), paper)
		require.Greater(t, len(pages), 3)
		for i, p := range pages {
			texts := textsOf(p)
			assert.Contains(t, texts, fmt.Sprintf("%d of %d", i+1, len(pages)))
			assert.Contains(t, texts, date)
			if !slices.Contains(texts, "Drilling chart") { // a sheet of operations, or the parts list
				assert.True(t, slices.Contains(texts, "Operations") || slices.Contains(texts, "Parts list"))
				continue
			}
			assert.Contains(t, texts, "Azimuth", "the heading is repeated")
			tall := 0
			for _, e := range p.Entities {
				if s, ok := e.Shape.(drawing.Text); ok && s.Text == "105.00" {
					assert.GreaterOrEqual(t, s.Size, leastTable)
					tall++
				}
			}
			assert.Positive(t, tall)
		}
	}
}

func TestFiveThousandSeatsAllHaveARow(t *testing.T) {
	rows := 0
	tag := regexp.MustCompile(`^A\d+$`)
	for _, p := range chart.Pages(chartOf(t, plantest.Equal(5000)), drawing.A4) {
		boxes := 0
		for _, e := range p.Entities {
			s, ok := e.Shape.(drawing.Text)
			if ok && s.At.X < 12 && tag.MatchString(s.Text) {
				boxes++
			}
		}
		rows += boxes
	}
	assert.Equal(t, 5000, rows)
}

// TestTheArrowFollowsThePositiveTurn finds the arrow on the page by its shape:
// a filled triangle outside the part, on the side to which the turn goes.
func TestTheArrowFollowsThePositiveTurn(t *testing.T) {
	for _, a := range plantest.Arrangements {
		for i, s := range chartOf(t, mitres(a)).Sheets {
			c := chartOf(t, mitres(a))
			c.Sheets = c.Sheets[i : i+1]
			page := chart.Pages(c, drawing.A4)[0]
			var arc drawing.Arc
			var head drawing.Polygon
			for _, e := range page.Entities {
				switch shape := e.Shape.(type) {
				case drawing.Arc:
					if e.Layer == drawing.Lettering {
						arc = shape
					}
				case drawing.Polygon:
					if e.Layer == drawing.Lettering {
						head = shape
					}
				}
			}
			require.Len(t, head.Points, 3)
			tip := head.Points[0].Sub(arc.Centre).Azimuth()
			back := head.Points[1].Sub(arc.Centre).Azimuth()
			assert.Equal(t, s.Turn == plan.Clockwise, (tip-back).Wrap() > 0, "%v, %s", a, s.Part)
		}
	}
}

func TestAllStopsOfASharedSeatAreListed(t *testing.T) {
	p := plantest.Equal(0)
	p.Catches = nil
	for i := range 6 {
		p.Catches = append(p.Catches, plan.Placement{Name: string(rune('A' + i)), Azimuth: 60 * float64(i), Radius: 100})
	}
	for i := range 6 {
		s := plan.Stop{Angle: 60 * float64(i)}
		for _, c := range p.Catches {
			s.Catches = append(s.Catches, c.Name)
		}
		p.Stops = append(p.Stops, s)
	}
	c := chartOf(t, p)
	require.Len(t, c.Sheets[0].Seats, 6)
	text := strings.Join(textsOf(chart.Pages(c, drawing.A4)[0]), " ")
	assert.Equal(t, 6, strings.Count(text, "240°"), "each of six seats serves the stop at 240")
}

func textsOf(p drawing.Page) []string {
	var out []string
	for _, e := range p.Entities {
		if s, ok := e.Shape.(drawing.Text); ok {
			out = append(out, s.Text)
		}
	}
	return out
}

func TestScalesAreStandard(t *testing.T) {
	for _, c := range []struct {
		size float64
		want string
	}{{20, "2:1"}, {60, "1:1"}, {120, "1:2"}, {260, "1:5"}, {600, "1:10"}, {9000, "1:200"}} {
		p := plantest.Equal(3)
		p.Turntable.Diameter, p.Base.Shape, p.Base.Diameter = c.size, plan.Disc, c.size
		p.Turntable.PivotBore, p.Catches[0].Radius = 0, c.size/3
		assert.Contains(t, textsOf(chart.Pages(chartOf(t, p), drawing.A4)[0]), c.want, "a disc of %g mm", c.size)
	}
}

func TestAnyTextCanBeLaidOut(t *testing.T) {
	p := plantest.Equal(2)
	p.Title = "Ж漢\U0001F600 \u202e \x00 line\nline"
	p.Stops[0].Label = strings.Repeat("W", 10000)
	for _, page := range chart.Pages(chart.New(solve(p), info()), drawing.A4) {
		b := page.Bounds()
		assert.LessOrEqual(t, b.Max.X, page.Width-deadEdge)
		assert.Contains(t, textsOf(page), "??? ? line line", "what the letter lacks is seen to be missing")
	}
}

func BenchmarkPages(b *testing.B) {
	c := chartOf(b, plantest.Equal(720))
	b.ReportAllocs()
	for b.Loop() {
		chart.Pages(c, drawing.A4)
	}
}

func BenchmarkWriteCSV(b *testing.B) {
	c := chartOf(b, plantest.Equal(720))
	b.ReportAllocs()
	for b.Loop() {
		if err := chart.WriteCSV(discard{}, c); err != nil {
			b.Fatal(err)
		}
	}
}

type discard struct{}

func (discard) Write(p []byte) (int, error) { return len(p), nil }
