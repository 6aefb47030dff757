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
		var found stopFindings
		for _, s := range pl.Stops {
			a := s.Angle.Degrees()
			limit := min(max(a, t.From), t.To)
			if a >= limit-Slack && a <= limit+Slack {
				continue
			}
			found.add(Finding{
				Angles: []geom.Angle{s.Angle}, Seats: s.Seats,
				Value: a, Limit: limit, Unit: deg,
			})
		}
		found.report(report)
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		t := pl.Plan.Travel
		args := words.Args{"From": words.Deg(t.From), "To": words.Deg(t.To)}
		if len(f.Angles) == 1 {
			args["Angle"] = words.Deg(f.Angles[0])
			return "one", args
		}
		angles := make([]words.Deg, len(f.Angles))
		for i, a := range f.Angles {
			angles[i] = words.Deg(a)
		}
		args["Angles"] = angles
		return "several", args
	},
	fix: widerTravel,
}

// widerTravel lets the table turn as far as the stops.
func widerTravel(pl *plate.Plate, f Finding) *Fix {
	t := pl.Plan.Travel
	t.From = min(t.From, slices.Min(f.Angles).Degrees())
	t.To = max(t.To, slices.Max(f.Angles).Degrees())
	return &Fix{
		Key: "fix.travel", Args: words.Args{"From": words.Deg(t.From), "To": words.Deg(t.To)},
		Apply: func(p plan.Plan) plan.Plan {
			p.Travel = t
			return p
		},
	}
}
