package drawing

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// wearRing draws the wear ring with the seats that are drilled through it.
func wearRing(d *Drawing, pl *plate.Plate) {
	wearRingEdges(d, pl, Outline, Bore)
	seatShapes(d, pl)
}

// wearRingEdges draws the two edges of the wear ring, each on its layer: the
// part itself, or the recess it is let into.
func wearRingEdges(d *Drawing, pl *plate.Plate, outside, inside Layer) {
	inner, outer := plate.WearRing(pl.Plan)
	if outer > 0 {
		d.Add(outside, Circle{Radius: outer / 2})
	}
	if inner > 0 {
		d.Add(inside, Circle{Radius: inner / 2})
	}
}

// carrier draws a catch's carrier or the pad before it, the catch in the middle.
func carrier(d *Drawing, pl *plate.Plate, part plan.Part) {
	c, o := pl.Plan.Making.Carrier, plate.OutlineOf(pl.Plan, part)
	hi := geom.Point{X: o.Width / 2, Y: o.Height / 2}
	d.Rect(Outline, hi.Scale(-1), hi)
	body := plate.BoreOf(pl.Plan, part)
	d.Add(PocketBody, Circle{Radius: body / 2})
	if k := pl.Plan.Making.KnockOut; k > 0 && part == plan.PartCarrier {
		d.Add(KnockOut, Circle{Radius: k / 2})
	}
	cross(d, geom.Point{}, body/2)
	for _, x := range [2]float64{-c.Spacing / 2, c.Spacing / 2} {
		at := geom.Point{X: x}
		d.Add(Screws, Circle{at, c.Screw / 2})
		cross(d, at, c.Screw/2)
	}
}

// carrierOutlines draws where the carriers lie on the far face of the part that
// holds the catches.
func carrierOutlines(d *Drawing, pl *plate.Plate) {
	o := plate.OutlineOf(pl.Plan, plan.PartCarrier)
	if o.Width == 0 {
		return
	}
	var one Drawing
	hi := geom.Point{X: o.Width / 2, Y: o.Height / 2}
	one.Rect(Carrier, hi.Scale(-1), hi)
	for _, p := range pl.Pockets {
		d.Place(one, Transform{Turn: p.Azimuth, Scale: 1, Move: p.Centre})
	}
}

// screwHeads draws the recesses for the heads of the collar's screws.
func screwHeads(d *Drawing, pl *plate.Plate) {
	head := pl.Plan.Making.Screws.Head
	if head == 0 {
		return
	}
	for i, f := range pl.Features {
		if at, round := f.Core.(geom.Segment); round && f.Screw && f.Part == plan.PartCollar {
			d.AddItem(ScrewHeads, Circle{at.A, head / 2}, Item{FeatureItem, i})
		}
	}
}
