package preset

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/plan"
)

// Shares of the ball's diameter that a seat is made with: common practice, no
// source. A rim at three quarters of the ball meets it at asin 0.75, 49° from
// the axis, which holds firmly and still lets it ride out.
const (
	rimShare    = 0.75
	coneShare   = 0.78 // above the 0.71 at which a 90° cone's rim would touch first; wider, and a screwed-in ball would not reach its cone
	reliefShare = 0.4
)

// Seats returns the presets of a seat for a ball of the given diameter, mm.
func Seats(ball float64) []Preset {
	drilled := plan.Seat{
		Form: plan.Drilled, Diameter: tenth(rimShare * ball), Depth: tenth(ball),
		DrillPoint: 118, CountersinkAngle: 90,
	}
	relieved, through, countersunk := drilled, drilled, drilled
	relieved.ReliefDiameter = tenth(reliefShare * ball)
	through.Depth = 0
	countersunk.Form, countersunk.Diameter, countersunk.Depth = plan.Countersunk, tenth(coneShare*ball), 0
	countersunk.ReliefDiameter = relieved.ReliefDiameter
	return []Preset{
		ofSeat("drilled", drilled), ofSeat("relieved", relieved),
		ofSeat("through", through), ofSeat("countersunk", countersunk),
	}
}

func ofSeat(key string, s plan.Seat) Preset {
	args := words.Args{"Diameter": words.MM(s.Diameter), "Relief": words.MM(s.ReliefDiameter)}
	return Preset{Key: key, Args: args, apply: func(p *plan.Plan) { p.Seat = s }}
}

// tenth rounds to a tenth of a mm, as drills are sold, and never to nothing.
func tenth(mm float64) float64 { return max(math.Round(mm*10), 1) / 10 }
