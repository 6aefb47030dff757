package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

func TestAnglesAreTypedAsPeopleWriteThem(t *testing.T) {
	for _, c := range []struct {
		typed string
		want  []float64
		why   string
	}{
		{"22.5", []float64{22.5}, "a decimal point"},
		{"22,5", []float64{22.5}, "a decimal comma"},
		{"31°37'", []float64{31 + 37.0/60}, "degrees and minutes"},
		{"180/7", []float64{180.0 / 7}, "a division"},
		{"−36", []float64{-36}, "a true minus sign"},
		{"54; 0 ;36;20", []float64{0, 20, 36, 54}, "several, put in order"},
		{"10;", []float64{10}, "a semicolon too many"},
		{" 5 ; 7,5 ; ", []float64{5, 7.5}, "spaces"},
	} {
		w := opened(t, plan.Default())
		w.stops.both.SetChecked(false)
		w.typeInto(w.stops.add, c.typed)
		w.press(fyne.KeyReturn)
		assert.InDeltaSlice(t, c.want, w.angles(), angleSlack, c.why)
		assert.Empty(t, w.stops.add.Text, "%s: ready for the next", c.why)
		assert.Same(t, w.stops.add, w.win.Canvas().Focused(), c.why)
		assert.False(t, w.stops.why.object.Visible(), c.why)
		w.store.Undo()
		assert.Empty(t, w.angles(), "%s: one edit", c.why)
	}
}

func TestNonsenseIsExplainedAndNothingIsLost(t *testing.T) {
	for typed, about := range map[string]string{
		"abc":       "abc",
		"10; x; 20": "x",
		"1,234.5":   "1,234.5",
		"180/0":     "180/0",
		"361":       "361",
		"10; -400":  "-400",
		";;":        "",
		"10;;20":    "",
		"😀":         "",
	} {
		w := opened(t, withStops(5))
		w.typeInto(w.stops.add, typed)
		w.press(fyne.KeyReturn)
		assert.Equal(t, []float64{5}, w.angles(), typed)
		assert.Equal(t, typed, w.stops.add.Text, "it can be put right")
		require.True(t, w.stops.why.object.Visible(), typed)
		assert.Contains(t, w.stops.why.label.Text, about)
		assert.NotEmpty(t, w.stops.why.label.Text)

		w.stops.add.SetText("")
		assert.False(t, w.stops.why.object.Visible(), "an empty line needs no word")
	}
}

func TestAnEmptyLineAddsNothing(t *testing.T) {
	w := opened(t, withStops(5))
	w.focus(w.stops.add)
	w.press(fyne.KeyReturn)
	assert.Equal(t, []float64{5}, w.angles())
}

// On both sides means the other side too, where there is one.
func TestAddingOnBothSides(t *testing.T) {
	w := opened(t, plan.Default())
	require.True(t, w.stops.both.Checked)
	w.typeInto(w.stops.add, "0; 36; 180; 90")
	tap(w.addButton(t))
	both := map[float64]bool{}
	for _, s := range w.store.Plan().Stops {
		both[s.Angle] = s.BothSides
	}
	assert.Equal(t, map[float64]bool{0: false, 36: true, 90: true, 180: false}, both)
	assert.Contains(t, w.stops.count.Text, "6")

	w.stops.both.SetChecked(false)
	w.typeInto(w.stops.add, "45")
	w.press(fyne.KeyReturn)
	assert.False(t, w.store.Plan().Stops[w.store.Selection().Lead].BothSides)
}

// addButton returns the button beside the line on top.
func (w *Window) addButton(t testing.TB) *widget.Button {
	for _, b := range find[*widget.Button](w.stops.object) {
		if b.Text == w.words.Text("stops.add") {
			return b
		}
	}
	require.Fail(t, "no button")
	return nil
}

func TestAStopIsEditedInPlace(t *testing.T) {
	w := opened(t, withStops(0, 20, 36))
	w.typeInto(w.row(t, 1).angle, "22,5")
	assert.Equal(t, []float64{0, 20, 36}, w.angles(), "not before it is handed in")
	assert.Equal(t, 1, w.store.Selection().Lead, "a field that is typed in shows its stop on the plate")
	w.press(fyne.KeyReturn)
	assert.Equal(t, []float64{0, 22.5, 36}, w.angles())
	assert.Equal(t, "22.5", w.row(t, 1).angle.Text)

	w.typeInto(w.row(t, 2).label, "5 sides")
	w.focus(w.row(t, 0).angle) // leaving hands in
	assert.Equal(t, "5 sides", w.store.Plan().Stops[2].Label)

	tap(w.row(t, 2).both)
	assert.True(t, w.store.Plan().Stops[2].BothSides)
	assert.Len(t, w.store.Report().Plate.Seats, 4)
	w.store.Undo()
	assert.False(t, w.row(t, 2).both.Checked)

	buttons := find[*widget.Button](w.row(t, 0).box)
	require.Len(t, buttons, 1)
	tap(buttons[0])
	assert.Equal(t, []float64{22.5, 36}, w.angles())
	assert.Len(t, find[*stopRow](w.stops.list), 2)
}

func TestAWrongAngleStaysToBePutRight(t *testing.T) {
	for _, typed := range []string{"north", "400", "1/0", ""} {
		w := opened(t, withStops(0, 20))
		row := w.row(t, 1)
		w.focus(row.angle)
		w.press(fyne.KeyBackspace) // takes off what was there, all of it selected
		w.typeText(typed)
		assert.True(t, w.stops.why.object.Visible(), "%q is told at once", typed)
		w.press(fyne.KeyReturn)
		assert.Equal(t, []float64{0, 20}, w.angles(), typed)
		assert.Equal(t, typed, row.angle.Text)
		w.press(fyne.KeyEscape)
		assert.Equal(t, "20", row.angle.Text)
		assert.False(t, w.stops.why.object.Visible(), typed)
	}
}

func TestAnythingCanBeALabel(t *testing.T) {
	for why, label := range map[string]string{
		"other scripts":          "六角 шесть ستة",
		"composed letters":       "e\u0301 👩‍🔧 🇺🇳",
		"controls":               "\u202eright to left\u200b\ufeff",
		"what files must escape": `"\<>&{{.Name}}` + "\u2028",
		"no letter at all":       "\ufffd",
	} {
		w := opened(t, withStops(0, 20))
		w.typeInto(w.row(t, 1).label, label)
		w.press(fyne.KeyReturn)
		require.Equal(t, label, w.store.Plan().Stops[1].Label, why)
		assert.Equal(t, label, w.row(t, 1).label.Text, why)
		w.showPage(chartPage)
		assert.NotPanics(t, func() { w.win.Canvas().Capture() }, why)
	}
}

func TestALabelThatIsTooLongIsRefused(t *testing.T) {
	w := opened(t, withStops(0, 20))
	row := w.row(t, 1)
	w.focus(row.label)
	row.label.SetText(strings.Repeat("x", plan.MaxText+1))
	w.press(fyne.KeyReturn)
	assert.Empty(t, w.store.Plan().Stops[1].Label)
	assert.True(t, w.stops.why.object.Visible())
}

// many returns n stops a degree apart.
func many(n int) plan.Plan {
	p := plan.Default()
	for i := range n {
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(i)})
	}
	return p
}

// The list uses one row for many stops as it scrolls. What is half typed for
// one must not go to another.
func TestAHalfTypedFieldStaysWithItsStop(t *testing.T) {
	w := opened(t, many(60))
	w.typeInto(w.row(t, 2).angle, "2.25")
	w.stops.list.ScrollToBottom()
	w.row(t, 59) // in sight
	w.stops.list.ScrollToTop()
	want := many(60)
	want.Stops[2].Angle = 2.25
	assert.Equal(t, want.Stops, w.store.Plan().Stops, "handed in, to its own stop")
	assert.Equal(t, "2.25", w.row(t, 2).angle.Text)
	for _, r := range find[*stopRow](w.stops.list) {
		assert.Equal(t, r.stop().Label, r.label.Text)
		assert.Equal(t, r.angle.value(), r.angle.Text)
	}
}

// Half-typed nonsense cannot be handed in, and stays with nobody.
func TestHalfTypedNonsenseGoesToNoOtherStop(t *testing.T) {
	w := opened(t, many(60))
	w.typeInto(w.row(t, 2).angle, "2..")
	for range 3 {
		w.stops.list.ScrollToBottom()
		w.stops.list.ScrollToTop()
	}
	w.focus(w.stops.add)
	assert.Equal(t, many(60).Stops, w.store.Plan().Stops)
	for _, r := range find[*stopRow](w.stops.list) {
		assert.Equal(t, r.angle.value(), r.angle.Text)
	}
}

// Removing, sorting and undoing move stops to other places of the list. What is
// half typed for one must not go to the one that takes its place.
func TestAHalfTypedFieldDoesNotGoToAStopThatTookThePlace(t *testing.T) {
	for why, c := range map[string]struct {
		do   func(w *Window)
		want []float64
	}{
		"removed by the menu": {
			func(w *Window) { w.choose(t, "menu.edit", "menu.remove") }, []float64{10, 0, 20},
		},
		"sorted": {
			func(w *Window) { w.choose(t, "menu.edit", "menu.sort") }, []float64{0, 10, 20, 32},
		},
		"removed otherwise": {
			func(w *Window) { w.removeStops(0) }, []float64{10, 0, 20},
		},
		"loaded": {
			func(w *Window) { w.store.Load(withStops(1, 2), "") }, []float64{1, 2},
		},
	} {
		w := opened(t, withStops(30, 10, 0, 20))
		w.typeInto(w.row(t, 0).angle, "32")
		c.do(w)
		w.focus(w.stops.add)
		assert.Equal(t, c.want, w.angles(), why)
	}
}

func TestSelectedStopsAreShownInTheList(t *testing.T) {
	w := opened(t, many(60))
	w.store.SelectStop(50)
	w.row(t, 50) // brought into sight
	w.stops.list.OnSelected(3)
	assert.Equal(t, []int{3}, w.store.Selection().Stops)
	w.store.SelectStop(-1)
	assert.Equal(t, -1, w.store.Selection().Lead)
}

func TestStopsAtFaultAreMarkedByASign(t *testing.T) {
	w := opened(t, withStops(0, 1, 90))
	assert.NotNil(t, w.row(t, 0).sign.Resource)
	assert.NotNil(t, w.row(t, 1).sign.Resource)
	assert.Nil(t, w.row(t, 2).sign.Resource)
}
