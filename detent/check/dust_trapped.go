package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// dustTrapped notes that the seats are blind and have no relief hole: dust
// packs in them until the ball no longer seats. Seats that go through, or have
// a relief hole, are not flagged.
var dustTrapped = Check{
	ID:       "dust-trapped",
	Severity: Note,
	run: func(pl *plate.Plate, report func(Finding)) {
		s := pl.Plan.Seat
		if _, blind := plate.SeatShape(s).Bottom(); blind && s.ReliefDiameter == 0 && len(pl.Seats) > 0 {
			report(Finding{Angles: allStops(pl), Value: s.ReliefDiameter, Unit: mm})
		}
	},
	say: func(*plate.Plate, Finding) (string, words.Args) { return "text", nil },
}
