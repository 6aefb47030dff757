package chart

import (
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/stock"
	"stopwright/export/drawing"
)

// Operations lists what is done to every part, part by part, in order: mark, try
// in scrap, bore the pivot and the pockets, spot, drill from the narrowest to
// the seat, gauge, the other holes, slots, and the outline last, while the stock
// can still be clamped.
func Operations(pl *plate.Plate, c *words.Catalogue) []Operation {
	var out []Operation
	for _, part := range drawing.AllPartsOf(pl.Plan) {
		w := &worker{pl: pl, words: c, part: part}
		out = append(out, w.list()...)
	}
	return out
}

// worker lists the operations of one part.
type worker struct {
	pl    *plate.Plate
	words *words.Catalogue
	part  plan.Part
	out   []Operation
}

// add adds an operation; one that is done to holes, only where there are some.
func (w *worker) add(k Kind, t Tool, holes []Hole) {
	o := Operation{Part: w.part, Kind: k, Tool: t, Holes: holes}
	if t.Diameter > 0 && k != Slots { // a slot is sawn or routed
		o.Speed = stock.DrillSpeed(t.Diameter, plate.MaterialOf(w.pl.Plan, w.part))
	}
	w.out = append(w.out, o)
}

func (w *worker) list() []Operation {
	seats, pockets, round := w.seats(), w.pockets(), w.roundFeatures()
	spots := slices.Clone(seats)
	for _, g := range round {
		spots = append(spots, g.holes...)
	}
	if centres := slices.Concat(pockets, spots); len(centres) > 0 {
		w.add(Mark, Tool{}, centres)
	}
	if len(seats)+len(pockets) > 0 {
		w.add(Coupon, Tool{}, nil)
	}
	w.pivot()
	w.boreCatches(pockets)
	if ring := w.pl.Plan.Making.WearRing; w.part == w.pl.SeatsPart && ring.Width > 0 {
		w.add(Recess, Tool{Depth: ring.Thickness}, nil)
	}
	if len(spots) > 0 {
		w.add(SpotAll, Tool{}, spots)
	}
	w.drillSeats(seats)
	for _, g := range round {
		w.add(Drilling, g.tool, g.holes)
	}
	if s := w.pl.Plan.Making.Screws; w.part == plan.PartCollar && s.Head > 0 {
		w.add(Recess, Tool{Diameter: s.Head, Point: blunt, Depth: s.HeadDepth, Stop: s.HeadDepth}, w.screws())
	}
	for _, g := range w.slots() {
		w.add(Slots, Tool{Diameter: g.tool.Diameter, Point: blunt}, g.holes)
	}
	w.add(CutOut, Tool{}, nil)
	return w.out
}

// pivot bores the opening on the pivot that is drilled: a collar's or a ring's
// is cut out with the outline.
func (w *worker) pivot() {
	bore := plate.BoreOf(w.pl.Plan, w.part)
	if bore > 0 && (w.part == plan.PartTurntable || w.part == plan.PartBase) {
		w.add(Pivot, toDepth(bore, usualPoint, 0), []Hole{{Tag: w.words.Text("operation.pivot.tag")}})
	}
}

// boreCatches bores the pockets, the widest step first: the narrower starts
// from a flat floor.
func (w *worker) boreCatches(pockets []Hole) {
	if len(pockets) == 0 {
		return
	}
	p := w.pl.Pockets[0]
	deep := func(l drawing.Layer, diameter float64) Tool {
		return toDepth(diameter, blunt, drawing.DepthOf(w.pl, w.part, l).MM)
	}
	if p.Rim > 0 && w.part == w.pl.CatchPart {
		w.add(Counterbore, deep(drawing.PocketRim, p.Rim), pockets)
	}
	body := deep(drawing.PocketBody, p.Body)
	w.add(Body, body, pockets)
	if p.KnockOut > 0 && body.Depth > 0 {
		w.add(KnockOut, toDepth(p.KnockOut, usualPoint, 0), pockets)
	}
}

// drillSeats drills the seats: the smaller hole first, to guide the larger.
func (w *worker) drillSeats(seats []Hole) {
	if len(seats) == 0 {
		return
	}
	d := drillOf(w.pl.Plan)
	if d.Relief > 0 {
		w.add(PilotHoles, toDepth(d.Relief, usualPoint, 0), seats)
	}
	final := Tool{Diameter: d.Diameter, Point: geom.Angle(d.Point), Depth: d.Depth, Stop: d.Stop}
	if w.part == plan.PartWearRing { // with the ring in its place
		final.Depth, final.Stop = 0, 0
	}
	w.add(Final, final, seats)
	if d.Chamfer > 0 {
		w.add(Chamfer, chamfering(w.pl.Plan.Seat), seats)
	}
	if w.part == w.pl.SeatsPart && len(seats) > 1 {
		w.add(GaugeSeats, Tool{}, w.gauged(seats))
	}
}

// chamfering returns the countersink that widens a seat's rim, of 90 degrees. Its
// tip hangs free in the hole: it goes as deep as the whole cone that fills the
// mouth.
func chamfering(s plan.Seat) Tool {
	const point geom.Angle = 90
	return Tool{Diameter: s.Mouth(), Point: point, Depth: s.Chamfer, Stop: ball.PointLength(s.Mouth(), point)}
}

// gauged gives the seats their readings over pins from the zero seat.
func (w *worker) gauged(seats []Hole) []Hole {
	out := slices.Clone(seats)
	for i, r := range seatRows(w.pl, pinsOf(w.pl.Plan)) {
		if r.FromZero.From >= 0 && r.FromZero.Fits {
			out[i].Outside = r.FromZero.Outside
		}
	}
	return out
}

// seats lists the seats that the part has; a wear ring's are its part's.
func (w *worker) seats() []Hole {
	if w.part != w.pl.SeatsPart && w.part != plan.PartWearRing {
		return nil
	}
	out := make([]Hole, len(w.pl.Seats))
	for i, s := range w.pl.Seats {
		out[i] = Hole{Tag: s.Tag, At: plate.AtDrill(w.pl.SeatsPart, s.Centre)}
	}
	return out
}

// pockets lists the catches' pockets; of a carrier and its pad each has one.
func (w *worker) pockets() []Hole {
	switch w.part {
	case plan.PartCarrier, plan.PartPad:
		return []Hole{{Tag: drawing.PartName(w.words, w.part)}}
	case w.pl.CatchPart:
		out := make([]Hole, len(w.pl.Pockets))
		for i, p := range w.pl.Pockets {
			out[i] = Hole{Tag: p.Name, At: plate.AtDrill(w.part, p.Centre)}
		}
		return out
	}
	return nil
}

// sameTool is a group of holes made with one tool and setting.
type sameTool struct {
	tool  Tool
	holes []Hole
}

// grouped adds a hole to the group of its tool, or begins one.
func grouped(groups []sameTool, t Tool, h Hole) []sameTool {
	for i := range groups {
		if groups[i].tool == t {
			groups[i].holes = append(groups[i].holes, h)
			return groups
		}
	}
	return append(groups, sameTool{t, []Hole{h}})
}

// roundFeatures groups the part's other holes.
func (w *worker) roundFeatures() []sameTool {
	var out []sameTool
	for _, f := range w.pl.Features {
		at, straight := f.Core.(geom.Segment)
		if f.Part == w.part && straight && at.A == at.B {
			out = grouped(out, toDepth(2*f.Half, usualPoint, f.Depth), w.hole(f, at.A))
		}
	}
	if c := w.pl.Plan.Making.Carrier; w.part == plan.PartCarrier || w.part == plan.PartPad {
		for i, x := range [2]float64{-c.Spacing / 2, c.Spacing / 2} {
			tag := w.words.Text("feature.carrier-screw", words.Args{"N": i + 1})
			out = grouped(out, toDepth(c.Screw, usualPoint, 0), Hole{Tag: tag, At: geom.Point{X: x}})
		}
	}
	return out
}

// screws lists the collar's screws in the part.
func (w *worker) screws() []Hole {
	var out []Hole
	for _, f := range w.pl.Features {
		if at, straight := f.Core.(geom.Segment); straight && f.Screw && f.Part == w.part {
			out = append(out, w.hole(f, at.A))
		}
	}
	return out
}

// slots groups the part's slots by width, each at the middle of its first end.
func (w *worker) slots() []sameTool {
	var out []sameTool
	for _, f := range w.pl.Features {
		if f.Part != w.part {
			continue
		}
		switch core := f.Core.(type) {
		case geom.Arc:
			out = grouped(out, Tool{Diameter: 2 * f.Half}, w.hole(f, core.Start()))
		case geom.Segment:
			if core.A != core.B {
				out = grouped(out, Tool{Diameter: 2 * f.Half}, w.hole(f, core.A))
			}
		}
	}
	return out
}

func (w *worker) hole(f plate.Feature, at geom.Point) Hole {
	return Hole{Tag: check.FeatureName(w.words, f), At: plate.AtDrill(w.part, at)}
}
