package chart_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// provedReport is a plate with a tool, every stop measured once, and the seat at
// 30 a degree out.
func provedReport() detent.Report {
	p := plan.NewPlan()
	for _, a := range []float64{-45, -30, -15, 0, 15, 30, 45} {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
		off := 0.1
		if a == 30 {
			off = 1.1
		}
		p.Readings = append(p.Readings, plan.Reading{Angle: a, Measured: a + off})
	}
	tool := plan.NewTool()
	tool.Fence = 10
	p.Tool = &tool
	return detent.Solve(p)
}

func pageText(pages []drawing.Page) string {
	var b strings.Builder
	for _, p := range pages {
		for _, e := range p.Entities {
			if t, ok := e.Shape.(drawing.Text); ok {
				b.WriteString(t.Text + "\n")
			}
		}
	}
	return b.String()
}

func TestProofSheetSaysWhatWasFound(t *testing.T) {
	german, err := words.In("de")
	require.NoError(t, err)
	for _, w := range []*words.Catalogue{words.English(), german} {
		r := provedReport()
		pages := chart.ProofPages(r, drawing.Info{Words: w, Date: "2026-11-25"}, drawing.A4)
		require.NotEmpty(t, pages)
		text := pageText(pages)
		flat := strings.Join(strings.Fields(text), " ")
		v, _ := r.Proving()
		for _, line := range v.Say(r, w) {
			assert.Contains(t, flat, strings.Join(strings.Fields(drawing.Lettered(line)), " "))
		}
		for _, key := range []string{"caution.unplug", "caution.clamp", "caution.eyes", "caution.manual", "repair.plug", "repair.bush", "repair.pattern"} {
			assert.Contains(t, flat, drawing.Lettered(w.Text(key)))
		}
		assert.Contains(t, text, "2026-11-25")
		assert.NotContains(t, text, "[", "no gap in the words")
		assert.NotContains(t, text, "{{")
		for k, p := range pages {
			b := p.Bounds()
			const edge = 9.9 // mm: the border stands at 10
			assert.Greater(t, b.Min.X, edge, "page %d", k+1)
			assert.Greater(t, b.Min.Y, edge, "page %d", k+1)
			assert.Less(t, b.Max.X, p.Width-edge, "page %d", k+1)
			assert.Less(t, b.Max.Y, p.Height-edge, "page %d", k+1)
		}
	}
}

// Where two catches hold a stop both of its seats are put right, each told by its
// name; the pattern is moved but once.
func TestProofSheetMendsEverySeatOfAPair(t *testing.T) {
	p := provedReport().Plate.Plan
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: p.Catches[0].Azimuth + 180, Radius: 90})
	for i := range p.Stops {
		p.Stops[i].Catches = []string{"A", "B"}
	}
	r := detent.Solve(p)
	w := words.English()
	text := pageText(chart.ProofPages(r, drawing.Info{Words: w}, drawing.A4))
	for _, seat := range r.Plate.Stops[5].Seats { // at 30
		head := w.Text("repair.seat", words.Args{"Seat": r.Plate.Seats[seat].Tag})
		assert.Equal(t, 1, strings.Count(text, head+"\n"), head)
	}
	assert.Equal(t, 2, strings.Count(text, w.Text("repair.plug")+"\n"))
	assert.Equal(t, 1, strings.Count(text, w.Text("repair.pattern")+"\n"))
	assert.Contains(t, strings.Join(strings.Fields(text), " "), "move each of them")
}

func TestProofSheetToFillIn(t *testing.T) {
	p := plan.NewPlan()
	for a := -90.0; a <= 90; a++ {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	pages := chart.ProofPages(detent.Solve(p), drawing.Info{Words: words.English()}, drawing.A4)
	assert.Greater(t, len(pages), 2, "181 stops do not fit on two pages")
	text := pageText(pages)
	for _, a := range []string{"-90", "0", "90"} {
		assert.Contains(t, text, "\n"+a+"\n")
	}
	none := chart.ProofPages(detent.Solve(plan.NewPlan()), drawing.Info{Words: words.English()}, drawing.A4)
	assert.Len(t, none, 1, "a plan without stops has its cautions and nothing to fill in")
}

// TestProofSheetChartsTheMovedPattern finds the line of every new seat and
// pocket, each where its part has it at the drill, whichever part holds seats.
func TestProofSheetChartsTheMovedPattern(t *testing.T) {
	for _, in := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		p := provedReport().Plate.Plan
		p.Arrangement.CatchIn = in
		p.Travel = plan.Span{From: -45, To: 45}
		r := detent.Solve(p)
		moved := r.Clean()
		require.True(t, moved.Fits)
		text := pageText(chart.ProofPages(r, drawing.Info{Words: words.English()}, drawing.A4))
		_, text, found := strings.Cut(text, drawing.Lettered(words.English().Text("proof.pattern.pockets")))
		require.True(t, found)
		pockets, seats, found := strings.Cut(text, drawing.Lettered(words.English().Text("proof.pattern.seats")))
		require.True(t, found)
		place := func(part plan.Part, at geom.Point) string {
			if part == plan.PartTurntable { // lies underside up: left and right change sides
				at.X = -at.X
			}
			return fmt.Sprintf("%.2f\n%.2f\n%.2f\n%.3f\u00b0\n", at.X, at.Norm(), at.Y, at.Azimuth().Degrees())
		}
		for _, s := range moved.Trial.Plate.Seats {
			assert.Contains(t, seats, place(moved.Trial.Plate.SeatsPart, s.Centre), "seats of %s", s.Tag)
		}
		for _, k := range moved.Trial.Plate.Pockets {
			assert.Contains(t, pockets, place(moved.Trial.Plate.CatchPart, k.Centre), "pocket of %s", k.Name)
		}
	}
}

// TestProofSheetChartsNoPatternWithoutGround: on a small table that turns right
// round a wider ring leaves the table, and on a narrower one the seats run into
// each other.
func TestProofSheetChartsNoPatternWithoutGround(t *testing.T) {
	p := provedReport().Plate.Plan
	p.Travel = plan.Span{From: -180, To: 180}
	p.Catches[0].Radius = 30
	p.Turntable.Diameter = 80
	r := detent.Solve(p)
	require.False(t, r.Clean().Fits)
	text := pageText(chart.ProofPages(r, drawing.Info{Words: words.English()}, drawing.A4))
	assert.Contains(t, text, words.English().Text("repair.pattern.no-room"))
	assert.NotContains(t, text, drawing.Lettered(words.English().Text("proof.pattern.seats")))
}
