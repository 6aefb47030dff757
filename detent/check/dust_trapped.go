package check

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// dustTrapped notes that the seats are blind and have no relief hole: dust
// packs in them until the balls no longer seat. Seats that open downwards lose
// most of it, but not what the balls press in. Seats that go through, or have a
// relief hole, are not flagged.
var dustTrapped = Check{
	ID:       "dust-trapped",
	Severity: Note,
	run: func(pl *plate.Plate, report func(Finding)) {
		s := pl.Plan.Seat
		if _, blind := plate.SeatShape(s).Bottom(); blind && s.ReliefDiameter == 0 && len(pl.Seats) > 0 {
			report(Finding{Angles: allStops(pl), Unit: mm})
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		if pl.SeatsPart == plan.PartTurntable {
			return "down", nil
		}
		return "up", nil
	},
	fix: reliefHole,
}

// reliefStep is the step (mm) to which a proposed relief hole is rounded up from
// half the seat: wide enough for chips, and well clear of the rim. Common
// practice, no source.
const reliefStep = 0.5

// reliefHole proposes a smaller hole on through the seats, where the dust can
// fall out: not in seats that open downwards, where it would let in the dust
// from the table's top, and not where the balls would rest on it.
func reliefHole(pl *plate.Plate, _ Finding) *Fix {
	seat := pl.Plan.Seat
	seat.ReliefDiameter = math.Ceil((seat.Diameter/2-Slack)/reliefStep) * reliefStep
	contour, err := ball.NewContour(pl.Plan.Catch.BallDiameter, plate.SeatShape(seat))
	if err != nil || pl.SeatsPart != plan.PartBase || seat.ReliefDiameter >= seat.Diameter {
		return nil
	}
	if home, ok := contour.At(0); !ok || home.Rest == ball.Relief {
		return nil
	}
	return &Fix{
		Key: "fix.relief", Args: words.Args{"Diameter": words.MM(seat.ReliefDiameter)},
		Apply: func(p plan.Plan) plan.Plan {
			p.Seat = seat
			return p
		},
	}
}
