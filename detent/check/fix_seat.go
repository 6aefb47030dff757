package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// betterSeat proposes the standard drill that seats the ball best: see
// [plate.BestSeat].
func betterSeat(pl *plate.Plate, _ Finding) *Fix {
	best, ok := plate.BestSeat(pl.Plan, plate.MetricDrills())
	if !ok || best.Seat == pl.Plan.Seat {
		return nil
	}
	return &Fix{
		Key:  "fix.drill",
		Args: words.Args{"New": words.MM(best.Seat.Diameter), "Old": words.MM(pl.Plan.Seat.Diameter)},
		Apply: func(p plan.Plan) plan.Plan {
			p.Seat = best.Seat
			return p
		},
	}
}
