package chart_test

import (
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan/plantest"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// A German sheet has decimal commas and no decimal point; what a spreadsheet
// reads keeps the point, and holes stay where they are.
func TestGermanSheetsHaveDecimalCommas(t *testing.T) {
	german, err := words.In("de")
	require.NoError(t, err)
	r := detent.Solve(mitres(plantest.Arrangements[0]))
	c := chart.New(r, drawing.Info{Words: german, Date: date})

	commas := 0
	for _, page := range chart.Pages(c, drawing.A4) {
		textsKeepApart(t, page, "German")
		for _, e := range page.Entities {
			if s, ok := e.Shape.(drawing.Text); ok {
				assert.NotRegexp(t, `\d\.\d`, s.Text)
				if assert.NotContains(t, s.Text, "[chart."); numeral.MatchString(s.Text) {
					commas++
				}
			}
		}
	}
	assert.Greater(t, commas, len(c.Sheets[0].Seats), "every seat has numbers")

	inEnglish, inGerman := read(t, csvOf(t, chart.New(r, drawing.Info{Words: words.English(), Date: date}))), read(t, csvOf(t, c))
	require.Len(t, inGerman, len(inEnglish))
	assert.Equal(t, numbersOf(inEnglish), numbersOf(inGerman))

	for _, part := range drawing.Parts(r.Plate.Plan) {
		one := drawing.PartSheet(r.Plate, part, drawing.Info{Words: words.English(), Date: date})
		other := drawing.PartSheet(r.Plate, part, drawing.Info{Words: german, Date: date})
		assert.Equal(t, cuts(one), cuts(other), part)
	}
}

var numeral = regexp.MustCompile(`^−?\d+,\d+`)

// numbersOf counts the numbers of a table by how they are written.
func numbersOf(rows []map[string]string) map[string]int {
	out := map[string]int{}
	for _, row := range rows {
		for _, cell := range row {
			if _, err := strconv.ParseFloat(cell, 64); err == nil {
				out[cell]++
			}
		}
	}
	return out
}

// cuts returns what a machine follows: all that is no lettering.
func cuts(d drawing.Drawing) []drawing.Shape {
	var out []drawing.Shape
	for _, e := range d.Entities {
		switch e.Shape.(type) {
		case drawing.Circle, drawing.Arc:
			out = append(out, e.Shape)
		}
	}
	return out
}

// So has a German proof sheet, its table of stops included.
func TestGermanProofSheetsHaveDecimalCommas(t *testing.T) {
	german, err := words.In("de")
	require.NoError(t, err)
	for _, page := range chart.ProofPages(provedReport(), drawing.Info{Words: german, Date: date}, drawing.A4) {
		assert.NotRegexp(t, `\d\.\d`, pageText([]drawing.Page{page}))
	}
}
