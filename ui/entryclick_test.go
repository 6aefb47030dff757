package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"
)

// pressAt presses the mouse on a field and lets it go there.
func (w *Window) pressAt(e *valueEntry, x float32) {
	m := &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, e.Size().Height/2)}, Button: desktop.MouseButtonPrimary}
	e.MouseDown(m)
	e.MouseUp(m)
}

// A size is typed over where it is clicked: 4.5 and 15/64" do not run together.
func TestAFieldThatIsClickedIsTypedOver(t *testing.T) {
	w := opened(t, withStops(0))
	e := w.field(t, "seat.diameter")
	w.pressAt(e, 20)
	assert.Equal(t, e.Text, e.SelectedText())
	w.typeText("15/64\"")
	w.press(fyne.KeyReturn)
	assert.Equal(t, 5.953125, w.store.Plan().Seat.Diameter)
}

func TestASecondClickSetsTheCursor(t *testing.T) {
	w := opened(t, withStops(0))
	e := w.field(t, "seat.depth")
	w.pressAt(e, 2)
	w.pressAt(e, 2)
	assert.Empty(t, e.SelectedText())
	w.typeText("1")
	w.press(fyne.KeyReturn)
	assert.Equal(t, 16.0, w.store.Plan().Seat.Depth)
}

// Pulling the mouse over a field selects what it went over, from the first press
// as well.
func TestDraggingSelectsAPart(t *testing.T) {
	w := opened(t, withStops(0))
	e := w.field(t, "seat.drill_point")
	end := e.Size().Width - 2
	e.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(end, 10)}, Button: desktop.MouseButtonPrimary})
	const left = -4 // px of layout: not over a whole letter
	e.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(end+left, 10)}, Dragged: fyne.NewDelta(left, 0)})
	e.DragEnd()
	assert.NotEqual(t, e.Text, e.SelectedText())
}

// Notes are added to.
func TestNotesThatAreClickedStay(t *testing.T) {
	p := withStops(0)
	p.Notes = "Drill the base first."
	w := opened(t, p)
	e := w.field(t, "notes")
	w.pressAt(e, 20)
	assert.Empty(t, e.SelectedText())
}
