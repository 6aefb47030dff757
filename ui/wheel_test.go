package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
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
