package chart_test

import (
	"bytes"
	"flag"
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/export/chart"
	"stopwright/export/drawing"
	"stopwright/export/pdf"
)

var update = flag.Bool("update", false, "write the golden files anew")

// date is what a caller might give.
const date = "2026-11-20"

// mitres is a one-sided set with an odd one out, so that no sign can hide.
func mitres(a plan.Arrangement) plan.Plan {
	p := plan.Default()
	p.Title, p.Arrangement = "Swivelling sanding table", a
	p.Catches = []plan.Placement{{Name: "A", Azimuth: 20, Radius: 105}, {Name: "B", Azimuth: -140, Radius: 90}}
	p.Stops = []plan.Stop{
		{Angle: 0, Label: "square"},
		{Angle: 22.5, BothSides: true, Label: "8 sides"},
		{Angle: 36, BothSides: true, Label: "5 sides"},
		{Angle: 50, Label: "odd", Catches: []string{"A", "B"}},
	}
	return p
}

func chartOf(t testing.TB, p plan.Plan) chart.Chart {
	t.Helper()
	require.NoError(t, plan.Validate(p))
	return chart.New(detent.Solve(p), drawing.Info{Words: words.English(), Date: date})
}

func csvOf(t testing.TB, c chart.Chart) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, chart.WriteCSV(&b, c))
	return b.Bytes()
}

func pdfOf(t testing.TB, c chart.Chart, paper drawing.Paper) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, chart.Pages(c, paper), pdf.Meta{Title: c.Title}))
	return b.Bytes()
}

func solve(p plan.Plan) detent.Report { return detent.Solve(p) }

func info() drawing.Info { return drawing.Info{Words: words.English(), Date: date} }

func writePDF(t testing.TB, pages []drawing.Page) {
	t.Helper()
	require.NoError(t, pdf.Write(io.Discard, pages, pdf.Meta{}))
}

// pivotOf returns where the pivot's bore is drawn on the first page, mm from
// the lower left corner.
func pivotOf(t testing.TB, c chart.Chart, paper drawing.Paper) (x, y float64) {
	t.Helper()
	for _, e := range chart.Pages(c, paper)[0].Entities {
		if s, ok := e.Shape.(drawing.Circle); ok && e.Layer == drawing.Pivot {
			return s.Centre.X, s.Centre.Y
		}
	}
	require.Fail(t, "no pivot on the page")
	return 0, 0
}
