package check

import (
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// stopOutsideTravel fires when the table cannot turn as far as a stop. A stop
// at the very end of the travel is not flagged.
var stopOutsideTravel = Check{
	ID:       "stop-outside-travel",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		t := pl.Plan.Travel
		told := make([]bool, len(pl.Seats))
		for _, s := range pl.Stops {
			a := s.Angle.Degrees()
			limit := min(max(a, t.From), t.To)
			if a >= limit-Slack && a <= limit+Slack {
				continue
			}
			if !slices.ContainsFunc(s.Seats, func(i int) bool { return !told[i] }) {
				continue // a stop listed twice, or a full turn apart: told once
			}
			for _, i := range s.Seats {
				told[i] = true
			}
			report(Finding{
				Angles: []geom.Angle{s.Angle}, Seats: s.Seats,
				Value: a, Limit: limit, Unit: deg,
			})
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		t := pl.Plan.Travel
		return "text", words.Args{
			"Angle": words.Deg(f.Value), "From": words.Deg(t.From), "To": words.Deg(t.To),
		}
	},
	fix: widerTravel,
}

// widerTravel lets the table turn as far as the stop.
func widerTravel(pl *plate.Plate, f Finding) *Fix {
	t := pl.Plan.Travel
	t.From, t.To = min(t.From, f.Value), max(t.To, f.Value)
	return &Fix{
		Key: "fix.travel", Args: words.Args{"From": words.Deg(t.From), "To": words.Deg(t.To)},
		Apply: func(p plan.Plan) plan.Plan {
			p.Travel = t
			return p
		},
	}
}
