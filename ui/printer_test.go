package ui

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export/drawing"
	"stopwright/export/tile"
)

// retype types over what stands in a field of the sheet that is shown.
func (w *Window) retype(t testing.TB, field int, text string) {
	t.Helper()
	e := find[*sheetEntry](w.overlay())[field]
	w.focus(e)
	e.TypedShortcut(&fyne.ShortcutSelectAll{})
	e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDelete})
	w.typeText(text)
}

// pick chooses an entry of one of a sheet's lists of choices.
func (w *Window) pick(t testing.TB, list, entry int) {
	t.Helper()
	find[*sheetSelect](w.overlay())[list].SetSelectedIndex(entry)
}

func TestBenchMenu(t *testing.T) {
	w := opened(t, withStops(0, 36))
	items := w.menuItem(t, "menu.file", "menu.bench").ChildMenu.Items
	require.Len(t, items, 3)
	for i, title := range []string{"template.title", "scale.title", "coupon.title"} {
		items[i].Action()
		assert.Contains(t, w.asked(t), w.words.Text(title))
		w.press(fyne.KeyEscape)
		assert.Nil(t, w.overlay(), "Escape leaves it")
	}
	assert.False(t, w.store.Unsaved())
}

func TestTemplateSheet(t *testing.T) {
	w := opened(t, withStops(0, 36))
	file := filepath.Join(t.TempDir(), "t.pdf")
	w.askTemplate()
	assert.Contains(t, w.asked(t), "pages of A4")
	w.retype(t, 0, file)
	w.retype(t, 1, "142")
	assert.Contains(t, w.asked(t), "150 mm long and measures 142 mm", "it is refused with the reason")
	w.answer(t, "template.do")
	assert.NoFileExists(t, file)
	w.retype(t, 1, "0")
	assert.Contains(t, w.asked(t), "measures 0 mm")
	w.retype(t, 1, "5 7/8in") // 149.225 mm
	w.retype(t, 2, "200,5")
	w.pick(t, 0, 2)
	assert.Contains(t, w.asked(t), "pages of A3")
	w.answer(t, "template.do")
	assert.Contains(t, fileText(t, file), "%PDF-")
	assert.Contains(t, w.asked(t), file, "what was written is told")
	w.press(fyne.KeyReturn)

	paper, bars := w.printer()
	assert.Equal(t, drawing.A3, paper)
	assert.Equal(t, tile.Correction{X: 149.225, Y: 200.5}, bars)
	w.askTemplate()
	entries := find[*sheetEntry](w.overlay())
	assert.Equal(t, "149.225 mm", entries[1].Text, "the printer is remembered")
	assert.Equal(t, "200.5 mm", entries[2].Text)
}

// TestAKeptPrinterThatCannotBeIsForgotten: settings are a file that may hold
// anything.
func TestAKeptPrinterThatCannotBeIsForgotten(t *testing.T) {
	w := opened(t, withStops(0))
	w.app.Preferences().SetString(paperSetting, "A99")
	w.app.Preferences().SetFloat(barXSetting, 12)
	paper, bars := w.printer()
	assert.Equal(t, drawing.A4, paper)
	assert.True(t, bars.None())
}

func TestScaleSheet(t *testing.T) {
	w := opened(t, withStops(0, 36))
	dir := t.TempDir()
	w.askScale()
	w.retype(t, 0, filepath.Join(dir, "x-scale.dxf"))
	w.pick(t, 1, 2)
	assert.Equal(t, filepath.Join(dir, "x-scale.pdf"), find[*sheetEntry](w.overlay())[0].Text, "the name follows the kind")
	w.pick(t, 0, 1)
	assert.Equal(t, filepath.Join(dir, "x-strip.pdf"), find[*sheetEntry](w.overlay())[0].Text, "and the form")
	w.pick(t, 2, 2)
	assert.Contains(t, w.asked(t), "cannot be read to 0.1° by a vernier")
	w.answer(t, "scale.do")
	assert.Empty(t, names(t, dir))
	w.pick(t, 3, 1)
	w.retype(t, 1, "some")
	w.answer(t, "scale.do")
	assert.Empty(t, names(t, dir), "a rim that makes no sense")
	w.retype(t, 1, "261.5")
	w.answer(t, "scale.do")
	assert.Equal(t, []string{"x-strip.pdf"}, names(t, dir))
}

func TestCouponSheet(t *testing.T) {
	p := withStops(0, 36)
	p.Seat.Diameter, p.Catch.BodyAllowance, p.Catch.RecessAllowance, p.Catch.Protrusion = 4.5, 0.1, 0.5, 2
	w := opened(t, p)
	file := filepath.Join(t.TempDir(), "c.svg")
	w.askCoupon()
	w.retype(t, 0, file)
	w.answer(t, "coupon.put")
	assert.NotNil(t, w.overlay(), "nothing fitted that the plan does not have")
	w.answer(t, "coupon.write")
	assert.Contains(t, fileText(t, file), "<svg")
	w.press(fyne.KeyReturn)
	require.Nil(t, w.overlay())

	w.askCoupon()
	for list, entry := range map[int]int{1: 4, 2: 2, 3: 4} {
		w.pick(t, list, entry)
	}
	w.answer(t, "coupon.put")
	got := w.store.Plan()
	assert.Equal(t, 4.6, got.Seat.Diameter)
	assert.Equal(t, 0.0, got.Catch.BodyAllowance)
	assert.Equal(t, 0.7, got.Catch.RecessAllowance)
	assert.Equal(t, 1.8, got.Catch.Protrusion)
	assert.Equal(t, w.words.Text("coupon.edit"), w.undoName())
	w.undo()
	assert.True(t, plan.Equal(p, w.store.Plan()), "one edit, undone at once")
}

func TestExportUsesThePrinterLastTold(t *testing.T) {
	w := opened(t, withStops(0))
	w.keepPrinter(drawing.Letter, tile.Correction{X: 149})
	w.askExport()
	for _, s := range find[*widget.Select](w.overlay()) {
		assert.Equal(t, "Letter", s.Selected)
	}
}
