package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// betterDepth proposes the nearest depth at which the floor lets the balls down
// and the drill stays inside the part: see [plate.SeatDepth].
func betterDepth(pl *plate.Plate, _ Finding) *Fix {
	depth, ok := plate.SeatDepth(pl.Plan, pl.Plan.Seat)
	if !ok {
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
