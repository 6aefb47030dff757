package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
)

// buttons returns the plain buttons in an object.
func (w *Window) buttons(o fyne.CanvasObject) []*widget.Button { return find[*widget.Button](o) }

// asksAbout reports whether the line below asks, and what.
func (w *Window) asksAbout() string {
	if !w.stops.fence.object.Visible() {
		return ""
	}
	return w.stops.fence.label.Text
}

const about675 = "67.5° looks like an angle read from the fence: from square it is 22.5° (8 sides)."

func TestAnAngleFromTheFenceIsAskedAbout(t *testing.T) {
	w := opened(t, withStops(0))
	w.stops.both.SetChecked(true)
	w.typeInto(w.stops.add, "67.5")
	w.press(fyne.KeyReturn)
	assert.Equal(t, []float64{0, 67.5}, w.angles(), "it is added all the same")
	assert.Equal(t, about675, w.asksAbout())
	assert.Nil(t, w.overlay(), "nothing is in the way")
	assert.Same(t, w.stops.add, w.win.Canvas().Focused(), "and typing goes on")
	assert.Equal(t, "Use 22.5°", w.stops.fence.use.Text)

	tap(w.stops.fence.use)
	assert.Equal(t, []float64{0, 22.5}, w.angles())
	assert.True(t, w.store.Plan().Stops[1].BothSides, "the rest of the stop stays")
	assert.Empty(t, w.asksAbout())
	assert.Equal(t, "Move stop 67.5°", w.undoName())
	w.store.Undo()
	assert.Equal(t, []float64{0, 67.5}, w.angles(), "one step to undo")
	assert.Empty(t, w.asksAbout(), "answered once")
}

func TestTheQuestionIsGivenUp(t *testing.T) {
	for why, do := range map[string]func(*Window){
		"kept":             func(w *Window) { tap(w.stops.fence.keep) },
		"undone":           func(w *Window) { w.store.Undo() },
		"removed":          func(w *Window) { w.removeStops(1) },
		"moved":            func(w *Window) { w.typeInto(w.row(t, 1).angle, "50"); w.press(fyne.KeyReturn) },
		"another plan":     func(w *Window) { w.store.Load(withStops(0, 67.5), "") },
		"a series made it": func(w *Window) { _ = w.addStops(plan.Stop{Angle: 135}) },
	} {
		w := opened(t, withStops(0))
		w.stops.both.SetChecked(false)
		w.typeInto(w.stops.add, "67.5")
		w.press(fyne.KeyReturn)
		assert.NotEmpty(t, w.asksAbout(), why)
		do(w)
		assert.Empty(t, w.asksAbout(), why)
		assert.NotContains(t, w.angles(), 22.5, why)
	}
}

func TestAnAngleTypedInARowIsAskedAbout(t *testing.T) {
	w := opened(t, withStops(0, 20))
	w.typeInto(w.row(t, 1).angle, "75")
	w.press(fyne.KeyReturn)
	assert.Contains(t, w.asksAbout(), "15° (12 sides)")
	tap(w.stops.fence.use)
	assert.Equal(t, []float64{0, 15}, w.angles())
}

func TestSeveralAreAskedAboutInTurn(t *testing.T) {
	w := opened(t, withStops(0))
	w.typeInto(w.stops.add, "67.5; 20; -75")
	w.press(fyne.KeyReturn)
	assert.Equal(t, about675, w.asksAbout())
	tap(w.stops.fence.keep)
	assert.Contains(t, w.asksAbout(), "−75°")
	tap(w.stops.fence.use)
	assert.Equal(t, []float64{-15, 0, 20, 67.5}, w.angles())
	assert.Empty(t, w.asksAbout())
}

func TestAPastedAngleIsAskedAbout(t *testing.T) {
	w := opened(t, withStops(0))
	w.paste(t, "10\n67.5\n50")
	assert.Empty(t, w.asksAbout(), "not before it is added")
	w.answer(t, "offer.add")
	assert.Equal(t, about675, w.asksAbout())
	assert.Equal(t, w.stops.head.MinSize().Height, w.stops.head.Size().Height, "no row lies over the answers")
}

// Where the plan has the stop from square already, the one from the fence goes.
func TestUseWhatIsThereAlready(t *testing.T) {
	p := withStops(0, 30)
	p.Stops = append(p.Stops, plan.Stop{Angle: 22.5, BothSides: true})
	w := opened(t, p)
	w.stops.both.SetChecked(false)
	w.typeInto(w.stops.add, "67.5")
	w.press(fyne.KeyReturn)
	assert.Equal(t, about675, w.asksAbout())
	tap(w.stops.fence.use)
	assert.Equal(t, []float64{0, 30, 22.5}, w.angles())
	w.store.Undo()
	assert.Len(t, w.angles(), 4, "one step to undo")
}

func TestEqualDivisionsAreNotAskedAbout(t *testing.T) {
	w := opened(t, withStops(0))
	for _, typed := range []string{"22.5", "45", "67.5", "90", "112.5", "60"} {
		w.typeInto(w.stops.add, typed)
		w.press(fyne.KeyReturn)
		assert.Empty(t, w.asksAbout(), typed)
	}
	w = opened(t, withStops(0))
	w.typeInto(w.stops.add, "22.5; 45; 67.5")
	w.press(fyne.KeyReturn)
	assert.Empty(t, w.asksAbout(), "typed at once")
}
