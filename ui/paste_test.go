package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// offered returns the lines that the list of a sheet shows, in or out of sight.
func (w *Window) offered(t testing.TB) []string {
	t.Helper()
	lists := find[*sheetList](w.overlay())
	require.Len(t, lists, 1)
	out := []string{}
	for i := range lists[0].Length() {
		row := lists[0].CreateItem()
		lists[0].UpdateItem(i, row)
		out = append(out, strings.TrimSpace(texts(row)))
	}
	return out
}

// paste puts text on the clipboard and chooses the menu's item.
func (w *Window) paste(t testing.TB, text string) {
	t.Helper()
	w.app.Clipboard().SetContent(text)
	w.choose(t, "menu.edit", "menu.paste")
}

func TestAListIsShownBeforeItIsAdded(t *testing.T) {
	w := opened(t, withStops(0, 36))
	w.stops.both.SetChecked(true)
	w.paste(t, "Angle\tSides\n36\t5\n12,8\t14\n10,20,30\n\nabc\n400\n60\t3")
	assert.Equal(t, []float64{0, 36}, w.angles(), "nothing is added yet")
	assert.Contains(t, w.asked(t), "To add: 3. Not understood: 3.")
	assert.Equal(t, []string{
		"Line 4: “10,20,30”", w.words.Text("why.commaunclear"),
		"Line 6: “abc”", w.words.Text("why.notunderstood"),
		"Line 7: “400”", "400 will not do: it must be -360 to 360 degrees",
		"−36°, 5", // its other side is there
		"±12.8°, 14",
		"±60°, 3",
	}, w.offered(t), "every line that is not understood, by number, text and reason")

	tap(find[*sheetCheck](w.overlay())[0])
	assert.Contains(t, w.asked(t), "To add: 2. Already in the plan: 1. Not understood: 3.")
	assert.Contains(t, w.offered(t), "36°, 5, already in the plan")
	assert.Contains(t, w.offered(t), "60°, 3")

	w.answer(t, "offer.add")
	assert.Equal(t, []float64{0, 12.8, 36, 60}, w.angles())
	assert.Equal(t, "14", w.store.Plan().Stops[1].Label)
	assert.Equal(t, "Add 2 stops", w.undoName())
	assert.Same(t, w.stops.add, w.win.Canvas().Focused())
	w.store.Undo()
	assert.Equal(t, []float64{0, 36}, w.angles(), "one step to undo")
}

func TestAListIsPutAsideByEscape(t *testing.T) {
	w := opened(t, withStops(0))
	w.paste(t, "20\n30")
	w.press(fyne.KeyEscape)
	assert.Nil(t, w.overlay())
	assert.Equal(t, []float64{0}, w.angles())
	assert.Empty(t, w.undoName())
}

func TestAListWithNothingNewCannotBeAdded(t *testing.T) {
	for text, why := range map[string]string{
		"0\n-36\n36": "all of it is there",
		"abc\nxyz":   "none of it is understood",
	} {
		p := plan.Default()
		p.Stops = []plan.Stop{{Angle: 0}, {Angle: 36, BothSides: true}}
		w := opened(t, p)
		w.paste(t, text)
		w.press(fyne.KeyReturn)
		assert.NotNil(t, w.overlay(), "the sheet stays: %s", why)
		assert.Len(t, w.angles(), 2, why)
	}
}

// A list that has negative angles has its other side itself.
func TestAListOfBothSidesIsNotDoubled(t *testing.T) {
	w := opened(t, plan.Default())
	w.paste(t, "-30\n0\n30")
	assert.False(t, find[*sheetCheck](w.overlay())[0].Checked)
	w.answer(t, "offer.add")
	for _, s := range w.store.Plan().Stops {
		assert.False(t, s.BothSides)
	}
	assert.Equal(t, []float64{-30, 0, 30}, w.angles())
}

func TestPastingLinesIntoTheLineOnTop(t *testing.T) {
	for text, isList := range map[string]bool{
		"20\n30": true, "20\t5 sides": true, "20\r\n": false, "22,5": false, "20; 30": false,
	} {
		w := opened(t, plan.Default())
		w.app.Clipboard().SetContent(text)
		w.focus(w.stops.add)
		w.stops.add.TypedShortcut(&fyne.ShortcutPaste{Clipboard: w.app.Clipboard()})
		assert.Equal(t, isList, w.overlay() != nil, "%q", text)
		if isList {
			assert.Empty(t, w.stops.add.Text, "%q", text)
			continue
		}
		assert.Equal(t, strings.TrimSpace(text), strings.TrimSpace(w.stops.add.Text))
	}
}

func TestPastingNothingSaysSo(t *testing.T) {
	w := opened(t, plan.Default())
	w.paste(t, " \n")
	assert.Nil(t, w.overlay())
	assert.Equal(t, w.words.Text("paste.empty"), w.status.Text)
}

// More stops than a plan may have are refused before they are added.
func TestAListTooLongForThePlan(t *testing.T) {
	w := opened(t, withStops(0))
	w.paste(t, column(plan.MaxSeats))
	assert.Contains(t, w.asked(t), "a list of 10001")
	w.press(fyne.KeyReturn)
	assert.NotNil(t, w.overlay())
	assert.Equal(t, 1, len(w.angles()))
}

// column is a list of n different angles, one a line.
func column(n int) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(measure.Fixed(float64(i+1)/100, 2) + "\n")
	}
	return b.String()
}

// Thousands of stops that no plan may have are all named.
func TestEveryAngleOutOfRangeIsNamed(t *testing.T) {
	w := opened(t, plan.Default())
	const many = 2500 // a plan tells no more than 1000 problems at once
	w.paste(t, strings.Repeat("361\n", many)+"20")
	assert.Contains(t, w.asked(t), "To add: 1. Not understood: 2500.")
	assert.Len(t, w.offered(t), 2*many+1)
}

func TestEveryReasonHasItsText(t *testing.T) {
	w := opened(t, plan.Default())
	for reason := measure.NotUnderstood; reason <= measure.TooMany; reason++ {
		key := reasonKeys[reason]
		assert.True(t, w.words.Has(key), "reason %d: %q", reason, key)
	}
}
