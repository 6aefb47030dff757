package router

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// slack (mm) lets pass what is exactly at a limit but for rounding.
const slack = 1e-9

// refuse lists all for which the cuts of a part must not be made.
func refuse(pl *plate.Plate, part plan.Part, cuts []cut) []Problem {
	set := pl.Plan.RouterSettings()
	out := settings(set, part)
	thickness := plate.ThicknessOf(pl.Plan, part)
	for _, c := range cuts {
		over := func(id string, value, limit float64) {
			if value > limit+slack {
				out = append(out, Problem{ID: id, Part: part, Job: c.Job, Tag: c.Holes[0].Tag, Value: value, Limit: limit, Unit: mm})
			}
		}
		if c.Through {
			over("spoil-board", c.Depth-thickness, set.SpoilBoard)
		} else {
			over("too-deep", c.Depth, thickness)
		}
		if c.tool.Kind == Flat {
			over("tool-too-wide", c.tool.Diameter, c.Diameter)
		}
		if c.tool == flat(set.Cutter) {
			over("tool-too-short", c.Depth, set.CutterLength)
		}
		if c.Job == Chamfer {
			over("chamfer-bottoms", c.Depth, floorOf(pl))
		}
	}
	if n := countMoves(cuts, set); n > mostMoves {
		out = append(out, Problem{ID: "too-long", Part: part, Value: n, Limit: mostMoves, Unit: motion})
	}
	return out
}

// settings lists what is wrong with the settings, whatever is cut. A spindle
// that is off would push a tool that stands still into the work.
func settings(set plan.Router, part plan.Part) []Problem {
	var out []Problem
	if set.Spindle == 0 {
		out = append(out, Problem{ID: "spindle-off", Part: part, Value: 0, Limit: 1, Unit: turns})
	}
	if set.Approach > set.SafeHeight+slack {
		out = append(out, Problem{ID: "approach-high", Part: part, Value: set.Approach, Limit: set.SafeHeight, Unit: mm})
	}
	return out
}

// floorOf returns how deep the tip of a chamfer's countersink may go in the
// seats before it cuts their floor, mm: to their bottom or, over a relief hole,
// until the cone fills that hole at the floor. It is infinite where the seats go
// right through.
func floorOf(pl *plate.Plate) float64 {
	s := pl.Plan.Seat
	bottom, blind := plate.SeatShape(s).Bottom()
	switch {
	case !blind:
		return math.Inf(1)
	case s.Form == plan.Countersunk:
		return bottom
	}
	return bottom - ball.PointLength(s.ReliefDiameter, geom.Angle(s.DrillPoint)) + s.ReliefDiameter/2
}
