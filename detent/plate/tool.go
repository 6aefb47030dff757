package plate

import (
	"stopwright/detent/cutline"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Clockwise returns how far clockwise, seen from above, a turn takes the table.
func Clockwise(p plan.Plan, turn geom.Angle) geom.Angle {
	if p.Arrangement.PositiveTurn == plan.Counterclockwise {
		return -turn + 0
	}
	return turn
}

// Lean returns how far clockwise a turn leans the tool's line from square to the
// fence. A turning fence leans under the tool the other way about.
func Lean(p plan.Plan, turn geom.Angle) geom.Angle {
	lean := Clockwise(p, turn)
	if p.Tool != nil && p.Tool.Turning == plan.FenceTurns {
		lean = -lean + 0
	}
	return lean
}

// Leans returns the lean at every stop, in the order of the plate's stops.
func (pl *Plate) Leans() []geom.Angle {
	out := make([]geom.Angle, len(pl.Stops))
	for i, s := range pl.Stops {
		out[i] = Lean(pl.Plan, s.Angle)
	}
	return out
}

// ToolLine returns where a tool's line and its fence lie.
func ToolLine(t plan.Tool) cutline.Line { return cutline.Line{Offset: t.Offset, Fence: t.Fence} }

// FenceBody returns a tool's fence as a piece of wood.
func FenceBody(t plan.Tool) cutline.Body {
	return cutline.Body{Length: t.FenceLength, Thickness: t.FenceThickness, Inset: t.FenceInset}
}

// TableTop returns the height (mm) of the turntable's top over the base's face.
func TableTop(p plan.Plan) float64 { return p.FaceGap + p.Turntable.Thickness }
