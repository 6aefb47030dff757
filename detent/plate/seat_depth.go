package plate

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/plan"
)

// depthStep is the step (mm) to which a proposed depth is rounded: what a depth
// stop can be set to. As much is left under the tip of a drill that would come
// out of the other side.
const depthStep = 0.5

// depthSlack (mm) keeps a depth that is a whole number of steps, but for
// rounding, from going to the next one.
const depthSlack = 1e-9

// SeatDepth returns the depth (mm) of a seat, its own or the nearest to it, at
// which the floor lets the ball down to rim or cone and the tool's tip stays
// inside the part. It is false where there is none, as for a countersink that
// goes to its tip and out: how deep it goes follows from its mouth. A seat that
// goes right through keeps depth 0.
func SeatDepth(p plan.Plan, s plan.Seat) (float64, bool) {
	if _, blind := SeatShape(s).Bottom(); !blind {
		return s.Depth, true
	}
	if least, ok := LeastDepth(p, s); ok && s.Depth < least-depthSlack {
		s.Depth = math.Ceil((least-depthSlack)/depthStep) * depthStep
	}
	bottom, _ := SeatShape(s).Bottom()
	over := bottom - ThicknessOf(p, seatsPart(p))
	if over <= depthSlack {
		return s.Depth, true
	}
	// A nose lies no deeper than its depth, a drill's tip does. A countersink to its
	// tip has depth 0, of which nothing is left.
	most := math.Min(s.Depth, bottom) - over - depthStep
	s.Depth = math.Floor((most+depthSlack)/depthStep) * depthStep
	if s.Depth <= 0 {
		return 0, false
	}
	least, ok := LeastDepth(p, s)
	return s.Depth, !ok || s.Depth >= least-depthSlack
}

// LeastDepth returns the depth (mm) of a seat at which its floor just lets the
// ball down to rim or cone, or the seat's own where that does. It is false for a
// seat without a floor, and for one in which the ball touches nothing else.
func LeastDepth(p plan.Plan, s plan.Seat) (float64, bool) {
	contour, err := ball.NewContour(p.Catch.BallDiameter, SeatShape(s))
	if err != nil {
		return 0, false
	}
	clear, ok := contour.FloorClearance()
	if clear >= 0 {
		return s.Depth, ok
	}
	floor := s.Depth
	if s.Form == plan.Drilled { // whose floor is no higher than the chamfer's foot
		floor = math.Max(s.Depth, s.Chamfer)
	}
	return floor - clear, ok
}

// seatsPart returns the part that holds the seats.
func seatsPart(p plan.Plan) plan.Part {
	if p.Arrangement.CatchIn == plan.PartBase {
		return plan.PartTurntable
	}
	return plan.PartBase
}
