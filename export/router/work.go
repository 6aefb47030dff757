package router

import (
	"stopwright/assets/words"
	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// worker lists what is to be cut in one part.
type worker struct {
	pl        *plate.Plate
	part      plan.Part
	set       plan.Router
	words     *words.Catalogue
	thickness float64
	cuts      []cut
}

// work lists the cuts of a part in the order in which they may be done: the
// wider hole of two on one axis first, so that the narrower starts from a flat
// floor, but a countersink after the hole that guides it.
func work(pl *plate.Plate, part plan.Part, c *words.Catalogue) []cut {
	w := &worker{
		pl: pl, part: part, set: pl.Plan.RouterSettings(), words: c,
		thickness: plate.ThicknessOf(pl.Plan, part),
	}
	switch part {
	case plan.PartWearRing: // two edges; its seats are drilled with the part it is let into
	case plan.PartCarrier, plan.PartPad:
		w.block()
	default:
		w.platePart()
	}
	return join(w.cuts)
}

// platePart adds what is cut in one of the parts that the plate is put together
// from.
func (w *worker) platePart() {
	// A collar's bore is as wide as the table: it is an outline, not a hole.
	if bore := plate.BoreOf(w.pl.Plan, w.part); bore > 0 && w.part != plan.PartCollar {
		w.through(Pivot, bore, Hole{})
	}
	if w.part == w.pl.CatchPart {
		w.pockets()
	}
	if w.part == w.pl.SeatsPart {
		w.seats()
	}
	w.features()
}

func (w *worker) add(s Step, t Tool) { w.cuts = append(w.cuts, cut{s, t}) }

// through adds a hole right through the part: drilled where a drill is to be
// had, else milled.
func (w *worker) through(job Job, diameter float64, holes ...Hole) {
	s := Step{Job: job, Diameter: diameter, Depth: w.thickness + w.set.Breakthrough, Through: true, Holes: holes}
	if diameter > w.set.DrillTo {
		w.floor(s)
		return
	}
	t := straight(diameter, w.drillPoint())
	s.Depth += t.tip()
	w.add(s, t)
}

// usualPoint is the point of a common twist drill, degrees: common practice, no
// source.
const usualPoint = 118

// drillPoint is the point of the shop's drills: that of the seats' drill, where
// it has one.
func (w *worker) drillPoint() float64 {
	if s := w.pl.Plan.Seat; s.Form == plan.Drilled && s.DrillPoint < 180 {
		return s.DrillPoint
	}
	return usualPoint
}

// floor adds a hole with a flat floor, or one too wide to be drilled: milled, or
// plunged where the cutter just fits.
func (w *worker) floor(s Step) {
	s.Mill = s.Diameter != w.set.Cutter
	w.add(s, flat(w.set.Cutter))
}

// pockets adds the stepped hole of every catch: the recess for its flange, then
// the bore for its body in the middle of it, which goes right through where a
// carrier behind the part takes the rest of it, and the hole to push it out by.
func (w *worker) pockets() {
	carried := plate.PocketRoom(w.pl.Plan) > w.thickness
	for _, p := range w.pl.Pockets {
		hole := Hole{p.Name, plate.AtDrill(w.part, p.Centre)}
		if p.Rim > 0 {
			w.floor(Step{Job: Recess, Diameter: p.Rim, Depth: p.RimDepth, Holes: []Hole{hole}})
		}
		body := Step{Job: Body, Diameter: p.Body, Depth: p.BodyDepth, Holes: []Hole{hole}}
		if carried && p.BodyDepth > w.thickness-slack {
			body.Depth, body.Through = w.thickness+w.set.Breakthrough, true
		}
		w.floor(body)
		if p.KnockOut > 0 && !body.Through {
			w.through(KnockOut, p.KnockOut, hole)
		}
	}
}

// seats adds the seats with their relief holes and chamfers.
func (w *worker) seats() {
	holes := make([]Hole, len(w.pl.Seats))
	for i, s := range w.pl.Seats {
		holes[i] = Hole{s.Tag, plate.AtDrill(w.part, s.Centre)}
	}
	if len(holes) == 0 {
		return
	}
	s := w.pl.Plan.Seat
	relief := func() {
		if s.ReliefDiameter > 0 {
			w.through(Relief, s.ReliefDiameter, holes...)
		}
	}
	if s.Form == plan.Countersunk {
		relief()
		w.blind(Seat, Tool{Countersink, s.Diameter, s.CountersinkAngle}, holes)
	} else {
		w.drilledSeats(s, holes)
		relief()
	}
	if s.Chamfer > 0 {
		// With a countersink of 90 degrees a cone is as deep as half its width.
		w.add(
			Step{Job: Chamfer, Diameter: s.Mouth(), Depth: s.Mouth() / 2, Holes: holes},
			Tool{Countersink, s.Mouth(), 90},
		)
	}
}

// drilledSeats adds the seats that are drilled: with their own drill, as its
// point shapes the floor; a flat floor may be milled.
func (w *worker) drilledSeats(s plan.Seat, holes []Hole) {
	t := straight(s.Diameter, s.DrillPoint)
	switch _, blind := plate.SeatShape(s).Bottom(); {
	case !blind && t.Kind == Flat:
		w.through(Seat, s.Diameter, holes...)
	case !blind:
		depth := w.thickness + w.set.Breakthrough + t.tip()
		w.add(Step{Job: Seat, Diameter: s.Diameter, Depth: depth, Through: true, Holes: holes}, t)
	case t.Kind == Flat && s.Diameter > w.set.DrillTo:
		w.floor(Step{Job: Seat, Diameter: s.Diameter, Depth: s.Depth, Holes: holes})
	default:
		w.blind(Seat, t, holes)
	}
}

// blind adds seats made with the seats' own tool.
func (w *worker) blind(job Job, t Tool, holes []Hole) {
	bottom, _ := plate.SeatShape(w.pl.Plan.Seat).Bottom()
	w.add(Step{Job: job, Diameter: w.pl.Plan.Seat.Diameter, Depth: bottom, Holes: holes}, t)
}

// features adds the maker's holes and the collar's screws. Slots are left to the
// drawings.
func (w *worker) features() {
	for _, f := range w.pl.Features {
		s, straight := f.Core.(geom.Segment)
		if f.Part != w.part || f.Kind != plan.Hole || !straight {
			continue
		}
		hole := Hole{check.FeatureName(w.words, f), plate.AtDrill(w.part, s.A)}
		job := Other
		if f.Screw {
			job = Screw
			w.head(hole)
		}
		if f.Depth > 0 {
			w.toDepth(job, 2*f.Half, f.Depth, hole)
		} else {
			w.through(job, 2*f.Half, hole)
		}
	}
}

// head adds the recess for a screw's head, in the collar, before its hole.
func (w *worker) head(hole Hole) {
	if s := w.pl.Plan.Making.Screws; w.part == plan.PartCollar && s.Head > 0 && s.HeadDepth > 0 {
		w.floor(Step{Job: Head, Diameter: s.Head, Depth: s.HeadDepth, Holes: []Hole{hole}})
	}
}

// toDepth adds a hole that ends in the part, drilled or milled as one that goes
// through; its depth is that of its full width.
func (w *worker) toDepth(job Job, diameter, depth float64, hole Hole) {
	s := Step{Job: job, Diameter: diameter, Depth: depth, Holes: []Hole{hole}}
	if diameter > w.set.DrillTo {
		w.floor(s)
		return
	}
	t := straight(diameter, w.drillPoint())
	s.Depth += t.tip()
	w.add(s, t)
}
