package check

import "stopwright/detent/plate"

// drillBreaksThrough fires when the tip of the drill, or of the countersink,
// comes out of the other side of a seat that is meant to be blind. A tip that
// just reaches the other face is not flagged, nor is a seat drilled through, nor
// a relief hole. Value is how deep the tip goes, limit the part's thickness.
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
	say: say("text"),
	fix: betterDepth,
}
