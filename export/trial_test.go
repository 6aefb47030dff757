package export_test

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/export"
	"stopwright/export/chart"
	"stopwright/export/drawing"
	"stopwright/export/template"
)

// Every file and sheet of a trial bears its scale: whoever finds it in the shop
// must not take it for the plate.
func TestEverySheetOfATrialBearsItsScale(t *testing.T) {
	half, err := plan.Trial(report(t).Plate.Plan, 0.5)
	require.NoError(t, err)
	r := detent.Solve(half)
	dir := t.TempDir()
	_, err = export.Export(r, in(dir))
	require.NoError(t, err)
	const mark = "TRIAL AT 1:2"
	told := 0
	for _, name := range entries(t, dir) {
		switch filepath.Ext(name) {
		case ".pdf": // its text is packed: see below
		default:
			assert.Contains(t, get(t, filepath.Join(dir, name)), mark, name)
			told++
		}
	}
	assert.Greater(t, told, 8, "drawings of every part in two formats, the chart and the router's programs")

	info := drawing.Info{Words: words.English()}
	assert.Contains(t, chart.New(r, info).Title, mark)
	for _, part := range []plan.Part{plan.PartBase, plan.PartTurntable, plan.PartCollar} {
		assert.Contains(t, template.Sheet(r.Plate, part, info).Title, mark, part)
	}
}
