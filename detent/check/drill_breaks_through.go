package check

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// drillBreaksThrough fires when the tip of the drill, or of the countersink,
// comes out of the other side of a seat that is meant to be blind. A tip that
// just reaches the other face is not flagged, nor is a seat drilled through.
var drillBreaksThrough = Check{
	ID:       "drill-breaks-through",
	Severity: Warning,
	run: func(pl *plate.Plate, report func(Finding)) {
		bottom, blind := plate.SeatShape(pl.Plan.Seat).Bottom()
		thickness := plate.ThicknessOf(pl.Plan, pl.SeatsPart)
		if blind && bottom > thickness+Slack {
			report(Finding{Angles: allStops(pl), Value: bottom, Limit: thickness, Unit: mm})
		}
	},
	say: func(_ *plate.Plate, f Finding) (string, words.Args) {
		return "text", words.Args{"Value": words.MM(f.Value), "Limit": words.MM(f.Limit)}
	},
}

// allStops returns the angles of every stop.
func allStops(pl *plate.Plate) []geom.Angle {
	out := make([]geom.Angle, len(pl.Stops))
	for i, s := range pl.Stops {
		out[i] = s.Angle
	}
	return out
}
