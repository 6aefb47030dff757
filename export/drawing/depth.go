package drawing

import (
	"math"
	"strconv"
	"strings"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// Depth is how deep a tool goes from the face shown. The zero Depth is right
// through.
type Depth struct{ MM float64 }

// Through reports whether the tool comes out of the other face.
func (d Depth) Through() bool { return d.MM == 0 }

// DepthOf returns how deep what a layer holds is cut into a part: to the floor
// of a pocket, to the end of a drilled seat's cylinder or of a countersink's
// cone. It means nothing for a layer that is not cut. A pocket deeper than its
// part goes through it, and on into the carrier.
func DepthOf(pl *plate.Plate, part plan.Part, l Layer) Depth {
	p, thick := pl.Plan, plate.ThicknessOf(pl.Plan, part)
	depth := 0.0
	switch l.Kind() {
	case Seats:
		depth = seatDepth(p.Seat)
	case SeatChamfer:
		depth = p.Seat.Chamfer
	case PocketRim:
		depth = pl.Pockets[0].RimDepth
	case PocketBody:
		depth = pl.Pockets[0].BodyDepth
		if part == plan.PartCarrier {
			depth -= plate.ThicknessOf(p, pl.CatchPart) + plate.ThicknessOf(p, plan.PartPad)
		}
	case ScrewPilots:
		depth = p.Making.Screws.PilotDepth
	case ScrewHeads:
		depth = p.Making.Screws.HeadDepth
	case WearRing:
		depth = p.Making.WearRing.Thickness
	}
	if depth >= thick || depth < 0 {
		return Depth{}
	}
	return Depth{depth}
}

// seatDepth returns the depth of a seat's cylinder, or of its cone where a tool
// with a flat nose does not stop short of it; 0: through.
func seatDepth(s plan.Seat) float64 {
	if s.Form != plan.Countersunk {
		return s.Depth
	}
	cone := ball.PointLength(s.Diameter, geom.Angle(s.CountersinkAngle))
	if s.Depth > 0 {
		return math.Min(cone, s.Depth)
	}
	return cone
}

// depthMark comes between the name of a kind of thing and its depth; no kind's
// name has it.
const depthMark = "-"

// At returns the layer's name with a depth, as SEATS-6_00MM or OUTLINE-THROUGH,
// for programs that take the depth of cut from the layer.
func (l Layer) At(d Depth) Layer {
	if d.Through() {
		return l + depthMark + "THROUGH"
	}
	return l + Layer(depthMark+strings.ReplaceAll(strconv.FormatFloat(d.MM, 'f', 2, 64), ".", "_")+"MM")
}

// Kind returns the layer's name without a depth.
func (l Layer) Kind() Layer {
	kind, _, _ := strings.Cut(string(l), depthMark)
	return Layer(kind)
}

// depthNames gives every layer that is cut a name with its depth in a part.
func (d *Drawing) depthNames(pl *plate.Plate, part plan.Part) {
	for i := range d.Entities {
		if e := &d.Entities[i]; PenOf(e.Layer).Cut {
			e.Layer = e.Layer.At(DepthOf(pl, part, e.Layer))
		}
	}
}
