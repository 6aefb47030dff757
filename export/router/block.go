package router

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// block adds what is cut in a catch's carrier, or in the pad before it, with the
// catch in the middle: the bore for the end of its body, the hole to push it out
// by where that bore has a floor, and the two screw holes.
func (w *worker) block() {
	bore, depth := plate.BoreOf(w.pl.Plan, w.part), drawing.DepthOf(w.pl, w.part, drawing.PocketBody)
	body := Step{Job: Body, Diameter: bore, Depth: depth.MM, Holes: []Hole{{}}}
	if w.part == plan.PartPad || depth.Through() {
		body.Depth, body.Through = w.thickness+w.set.Breakthrough, true
	}
	w.floor(body)
	if k := w.pl.Plan.Making.KnockOut; k > 0 && !body.Through {
		w.through(KnockOut, k, Hole{})
	}
	c := w.pl.Plan.Making.Carrier
	w.through(Screw, c.Screw, Hole{At: geom.Point{X: -c.Spacing / 2}}, Hole{At: geom.Point{X: c.Spacing / 2}})
}

// copies returns how many of a part are made alike: a carrier and a pad for each
// catch, of all others one.
func copies(pl *plate.Plate, part plan.Part) int {
	if part == plan.PartCarrier || part == plan.PartPad {
		return len(pl.Pockets)
	}
	return 1
}
