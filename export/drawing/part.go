package drawing

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// View is how a part is looked at.
type View int

// The views.
const (
	FromAbove View = iota // every part from above, the table at zero
	AsAtDrill             // as it lies at the drill: the turntable from its underside
)

// Parts returns the parts that a plan's plate is put together from, in the order
// of its files.
func Parts(p plan.Plan) []plan.Part {
	parts := []plan.Part{plan.PartBase, plan.PartTurntable}
	if p.Collar != nil {
		parts = append(parts, plan.PartCollar)
	}
	return parts
}

// AllPartsOf returns every part that is made, in the order of its files: those
// of the plate and those that fittings need.
func AllPartsOf(p plan.Plan) []plan.Part {
	parts := Parts(p)
	for _, part := range [...]plan.Part{plan.PartWearRing, plan.PartCarrier, plan.PartPad} {
		if plate.ThicknessOf(p, part) > 0 {
			parts = append(parts, part)
		}
	}
	return parts
}

// Mirrored reports whether a view shows a part with left and right exchanged.
func (v View) Mirrored(part plan.Part) bool {
	return v == AsAtDrill && plate.FaceOf(part) == plate.Underside
}

// Part draws one part with the pivot at the origin, without any lettering but
// its holes' own: outline, bore, features, and the seats or the pockets it
// holds with their pitch circles and tracks. A carrier and its pad have the
// catch at the origin.
func Part(pl *plate.Plate, part plan.Part, v View) Drawing {
	var d Drawing
	switch part {
	case plan.PartWearRing:
		wearRing(&d, pl)
	case plan.PartCarrier, plan.PartPad:
		carrier(&d, pl, part)
	default:
		platePart(&d, pl, part)
	}
	if !v.Mirrored(Like(pl, part)) {
		return d
	}
	var out Drawing
	out.Place(d, Transform{Mirror: true, Scale: 1})
	return out
}

// platePart draws one of the parts that the plate is put together from.
func platePart(d *Drawing, pl *plate.Plate, part plan.Part) {
	outline(d, pl, part)
	if part == pl.SeatsPart {
		wearRingEdges(d, pl, WearRing, WearRing)
	}
	featureShapes(d, pl, part)
	if part == plan.PartCollar {
		screwHeads(d, pl)
	}
	if part == pl.SeatsPart {
		seatShapes(d, pl)
	}
	if part == pl.CatchPart {
		pocketShapes(d, pl)
		carrierOutlines(d, pl)
	}
	witness(d, pl, part)
}

// Like returns the part of the plate that a part lies like at the drill: a wear
// ring like the part it is let into.
func Like(pl *plate.Plate, part plan.Part) plan.Part {
	switch part {
	case plan.PartWearRing:
		return pl.SeatsPart
	case plan.PartCarrier, plan.PartPad:
		return plan.PartBase // top up: they are alike on both sides
	}
	return part
}

// outline draws a part's outer edge, and its round opening on the pivot.
func outline(d *Drawing, pl *plate.Plate, part plan.Part) {
	o := plate.OutlineOf(pl.Plan, part)
	if o.Diameter > 0 {
		d.Add(Outline, Circle{Radius: o.Diameter / 2})
	} else {
		hi := geom.Point{X: o.Width / 2, Y: o.Height / 2}
		d.Rect(Outline, hi.Scale(-1), hi)
	}
	if bore := plate.BoreOf(pl.Plan, part); bore > 0 {
		layer := Pivot
		if part == plan.PartCollar {
			layer = Bore
		}
		d.Add(layer, Circle{Radius: bore / 2})
	}
	if part != plan.PartCollar {
		cross(d, geom.Point{}, plate.BoreOf(pl.Plan, part)/2)
	}
}

// overhang is how far (mm) a centre mark reaches past its hole.
const overhang = 2

// cross marks a hole's centre with two lines at right angles.
func cross(d *Drawing, at geom.Point, radius float64) {
	r := radius + overhang
	d.Add(Centres, Line{at.Sub(geom.Point{X: r}), at.Add(geom.Point{X: r})})
	d.Add(Centres, Line{at.Sub(geom.Point{Y: r}), at.Add(geom.Point{Y: r})})
}

// seatShapes draws the seats, their pitch circles and the balls' tracks.
func seatShapes(d *Drawing, pl *plate.Plate) {
	pitchCircles(d, pl)
	for _, t := range pl.Tracks {
		if settled(t.Path).Sweep > 0 { // a table that cannot turn leaves no track
			d.Add(Track, ArcOf(t.Path))
		}
	}
	seat := pl.Plan.Seat
	for i, s := range pl.Seats {
		item := Item{SeatItem, i}
		d.AddItem(Seats, Circle{s.Centre, seat.Diameter / 2}, item)
		if seat.Chamfer > 0 {
			d.AddItem(SeatChamfer, Circle{s.Centre, seat.Mouth() / 2}, item)
		}
		if seat.ReliefDiameter > 0 {
			d.AddItem(SeatRelief, Circle{s.Centre, seat.ReliefDiameter / 2}, item)
		}
	}
}

// pocketShapes draws the catches' pockets and their pitch circles.
func pocketShapes(d *Drawing, pl *plate.Plate) {
	pitchCircles(d, pl)
	for i, p := range pl.Pockets {
		item := Item{PocketItem, i}
		d.AddItem(PocketBody, Circle{p.Centre, p.Body / 2}, item)
		if p.Rim > 0 {
			d.AddItem(PocketRim, Circle{p.Centre, p.Rim / 2}, item)
		}
		if p.KnockOut > 0 && p.BodyDepth < plate.ThicknessOf(pl.Plan, pl.CatchPart) {
			d.AddItem(KnockOut, Circle{p.Centre, p.KnockOut / 2}, item)
		}
		cross(d, p.Centre, p.Widest()/2)
	}
}

// pitchCircles draws each ring radius once.
func pitchCircles(d *Drawing, pl *plate.Plate) {
	drawn := map[float64]bool{}
	for _, c := range pl.Plan.Catches {
		if !drawn[c.Radius] {
			drawn[c.Radius] = true
			d.Add(Ring, Circle{Radius: c.Radius})
		}
	}
}

// featureShapes draws the features of a part.
func featureShapes(d *Drawing, pl *plate.Plate, part plan.Part) {
	for i, f := range pl.Features {
		if f.Part != part {
			continue
		}
		layer := layerOf(pl, f)
		for _, s := range around(f.Core, f.Half) {
			d.AddItem(layer, s, Item{FeatureItem, i})
		}
	}
}

// fittingLayers are the layers of fittings.
var fittingLayers = map[plate.Fitting]Layer{
	plate.EndStopPin:      EndStops,
	plate.EndStopSlot:     EndStops,
	plate.ClampBolt:       Clamp,
	plate.ClampSlot:       Clamp,
	plate.DustSlot:        Dust,
	plate.FenceSlot:       Fence,
	plate.RegistrationPin: Registration,
	plate.CarrierScrew:    CarrierHoles,
}

// layerOf returns the layer of a feature.
func layerOf(pl *plate.Plate, f plate.Feature) Layer {
	switch {
	case f.Fitting != "":
		return fittingLayers[f.Fitting]
	case f.Screw && f.Part == plan.PartBase && pl.Plan.Making.Screws.Pilot > 0:
		return ScrewPilots
	case f.Screw:
		return Screws
	case f.Kind == plan.Hole:
		return Holes
	}
	return Slots
}
