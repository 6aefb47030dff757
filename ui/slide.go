package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// sliding is a seat dragged along its ring, as one edit to undo.
type sliding struct {
	v     *plateView
	stop  int  // of the plan
	other bool // it is the side that both_sides adds
	catch int
	name  string // of the edit
}

// beginSlide takes hold of a seat.
func (v *plateView) beginSlide(h hit) gesture {
	pl := v.scene.plate
	served := pl.Seats[h.seat].Serves[0] // one of several stops: with its own catch
	stop := pl.Stops[served.Stop]
	v.w.store.SelectStop(stop.Index)
	v.w.store.BeginGesture()
	return &sliding{
		v: v, stop: stop.Index, other: stop.Mirrored, catch: served.Catch,
		name: v.w.editName("edit.angle", pl.Plan.Stops[stop.Index].Angle),
	}
}

// to moves the seat to where the pointer is, in steps unless Shift is held.
func (g *sliding) to(at fyne.Position) {
	s := g.v.w.store
	own := g.v.scene.toPart(g.v.scene.plate.SeatsPart, g.v.place(at))
	turn := s.StopAt(own, g.catch, g.step())
	angle := turn
	if g.other {
		angle = -turn
	}
	g.v.w.report(s.ChangeStops(g.name, func(p *plan.Stop) { p.Angle = angle.Degrees() + 0 }, g.stop))
	g.v.markTurn(g.catch, turn)
}

func (g *sliding) end() {
	g.v.w.store.EndGesture()
	g.v.hover.hide()
}

func (g *sliding) moves() bool { return false }

// fineStep is the step, in degrees, of a drag with Shift held.
const fineStep = 0.01

// step returns the step to which the dragged seat is rounded.
func (g *sliding) step() float64 {
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok && d.CurrentKeyModifiers()&fyne.KeyModifierShift != 0 {
		return fineStep
	}
	return g.v.w.store.View().Snap
}

// markTurn shows on a catch's ring where a turn lies.
func (v *plateView) markTurn(catch int, turn geom.Angle) {
	v.refreshScene()
	pl := v.scene.plate
	c := pl.Plan.Catches[catch]
	at := geom.Polar(c.Radius, geom.Angle(c.Azimuth)+pl.Sigma*turn)
	v.hover.show(v.position(geom.Point{}), v.position(v.scene.fromPart(pl.SeatsPart, at)),
		float32(pl.Plan.Seat.Mouth()/2*v.view().Scale), v.w.words.Angle(turn.Degrees()), v.w.palette())
}
