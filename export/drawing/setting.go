package drawing

import (
	"math"

	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// SettingScene draws tool and fence over the plate, seen from above, with the
// table turned: the part that stands still lies as at zero.
type SettingScene struct {
	Drawing
	// Wander is how many times larger than it is the wander of the crossing is
	// drawn along the fence; 0: nothing wanders.
	Wander float64
}

// Setting draws the outlines of base and turntable with a plan's tool line and
// fence, the table turned by turn (of the plan's own sense), and along the back
// of the fence a tick where the tool crosses it at each stop, its distance from
// the middle of them all drawn larger so that it can be seen.
func Setting(pl *plate.Plate, c detent.CutLine, turn geom.Angle) SettingScene {
	var s SettingScene
	p := pl.Plan
	table := plate.Clockwise(p, turn)
	outline(&s.Drawing, pl, plan.PartBase)
	var disc Drawing
	outline(&disc, pl, plan.PartTurntable)
	witness(&disc, pl, plan.PartTurntable)
	s.Place(disc, Transform{Scale: 1, Turn: table})

	var fence, tool Drawing
	corners := c.Corners(c.Body)
	for i := range corners {
		layer := PocketRim
		if i == 0 { // from the left to the right end of the face
			layer = Seats
		}
		fence.Add(layer, Line{corners[i], corners[(i+1)%len(corners)]})
	}
	for _, at := range c.Screws(c.Body) {
		fence.Add(Screws, Circle{at, p.Tool.FenceScrew / 2})
	}
	s.Wander = wanderTicks(&fence, c)
	reach := p.Tool.Reach
	if reach == 0 {
		reach = plate.OutlineOf(p, plan.PartTurntable).Reach(0)
	}
	near := plate.OutlineOf(p, plan.PartTurntable).Reach(0)
	for _, side := range [2]float64{-p.Tool.Kerf / 2, p.Tool.Kerf / 2} {
		x := c.Offset + side
		tool.Add(Witness, Line{geom.Point{X: x, Y: -near}, geom.Point{X: x, Y: reach}})
	}
	turnOf := func(turns plan.Turning) geom.Angle {
		if p.Tool.Turning == turns {
			return table
		}
		return 0
	}
	s.Place(fence, Transform{Scale: 1, Turn: turnOf(plan.FenceTurns)})
	s.Place(tool, Transform{Scale: 1, Turn: turnOf(plan.ToolTurns)})
	lean := plate.Lean(p, turn)
	if x, ok := c.Crossing(lean); ok {
		at := geom.Point{X: x, Y: c.Fence}.Rotate(turnOf(plan.FenceTurns))
		s.Add(Witness, Circle{at, crossingMark})
	}
	return s
}

// crossingMark is the radius (mm) of the ring round the crossing.
const crossingMark = 4.0

// exaggerations are the scales at which a wander is drawn: round numbers.
var exaggerations = []float64{1, 2, 5, 10, 20, 50, 100, 200, 500, 1000}

// wanderTicks draws the ticks and returns how many times larger than they are
// their distances are drawn: the most that keeps them on the fence.
func wanderTicks(d *Drawing, c detent.CutLine) float64 {
	const rounding = 1e-6 // mm: below it nothing wanders
	wander := c.Travel.Wander()
	if c.Travel.Leans == 0 || wander < rounding {
		return 0
	}
	times := exaggerations[0]
	for _, k := range exaggerations {
		if k*wander <= 0.8*c.Body.Length {
			times = k
		}
	}
	middle := (c.Travel.Least + c.Travel.Most) / 2
	back := c.Fence + c.Body.Thickness
	long := math.Max(4, c.Body.Thickness/2)
	for _, x := range c.Crossings {
		if x.Meets {
			at := middle + times*(x.X-middle)
			d.Add(Witness, Line{geom.Point{X: at, Y: back}, geom.Point{X: at, Y: back + long}})
		}
	}
	return times
}
