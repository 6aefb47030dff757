package ui

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export"
)

// names returns the names of a folder's files.
func names(t testing.TB, folder string) []string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	var out []string
	for _, e := range entries {
		out = append(out, e.Name())
	}
	return out
}

func TestExportWritesTheFilesAsked(t *testing.T) {
	w := opened(t, withStops(0, 36))
	folder := t.TempDir()
	w.choose(t, "menu.file", "menu.export")
	w.typePath(t, filepath.Join(folder, "table"))
	w.answer(t, "export.do")
	assert.Subset(t, names(t, folder), []string{
		"table.csv", "table.pdf", "table.dxf", "table-base.dxf", "table-turntable.dxf",
	})
	told := w.asked(t)
	for _, name := range names(t, folder) {
		assert.Contains(t, told, name)
	}
	assert.Contains(t, fileText(t, filepath.Join(folder, "table.pdf")), "%PDF-")
	w.press(fyne.KeyReturn)
	assert.Nil(t, w.overlay())
	assert.False(t, w.store.Unsaved(), "exporting is no edit")
}

func TestExportOfOneFormat(t *testing.T) {
	w := opened(t, withStops(0, 36))
	folder := t.TempDir()
	w.choose(t, "menu.file", "menu.export")
	boxes := find[*widget.Check](w.overlay())
	boxes = slices.DeleteFunc(boxes, func(b *widget.Check) bool { return b.Text == w.words.Text("export.depths") })
	require.Len(t, boxes, len(export.Formats))
	for _, b := range boxes {
		b.SetChecked(false)
	}
	w.typePath(t, filepath.Join(folder, "table"))
	w.press(fyne.KeyReturn)
	assert.Empty(t, names(t, folder), "with nothing chosen the question stays")
	for _, b := range boxes {
		b.SetChecked(b.Text == w.words.Text("export.csv"))
	}
	w.press(fyne.KeyReturn)
	assert.Equal(t, []string{"table.csv"}, names(t, folder))
}

func TestExportAsksBeforeItReplaces(t *testing.T) {
	folder := t.TempDir()
	old := filepath.Join(folder, "table.pdf")
	require.NoError(t, os.WriteFile(old, []byte("old"), 0o600))
	w := opened(t, withStops(0, 36))
	do := func() {
		w.choose(t, "menu.file", "menu.export")
		w.typePath(t, filepath.Join(folder, "table"))
		w.answer(t, "export.do")
		assert.Contains(t, w.asked(t), "table.pdf")
	}
	do()
	w.answer(t, "ask.cancel")
	assert.Equal(t, []string{"table.pdf"}, names(t, folder), "nothing is written")
	assert.Equal(t, "old", fileText(t, old))
	do()
	w.answer(t, "ask.replace.do")
	assert.NotEqual(t, "old", fileText(t, old))
}

func TestExportThatFails(t *testing.T) {
	w := opened(t, withStops(0, 36))
	folder := t.TempDir()
	w.choose(t, "menu.file", "menu.export")
	w.typePath(t, filepath.Join(folder, "none", "table"))
	w.answer(t, "export.do")
	assert.Contains(t, w.asked(t), w.words.Text("ask.failed"))
	assert.Empty(t, names(t, folder))
}

// Files are written whatever the checks found, and it is said that they found
// something.
func TestExportOfAPlanWithErrorsWarns(t *testing.T) {
	for _, c := range []struct {
		angles []float64
		warns  bool
	}{{[]float64{0, 36}, false}, {[]float64{0, 1}, true}} {
		w := opened(t, withStops(c.angles...))
		w.choose(t, "menu.file", "menu.export")
		assert.Equal(t, c.warns, problemIn(w.overlay()) != "", c.angles)
	}
}

func TestExportFromTheChartPage(t *testing.T) {
	w := opened(t, withStops(0, 36))
	w.showPage(chartPage)
	for _, b := range find[*widget.Button](w.chart.object) {
		if b.Text == w.words.Text("chart.export") {
			tap(b)
		}
	}
	assert.Contains(t, w.asked(t), w.words.Text("export.where"))
}
