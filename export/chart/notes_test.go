package chart_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// The notes of every demonstration stand whole beside its drawing, on the
// smallest paper and in both languages.
func TestNotesOfTheDemonstrationsStandBesideTheDrawing(t *testing.T) {
	for _, d := range plans.List() {
		for _, language := range words.Languages() {
			for _, paper := range drawing.Papers {
				file, err := plans.Open(d.Name)
				require.NoError(t, err)
				p, err := plan.Decode(strings.NewReader(string(file)))
				require.NoError(t, err)
				c, err := words.In(language)
				require.NoError(t, err)
				pages := chart.Pages(chart.New(detent.Solve(p), drawing.Info{Words: c}), paper)
				first := strings.Join(textsOf(pages[0]), " ")
				assert.True(t, strings.Contains(first, drawing.Lettered(p.Notes)), "%s, %s, %s", d.Name, language, paper.Name)
			}
		}
	}
}

// Notes that are too long to stand beside the drawing stand whole on a sheet of
// their own, and the drawing's sheet says so.
func TestLongNotesHaveASheetOfTheirOwn(t *testing.T) {
	p := plantest.Equal(4)
	for range 300 {
		p.Notes += "The bolt is greased once a year. "
	}
	pages := chart.Pages(chartOf(t, p), drawing.A4)
	more := words.English().Text("chart.notes.more")
	assert.Contains(t, textsOf(pages[0]), more)
	// A sheet of its own is the one with the notes and no such line.
	var own []string
	for _, page := range pages {
		if texts := textsOf(page); slices.Contains(texts, "Notes") && !slices.Contains(texts, more) {
			own = append(own, texts...)
		}
	}
	all := strings.Join(own, " ")
	assert.Equal(t, 300, strings.Count(all, "greased"))
	for _, page := range pages {
		for _, text := range textsOf(page) {
			assert.False(t, strings.Contains(text, "greased") && strings.Contains(text, "…"), text)
		}
	}
}
