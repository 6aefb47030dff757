package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// deadBandWide fires when friction can hold the table farther from a stop than
// the maker's target: seat and track miss each other sideways, and the bottom of
// the click is a bowl and not a V. Value and limit are to either side, in
// degrees. Where seat and track can miss each other by so much that a ball passes
// its seat by, value is that miss and limit the mouth's radius, in mm.
var deadBandWide = Check{
	ID:       "dead-band-wide",
	Severity: Warning,
	run: onHolds(func(pl *plate.Plate, h plate.Hold) (Finding, bool) {
		if !h.Clicks {
			return Finding{}, false
		}
		if !h.HasDead {
			k := pl.Clicks[h.Catches[0]] // all miss alike
			return Finding{Value: k.Miss, Limit: k.Contour().Mouth(), Unit: mm}, true
		}
		return Finding{Value: h.Dead.Degrees(), Limit: pl.Plan.Shop.Target, Unit: deg}, !narrow(pl.Plan, h)
	}),
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		if f.Unit == mm {
			return "passes", numbers(pl, f)
		}
		return "text", numbers(pl, f)
	},
	fix: seatThat(func(p plan.Plan, c plate.SeatChoice) bool {
		return c.HasDead && narrow(p, c.Hold) && c.Seat.Mouth() >= feltShare*p.Catch.BallDiameter
	}),
}

// feltShare is how wide at least, as a share of the ball, a proposed seat is. A
// narrow mouth makes a narrow dead band, but hardly a click: common practice, no
// source.
const feltShare = 0.5

func narrow(p plan.Plan, h plate.Hold) bool { return h.Dead.Degrees() <= p.Shop.Target+Slack }
