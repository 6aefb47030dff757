package ui

import (
	"math"

	"fyne.io/fyne/v2"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// reach is how near (px of layout) to a line or a hole the pointer must be.
const reach = 9

// hit is what lies under the pointer: the first of these that does.
type hit struct {
	seat    int        // a seat; -1: none
	feature int        // a feature of the plan; -1: none
	catch   int        // the catch whose seat or ring it is; -1: none
	edge    plan.Part  // the part whose outer edge it is; "": none
	angle   geom.Angle // on a ring: the snapped turn that brings the place under the catch
}

// under returns what lies under a position.
func (v *plateView) under(at fyne.Position) hit {
	v.refreshScene()
	h := hit{seat: -1, feature: -1, catch: -1}
	slop := reach / v.view().Scale
	p := v.place(at)
	switch {
	case v.seatUnder(p, slop, &h), v.featureUnder(p, slop, &h), v.ringUnder(p, slop, &h), v.edgeUnder(p, slop, &h):
	}
	return h
}

// seatUnder finds the nearest seat under a place of the scene.
func (v *plateView) seatUnder(p geom.Point, slop float64, h *hit) bool {
	pl := v.scene.plate
	if !v.scene.shows(pl.SeatsPart) {
		return false
	}
	own := v.scene.toPart(pl.SeatsPart, p)
	near := math.Max(pl.Plan.Seat.Mouth()/2, slop)
	for i, s := range pl.Seats {
		if d := s.Centre.Distance(own); d <= near {
			near, h.seat, h.catch, h.angle = d, i, s.Catch, s.Angle
		}
	}
	return h.seat >= 0
}

// featureUnder finds a feature of the plan under a place of the scene.
func (v *plateView) featureUnder(p geom.Point, slop float64, h *hit) bool {
	for _, f := range v.scene.plate.Features {
		if f.Own() && v.scene.shows(f.Part) && f.Clear(v.scene.toPart(f.Part, p), slop/3) <= 0 {
			h.feature = f.Index
			return true
		}
	}
	return false
}

// ringUnder finds the nearest ring under a place of the scene.
func (v *plateView) ringUnder(p geom.Point, slop float64, h *hit) bool {
	pl := v.scene.plate
	if !v.scene.shows(pl.SeatsPart) {
		return false
	}
	near := slop
	for i, c := range pl.Plan.Catches {
		if d := math.Abs(p.Norm() - c.Radius); d <= near && (h.catch < 0 || d < near) {
			near, h.catch = d, i
		}
	}
	if h.catch < 0 {
		return false
	}
	h.angle = v.w.store.StopAt(v.scene.toPart(pl.SeatsPart, p), h.catch, v.w.store.View().Snap)
	h.seat = servedBy(pl, h.catch, h.angle) // nobody means to list a stop twice
	return true
}

// servedBy returns the seat that serves a stop with a catch; -1: there is none.
func servedBy(pl *plate.Plate, catch int, stop geom.Angle) int {
	for i, s := range pl.Seats {
		for _, v := range s.Serves {
			if v.Catch == catch && v.Angle == stop {
				return i
			}
		}
	}
	return -1
}

// edgeUnder finds the nearest outer edge of a part under a place of the scene.
func (v *plateView) edgeUnder(p geom.Point, slop float64, h *hit) bool {
	near := slop
	for _, part := range [3]plan.Part{plan.PartTurntable, plan.PartCollar, plan.PartBase} {
		o := plate.OutlineOf(v.scene.plate.Plan, part)
		if o == (plate.Outline{}) || !v.scene.shows(part) {
			continue
		}
		if d := math.Abs(o.Inside(p)); d <= near {
			near, h.edge = d, part
		}
	}
	return h.edge != ""
}
