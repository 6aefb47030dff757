package check

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// seatBottoms fires when the floor of the seat holds the ball up before it
// rests on the rim or the cone: it rolls about on the floor instead of being
// centred. Value is the seat's depth, limit the depth that would do. A ball that
// its housing holds up higher still is ball-short's.
var seatBottoms = Check{
	ID:       "seat-bottoms",
	Severity: Error,
	run: eachClick(func(pl *plate.Plate, k plate.Click) (Finding, bool) {
		h, ok := k.Home()
		clear, floor := k.Contour().FloorClearance()
		depth := pl.Plan.Seat.Depth
		return Finding{Value: depth, Limit: depth - clear, Unit: mm}, ok && floor && h.Short <= Slack && clear < -Slack
	}),
	say: sayClick("text"),
	fix: deeperSeat,
}

// depthStep is the step (mm) to which a proposed depth is rounded up: what a
// depth stop can be set to.
const depthStep = 0.5

// deeperSeat proposes the depth at which the floor lets the ball down, where
// the part is thick enough.
func deeperSeat(pl *plate.Plate, f Finding) *Fix {
	depth := math.Ceil((f.Limit-Slack)/depthStep) * depthStep
	seat := pl.Plan.Seat
	seat.Depth = depth
	if bottom, blind := plate.SeatShape(seat).Bottom(); !blind || bottom > plate.ThicknessOf(pl.Plan, pl.SeatsPart) {
		return nil
	}
	return &Fix{
		Key: "fix.depth", Args: words.Args{"Depth": words.MM(depth)},
		Apply: func(p plan.Plan) plan.Plan {
			p.Seat.Depth = depth
			return p
		},
	}
}
