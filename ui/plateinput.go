package ui

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// MouseDown takes the focus and remembers what is pressed.
func (v *plateView) MouseDown(e *desktop.MouseEvent) {
	v.w.focus(v)
	v.press = pressed{at: e.Position, button: e.Button, hit: v.under(e.Position)}
}

// MouseUp ends a click: on a seat it selects its stop, with Shift or Ctrl
// besides those selected; on a ring it adds one.
func (v *plateView) MouseUp(e *desktop.MouseEvent) {
	if v.drag != nil || v.press.button != desktop.MouseButtonPrimary || e.Button != v.press.button {
		return
	}
	s := v.w.store
	switch h := v.press.hit; {
	case h.seat >= 0 && e.Modifier&(fyne.KeyModifierShift|fyne.KeyModifierShortcutDefault) != 0:
		s.ToggleStop(s.StopOfSeat(h.seat))
	case h.seat >= 0:
		s.SelectStop(s.StopOfSeat(h.seat))
	case h.feature >= 0:
		s.SelectFeature(h.feature)
		v.w.parts.showFeature(h.feature)
	case h.catch >= 0:
		v.w.report(v.w.addStops(v.w.newStop(h)))
	default:
		s.SelectStop(-1)
	}
}

// Dragged moves what was pressed: a seat along its ring, a ring, an edge or a
// feature, the table by its rim, else the paper.
func (v *plateView) Dragged(e *fyne.DragEvent) {
	if v.drag == nil {
		v.held = v.view()
		v.drag = v.begin(e.Position)
	}
	v.drag.to(e.Position)
}

// DragEnd lets go.
func (v *plateView) DragEnd() {
	if v.drag != nil {
		v.drag.end()
		v.drag = nil
		v.Refresh() // the plate may have another size now
	}
}

// newStop returns the stop that a click on a ring asks for.
func (w *Window) newStop(h hit) plan.Stop {
	s := plan.Stop{Angle: h.angle.Degrees(), BothSides: w.store.View().BothSides && hasOtherSide(h.angle)}
	if h.catch > 0 {
		s.Catches = []string{w.store.Plan().Catches[h.catch].Name}
	}
	return s
}

// hasOtherSide reports whether the stop at minus an angle is another one.
func hasOtherSide(a geom.Angle) bool { return (2 * a).Wrap() != 0 }

// Scrolled zooms about the pointer.
func (v *plateView) Scrolled(e *fyne.ScrollEvent) {
	const perNotch = 1.2 // a notch of the wheel is 25
	v.zoomBy(math.Pow(perNotch, float64(e.Scrolled.DY)/25), e.Position)
}

// MouseIn follows the pointer.
func (v *plateView) MouseIn(e *desktop.MouseEvent) { v.MouseMoved(e) }

// MouseMoved says what lies under the pointer and what a click would do.
func (v *plateView) MouseMoved(e *desktop.MouseEvent) {
	h := v.under(e.Position)
	pl := v.scene.plate
	switch {
	case h.seat >= 0:
		v.hover.hide()
		v.w.say(v.w.seatReading(pl, h.seat))
	case h.catch >= 0:
		v.markTurn(h.catch, h.angle)
		v.w.say(v.w.words.Text("hover.add", words.Args{"Angle": words.Deg(h.angle)}))
	default:
		v.hover.hide()
		v.w.say(v.w.placeReading(v.place(e.Position), h))
	}
}

// MouseOut forgets the pointer.
func (v *plateView) MouseOut() {
	v.hover.hide()
	v.w.say("")
}

// Cursor is a cross hair: the plate is a drawing to point at.
func (v *plateView) Cursor() desktop.Cursor { return desktop.CrosshairCursor }

// FocusGained shows that keys now go to the plate.
func (v *plateView) FocusGained() { v.setFocused(true) }

// FocusLost shows that they no longer do.
func (v *plateView) FocusLost() { v.setFocused(false) }

func (v *plateView) setFocused(on bool) {
	v.border.StrokeColor = color.Transparent
	if on {
		v.border.StrokeColor = v.w.palette().Accent
	}
	v.border.Refresh()
}

// freeStep is the nudge, in degrees, when clicks are not rounded.
const freeStep = 0.1

// nudge moves the selected stops by so many steps.
func (w *Window) nudge(steps float64) {
	sel := w.store.Selection()
	if len(sel.Stops) == 0 {
		return
	}
	step := w.store.View().Snap
	if step == 0 {
		step = freeStep
	}
	name := w.editName("edit.angle", w.store.Plan().Stops[sel.Lead].Angle)
	w.report(w.store.ChangeStops(name, func(s *plan.Stop) {
		s.Angle = store.Tidy(s.Angle + steps*step).Degrees()
	}, sel.Stops...))
}
