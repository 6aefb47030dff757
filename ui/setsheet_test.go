package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// openSet opens the sheet of sets at a kind and types into its fields.
func (w *Window) openSet(t testing.TB, kind string, typed ...string) {
	t.Helper()
	w.choose(t, "menu.edit", "menu.set")
	picks := find[*sheetSelect](w.overlay())
	require.Len(t, picks, 1)
	require.Same(t, picks[0], w.win.Canvas().Focused(), "the kind is chosen first")
	picks[0].SetSelected(w.words.Text(kind))
	entries := find[*sheetEntry](w.overlay())
	require.GreaterOrEqual(t, len(entries), len(typed))
	for i, text := range typed {
		w.focus(entries[i])
		entries[i].TypedShortcut(&fyne.ShortcutSelectAll{})
		w.typeText(text)
	}
}

func TestASetIsShownWhileItIsTyped(t *testing.T) {
	for _, c := range []struct {
		kind  string
		typed []string
		want  []string
		why   string
	}{
		{"set.polygons", []string{"5, 8"}, []string{"±36°, 5 sides", "±22.5°, 8 sides"}, "mitres with the sides as labels"},
		{"set.polygons", []string{"3-5"}, []string{"±60°, 3 sides", "±45°, 4 sides", "±36°, 5 sides"}, "from … to"},
		{"set.turn", []string{"4", "0"}, []string{"0°", "90°", "180°", "−90°"}, "a turn has both sides already"},
		{"set.arc", []string{"0", "60", "3"}, []string{"0°", "±20°", "±40°", "±60°"}, "both ends"},
		{"set.steps", []string{"10", "20", "2,5"}, []string{"±10°", "±12.5°", "±15°", "±17.5°", "±20°"}, "by steps"},
		{"set.moulding", []string{"38", "90"}, []string{"±31.619°, moulding 38°, corner 90°"}, "as published"},
		{"set.moulding", []string{"52", "135"}, []string{"±18.077°, moulding 52°, corner 135°"}, "as published"},
	} {
		p := plan.Default()
		p.Travel = plan.Span{From: -180, To: 180}
		w := opened(t, p)
		w.openSet(t, c.kind, c.typed...)
		assert.Equal(t, c.want, w.offered(t), c.why)
		assert.NotContains(t, w.asked(t), "travel", c.why)
		w.press(fyne.KeyReturn)
		assert.Nil(t, w.overlay(), "%s: Enter adds", c.why)
		assert.Len(t, w.angles(), len(c.want), c.why)
		w.store.Undo()
		assert.Empty(t, w.angles(), "%s: one step to undo", c.why)
	}
}

func TestASetLeavesOutWhatIsThere(t *testing.T) {
	w := opened(t, withStops(0, 36))
	w.openSet(t, "set.polygons", "4-6")
	find[*sheetCheck](w.overlay())[0].SetChecked(false)
	assert.Contains(t, w.asked(t), "To add: 2. Already in the plan: 1.")
	assert.Equal(t, []string{"45°, 4 sides", "30°, 6 sides", "36°, 5 sides, already in the plan"}, w.offered(t))
	w.answer(t, "offer.add")
	assert.Equal(t, []float64{0, 30, 36, 45}, w.angles(), "each where it belongs")
	assert.Equal(t, "Add 2 stops", w.undoName())
	assert.Equal(t, "4 sides", w.store.Plan().Stops[3].Label)
}

// The bevel is for the saw: it is said, and makes no stop.
func TestAMouldingSaysTheBevel(t *testing.T) {
	w := opened(t, plan.Default())
	w.openSet(t, "set.moulding", "45", "135")
	assert.Contains(t, w.asked(t), "16.325°")
	assert.Contains(t, w.asked(t), "15.7°")
	assert.Contains(t, find[*sheetCheck](w.overlay())[0].Text, "inside and outside")
	assert.Len(t, w.offered(t), 1)
}

func TestASetBeyondTheTravelSaysSo(t *testing.T) {
	p := plan.Default()
	p.Travel = plan.Span{From: -60, To: 60}
	w := opened(t, p)
	w.openSet(t, "set.turn", "8", "0")
	assert.Contains(t, w.asked(t), "Beyond the table's travel: 5.", "±90, ±135 and 180")
}

// A full turn is written the way the table can make it.
func TestAFullTurnLiesInTheTravel(t *testing.T) {
	p := plan.Default()
	p.Travel = plan.Span{From: 0, To: 360}
	w := opened(t, p)
	w.openSet(t, "set.turn", "4", "0")
	assert.Equal(t, []string{"0°", "90°", "180°", "270°"}, w.offered(t))
}

func TestWhatIsWrongWithASetIsNamed(t *testing.T) {
	for _, c := range []struct {
		kind  string
		typed []string
		want  string
	}{
		{"set.polygons", []string{"2-5"}, "Sides, as 3-8, 12: write numbers from 3 to 24"},
		{"set.turn", []string{"0"}, "Parts: must be 1 to 10000"},
		{"set.turn", []string{"x"}, "Parts: write a whole number"},
		{"set.arc", []string{"0", "400"}, "To: must be -360 to 360"},
		{"set.steps", []string{"0", "60", "0"}, "Step: must be more than 0"},
		{"set.steps", []string{"abc"}, "From: “abc” is not an angle"},
		{"set.moulding", []string{"91"}, "Spring angle, from the wall: must be 0 to 90"},
		{"set.moulding", []string{"38", "0"}, "Corner between the walls: must be more than 0, and 180 at most"},
	} {
		w := opened(t, plan.Default())
		w.openSet(t, c.kind, c.typed...)
		assert.Contains(t, w.asked(t), c.want)
		assert.Empty(t, w.offered(t))
		w.press(fyne.KeyReturn)
		assert.NotNil(t, w.overlay(), "%s: nothing to add", c.want)
		w.press(fyne.KeyEscape)
		assert.Nil(t, w.overlay())
		assert.Empty(t, w.angles())
	}
}

// Every part of the sheet gives its answers by Enter and Escape.
func TestASetByKeyboardAlone(t *testing.T) {
	w := opened(t, plan.Default())
	w.openSet(t, "set.polygons", "6")
	focusable := []fyne.Focusable{
		find[*sheetSelect](w.overlay())[0], find[*sheetEntry](w.overlay())[0],
		find[*sheetCheck](w.overlay())[0], find[*sheetList](w.overlay())[0],
	}
	for _, o := range focusable {
		w.focus(o)
		w.press(fyne.KeyEscape)
		assert.Nil(t, w.overlay(), "%T", o)
		w.openSet(t, "set.polygons", "6")
	}
	for range len(setKinds) {
		w.focus(find[*sheetSelect](w.overlay())[0])
		w.press(fyne.KeyRight)
	}
	assert.Equal(t, []string{"±60°, 3 sides", "±45°, 4 sides", "±36°, 5 sides", "±30°, 6 sides", "±25.714°, 7 sides", "±22.5°, 8 sides"}, w.offered(t), "round to where it began, the fields as at first")
	w.focus(find[*sheetCheck](w.overlay())[0])
	w.win.Canvas().Focused().TypedRune(' ')
	assert.Equal(t, "60°, 3 sides", w.offered(t)[0])
	w.press(fyne.KeyReturn)
	assert.Len(t, w.angles(), 6)
}

func TestTheSetsButton(t *testing.T) {
	w := opened(t, plan.Default())
	for _, b := range w.buttons(w.stops.object) {
		if b.Text == w.words.Text("stops.set") {
			tap(b)
		}
	}
	assert.True(t, strings.Contains(w.asked(t), "To add"))
}
