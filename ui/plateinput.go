package ui

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/ui/store"
)

// reach is how near (px of layout) to the ring or a seat a click must be.
const reach = 9

// hit is what lies under the pointer.
type hit struct {
	seat  int        // a seat; -1: none
	catch int        // the catch whose ring it is; -1: none
	angle geom.Angle // the snapped turn that brings the place under the catch
}

// under returns what lies under a position: a seat, else a ring.
func (v *plateView) under(at fyne.Position) hit {
	v.refreshScene()
	pl := v.scene.plate
	if !v.scene.shows(pl.SeatsPart) {
		return hit{seat: -1, catch: -1}
	}
	p, slop := v.place(at), reach/v.view().Scale
	seat, near := -1, math.Inf(1)
	for i, s := range pl.Seats {
		d := s.Centre.Distance(p)
		if d < near && d <= math.Max(pl.Plan.Seat.Mouth()/2, slop) {
			seat, near = i, d
		}
	}
	if seat >= 0 {
		return hit{seat: seat, catch: pl.Seats[seat].Catch, angle: pl.Seats[seat].Angle}
	}
	h := hit{seat: -1, catch: -1}
	near = slop
	for i, c := range pl.Plan.Catches {
		if d := math.Abs(p.Norm() - c.Radius); d <= near {
			h.catch, near = i, d
		}
	}
	if h.catch >= 0 {
		h.angle = v.w.store.StopAt(p, h.catch, v.w.store.View().Snap)
	}
	return h
}

// MouseDown takes the focus and remembers what is pressed.
func (v *plateView) MouseDown(e *desktop.MouseEvent) {
	v.w.focus(v)
	v.press = pressed{at: e.Position, button: e.Button, hit: v.under(e.Position)}
}

// MouseUp ends a click: on a seat it selects its stop, on the ring it adds one.
func (v *plateView) MouseUp(e *desktop.MouseEvent) {
	if v.press.moved || v.press.button != desktop.MouseButtonPrimary || e.Button != v.press.button {
		return
	}
	switch h := v.press.hit; {
	case h.seat >= 0:
		v.w.store.SelectStop(v.w.store.StopOfSeat(h.seat))
	case h.catch >= 0:
		v.w.report(v.w.addStops(v.w.newStop(h)))
	default:
		v.w.store.SelectStop(-1)
	}
}

// Dragged moves a seat along its ring, else the drawing about.
func (v *plateView) Dragged(e *fyne.DragEvent) {
	first := !v.press.moved
	v.press.moved = true
	if h := v.press.hit; h.seat >= 0 && v.press.button == desktop.MouseButtonPrimary {
		if first {
			v.beginSlide(h)
		}
		v.slideTo(e.Position)
		return
	}
	v.pan.DX += e.Dragged.DX
	v.pan.DY += e.Dragged.DY
	v.hover.hide()
	v.Refresh()
}

// DragEnd ends a move.
func (v *plateView) DragEnd() {
	if v.slide.on {
		v.slide.on = false
		v.w.store.EndGesture()
		v.hover.hide()
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
		p := v.place(e.Position)
		v.w.say(v.w.words.Text("hover.place", words.Args{
			"X": words.MM(p.X), "Y": words.MM(p.Y), "Radius": words.MM(p.Norm()),
		}))
	}
}

// MouseOut forgets the pointer.
func (v *plateView) MouseOut() {
	v.hover.hide()
	v.w.say("")
}

// seatReading says where a seat lies and how much is left beside it.
func (w *Window) seatReading(pl *plate.Plate, seat int) string {
	s := pl.Seats[seat]
	args := words.Args{
		"Tag": s.Tag, "Angle": words.Deg(s.Angle), "Azimuth": words.Deg(s.Azimuth),
		"X": words.MM(s.Centre.X), "Y": words.MM(s.Centre.Y), "Web": words.MM(s.Web), "Edge": words.MM(min(pl.ToEdge(seat), pl.ToBore(seat))),
	}
	if s.Nearest < 0 {
		return w.words.Text("hover.seat.alone", args)
	}
	return w.words.Text("hover.seat", args)
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

// TypedRune zooms with + and -, and shows the whole plate with 0.
func (v *plateView) TypedRune(r rune) {
	mid := fyne.NewPos(v.Size().Width/2, v.Size().Height/2)
	switch r {
	case '+':
		v.zoomBy(1.25, mid)
	case '-':
		v.zoomBy(1/1.25, mid)
	case '0':
		v.fit()
	}
}

// TypedKey moves along the stops with up and down, nudges the selected one with
// left and right, and takes it off with Delete.
func (v *plateView) TypedKey(k *fyne.KeyEvent) {
	s := v.w.store
	stop := s.Selection().Stop
	switch k.Name {
	case fyne.KeyUp:
		s.SelectStop(max(stop-1, 0))
	case fyne.KeyDown:
		s.SelectStop(min(stop+1, len(s.Plan().Stops)-1))
	case fyne.KeyLeft:
		v.w.nudge(stop, -1)
	case fyne.KeyRight:
		v.w.nudge(stop, 1)
	case fyne.KeyDelete, fyne.KeyBackspace:
		v.w.removeStop(stop)
	case fyne.KeyEscape:
		s.SelectStop(-1)
	}
}

// freeStep is the nudge, in degrees, when clicks are not rounded.
const freeStep = 0.1

// nudge moves a stop by so many steps.
func (w *Window) nudge(stop int, steps float64) {
	if stop < 0 {
		return
	}
	step := w.store.View().Snap
	if step == 0 {
		step = freeStep
	}
	angle := w.store.Plan().Stops[stop].Angle
	w.report(w.store.ChangeStop(w.editName("edit.angle", angle), stop, func(s *plan.Stop) {
		s.Angle = store.Tidy(s.Angle + steps*step).Degrees()
	}))
}
