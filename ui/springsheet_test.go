package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/ui/units"
)

// openSpring opens the sheet of springs at a way to know one and types into its
// fields.
func (w *Window) openSpring(t testing.TB, kind string, typed ...string) {
	t.Helper()
	w.choose(t, "menu.edit", "menu.spring")
	picks := find[*sheetSelect](w.overlay())
	require.Same(t, picks[0], w.win.Canvas().Focused(), "the way is chosen first")
	picks[0].SetSelected(w.words.Text(kind))
	entries := find[*sheetEntry](w.overlay())
	for i, text := range typed {
		w.focus(entries[i])
		entries[i].TypedShortcut(&fyne.ShortcutSelectAll{})
		w.typeText(text)
	}
}

func TestASpringIsWorkedOut(t *testing.T) {
	w := opened(t, withStops(0))
	p := w.store.Plan().Clone()
	p.Catch.Protrusion, p.Catch.FreeForce, p.Catch.FlushForce = 2, 8, 20
	for _, c := range []struct {
		why         string
		kind        string
		typed       []string
		free, flush float64 // N, of a ball that stands out 2 mm
	}{
		{"as the plan has it", "spring.readings", nil, 8, 20},
		{"read on a kitchen scale", "spring.readings", []string{"2", "1 kg", "0.5 mm", "2.5 kg"}, 9.81, 29.42},
		{"in inches and pounds, read in the other order", "spring.readings", []string{"0", "5 lb", "1/16 in", "2.5 lb"}, 8.23, 22.24},
		{"rate and preload", "spring.rated", []string{"6", "8"}, 8, 20},
		{"with a decimal comma", "spring.rated", []string{"7,5", "10"}, 10, 25},
		// Shigley, Example 10-1: 0.037 in of wire, 0.437 in over the coil, 12.5
		// turns give 4.13 lbf/in or 0.7235 N/mm. 1.3 in long, let out to 1 in:
		// 7.62 mm × 0.7235 = 5.51 N, and 2 mm more.
		{"the handbook's coil", "spring.coil", []string{"0.037 in", "0.437 in", "12.5", "1.3 in", "1 in"}, 5.51, 6.96},
	} {
		require.NoError(t, w.store.Replace("start", p))
		w.openSpring(t, c.kind, c.typed...)
		w.answer(t, "spring.use")
		const hundredth = 0.0101 // N: what the sheet rounds to
		got := w.store.Plan().Catch
		assert.InDelta(t, c.free, got.FreeForce, hundredth, c.why)
		assert.InDelta(t, c.flush, got.FlushForce, hundredth, c.why)
		if c.typed != nil && got != p.Catch {
			assert.Equal(t, w.words.Text("edit.spring"), w.undoName(), "one edit, named")
			w.store.Undo()
			assert.Equal(t, p.Catch, w.store.Plan().Catch, c.why)
		}
	}
}

// What cannot be a spring is said, in the window's language, and not used.
func TestWhatIsNoSpringIsExplained(t *testing.T) {
	w := opened(t, withStops(0))
	for _, c := range []struct {
		why, kind string
		typed     []string
		says      string
	}{
		{"no force", "spring.readings", []string{"2", "much"}, "“much” is not a force"},
		{"it presses less further in", "spring.readings", []string{"2", "20", "0", "8"}, "are no spring"},
		{"a rate in the wrong unit", "spring.rated", []string{"6 N"}, "is not a spring rate"},
		{"more than a plan takes", "spring.rated", []string{"900", "8"}, "catch.flush_force"},
		{"it would lie slack", "spring.coil", []string{"0.6", "5", "10", "14", "15"}, "would lie slack"},
		{"its turns would meet", "spring.coil", []string{"0.6", "5", "10", "14", "7"}, "turns laid close"},
		{"thicker than the coil", "spring.coil", []string{"3", "5"}, "mean coil diameter"},
	} {
		before := w.store.Plan()
		w.openSpring(t, c.kind, c.typed...)
		assert.Contains(t, w.asked(t), c.says, c.why)
		w.answer(t, "spring.use")
		assert.NotNil(t, w.overlay(), "%s: it stays to be mended", c.why)
		assert.Equal(t, before, w.store.Plan(), c.why)
		w.press(fyne.KeyEscape)
	}
}

// The fields begin with the plan's numbers as the window shows them.
func TestTheSpringSheetShowsTheWindowsUnits(t *testing.T) {
	w := opened(t, withStops(0))
	w.setUnits(units.Style{Lengths: units.Inches})
	w.speak("de")
	w.openSpring(t, "spring.readings")
	assert.Equal(t, "0,07874", find[*sheetEntry](w.overlay())[0].Text, "2 mm")
	assert.Contains(t, w.asked(t), "6 N/mm")
	w.openedSheet(t).escape()
	w.openSpring(t, "spring.coil", "0,6 mm", "20 mm")
	assert.Contains(t, w.asked(t), "üblich sind 4 bis 12")
}

// openedSheet returns the sheet that lies over the window.
func (w *Window) openedSheet(t testing.TB) *sheet {
	t.Helper()
	require.NotEmpty(t, w.sheets)
	return w.sheets[len(w.sheets)-1]
}
