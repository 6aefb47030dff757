package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
	"stopwright/detent/proving"
)

// wheelOver turns the wheel by one notch down with the pointer on an object.
func (w *Window) wheelOver(o fyne.CanvasObject) {
	const notch, in = -25, 6 // px of layout
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(o)
	test.Scroll(w.win.Canvas(), at.AddXY(in, in), 0, notch)
}

// A field under the pointer does not keep the wheel to itself.
func TestTheWheelScrollsFormsWhereTheirFieldsAre(t *testing.T) {
	w := opened(t, withStops(0))
	w.wheelOver(w.field(t, "seat.diameter"))
	assert.Positive(t, w.parts.scroll.Offset.Y)
}

func TestTheWheelScrollsTheStopsWhereTheirFieldsAre(t *testing.T) {
	var many []float64
	for a := range 60 {
		many = append(many, float64(a))
	}
	w := opened(t, withStops(many...))
	w.wheelOver(w.row(t, 3).angle)
	assert.Positive(t, w.stops.list.GetScrollOffset())
	for range 200 { // further than the list is long
		w.wheelOver(w.stops.list)
	}
	assert.Equal(t, len(many)-1, lastRow(w), "the end is in sight and no further")
}

// lastRow returns the last stop in sight in the list.
func lastRow(w *Window) int {
	last := -1
	for _, r := range find[*stopRow](w.stops.list) {
		last = max(last, r.index)
	}
	return last
}

// What lies below the wheel is still pressed, and takes the keys.
func TestTheWheelCoversNothing(t *testing.T) {
	w := opened(t, withStops(0, 20))
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(w.row(t, 1).both)
	const in = 12 // px of layout: in the box to tick
	test.TapCanvas(w.win.Canvas(), at.AddXY(in, w.row(t, 1).both.Size().Height/2))
	assert.True(t, w.store.Plan().Stops[1].BothSides)
}

// A list in a form takes the wheel until it is at its end.
func TestTheWheelScrollsAListInAForm(t *testing.T) {
	p := withStops(0)
	for range 3 * rowsShown {
		p.Readings = append(p.Readings, plan.Reading{Measured: 0.1, Method: string(proving.Typed), Date: "2026-11-20"})
	}
	w := setUp(t, p, proofTab)
	form, list := w.setting.proof.object, w.setting.proof.log.list
	turn := func(over fyne.CanvasObject) {
		const notch, in = -25, 6 // px of layout
		at := fyne.CurrentApp().Driver().AbsolutePositionForObject(over).AddXY(in, in)
		// Not by the test driver's own scrolling, which does not say where.
		find[*wheel](w.setting.object)[0].Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{AbsolutePosition: at}, Scrolled: fyne.NewDelta(0, notch)})
	}
	turn(w.setting.proof.form.values[0])
	assert.Positive(t, form.Offset.Y, "over a field")
	form.ScrollToBottom()
	end := form.Offset.Y
	turn(list)
	assert.Positive(t, list.GetScrollOffset())

	const short = 2 // px of layout: the form is not at its own end
	form.ScrollToOffset(fyne.NewPos(0, end-short))
	list.ScrollToBottom()
	turn(list)
	assert.Equal(t, end, form.Offset.Y, "the list is at its end")
}
