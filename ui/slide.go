package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// slide is a seat being dragged along its ring.
type slide struct {
	on    bool
	stop  int  // of the plan
	other bool // it is the side that both_sides adds
	catch int
	name  string // of the edit
}

// beginSlide takes hold of a seat.
func (v *plateView) beginSlide(h hit) {
	pl := v.scene.plate
	stop := pl.Stops[pl.Seats[h.seat].Serves[0].Stop]
	v.slide = slide{
		on: true, stop: stop.Index, other: stop.Mirrored, catch: h.catch,
		name: v.w.editName("edit.angle", pl.Plan.Stops[stop.Index].Angle),
	}
	v.w.store.SelectStop(stop.Index)
	v.w.store.BeginGesture()
}

// slideTo moves the seat to where the pointer is, in steps unless Shift is
// held.
func (v *plateView) slideTo(at fyne.Position) {
	s := v.w.store
	turn := s.StopAt(v.place(at), v.slide.catch, v.slideStep())
	angle := turn
	if v.slide.other {
		angle = -turn
	}
	err := s.ChangeStop(v.slide.name, v.slide.stop, func(p *plan.Stop) { p.Angle = angle.Degrees() })
	v.w.report(err)
	v.markTurn(v.slide.catch, turn)
}

// slideStep returns the step to which a dragged seat is rounded.
func (v *plateView) slideStep() float64 {
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok && d.CurrentKeyModifiers()&fyne.KeyModifierShift != 0 {
		return fineStep
	}
	return v.w.store.View().Snap
}

// fineStep is the step, in degrees, of a drag with Shift held.
const fineStep = 0.01

// markTurn shows on a catch's ring where a turn lies.
func (v *plateView) markTurn(catch int, turn geom.Angle) {
	v.refreshScene()
	pl := v.scene.plate
	c := pl.Plan.Catches[catch]
	az := (geom.Angle(c.Azimuth) + pl.Sigma*turn).Wrap()
	v.hover.show(v.position(geom.Point{}), v.position(geom.Polar(c.Radius, az)),
		float32(pl.Plan.Seat.Mouth()/2*v.view().Scale), v.w.words.Angle(turn.Degrees()), v.w.palette())
}
