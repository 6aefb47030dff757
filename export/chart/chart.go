package chart

import (
	"slices"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// Chart is the drilling chart of a plan: a plain value.
type Chart struct {
	Title  string
	Date   string // as the caller writes it; empty: a line to fill in
	Words  *words.Catalogue
	Sheets []Sheet // the part with the seats, then the part with the catches

	Work  []Operation     // in order, part by part
	Bill  Bill            // what to buy and saw; empty in a chart of one part
	Ticks map[string]bool // what is done: see [Operation.Tick]

	plate *plate.Plate
}

// Sheet is the chart of one part. One of its two lists of holes is used: a part
// holds either the seats or the catches.
type Sheet struct {
	Part  plan.Part
	Face  plate.Face      // up at the drill
	Turn  plan.Sense      // a positive turn of the table, as it appears in this view
	Plate *plate.Plate    // what the sheet is of
	Drawn drawing.Drawing // the part as it lies at the drill, full size, pivot at the origin

	Bore float64 // diameter of the bore on the pivot; 0: none

	Drill Drill // for the seats
	Loose Loose // a ball to gauge them with
	Pins  Pins
	Seats []Seat // by catch, then by angle
	Datum int    // the seat the others are measured from; -1: no seat yet

	Pockets []Pocket
}

// HoldsSeats reports whether the sheet is of the part with the seats.
func (s Sheet) HoldsSeats() bool { return s.Part == s.Plate.SeatsPart }

// New makes the chart of a report.
func New(r detent.Report, info drawing.Info) Chart {
	pl := r.Plate
	c := Chart{Title: drawing.Title(pl.Plan, info.Words, info.Words.Text("chart.name")), Date: strings.TrimSpace(info.Date), Words: info.Words}
	seats := newSheet(pl, pl.SeatsPart)
	seats.Drill, seats.Loose = drillOf(pl.Plan), looseOf(pl.Plan)
	seats.Pins = pinsOf(pl.Plan)
	seats.Seats, seats.Datum = seatRows(pl, seats.Pins), pl.Datum()
	catches := newSheet(pl, pl.CatchPart)
	catches.Pockets = pocketRows(pl)
	c.Sheets = []Sheet{seats, catches}
	c.Work, c.Bill, c.Ticks, c.plate = Operations(pl, c.Words), BillOf(pl, c.Words), ticked(pl.Plan.Ticks), pl
	return c
}

// Only returns the chart with the sheet and the operations of one part, without
// a bill; with no sheet if that part holds neither seats nor catches.
func (c Chart) Only(part plan.Part) Chart {
	var kept []Sheet
	for _, s := range c.Sheets {
		if s.Part == part {
			kept = append(kept, s)
		}
	}
	c.Sheets, c.Bill = kept, Bill{}
	c.Work = slices.DeleteFunc(slices.Clone(c.Work), func(o Operation) bool { return o.Part != part })
	return c
}

func newSheet(pl *plate.Plate, part plan.Part) Sheet {
	return Sheet{
		Part: part, Face: plate.FaceOf(part), Turn: turnSeen(pl, part), Plate: pl,
		Drawn: drawing.Part(pl, part, drawing.AsAtDrill),
		Bore:  plate.BoreOf(pl.Plan, part), Datum: -1,
	}
}

// turnSeen returns which way a positive turn goes in the view of a part: the
// plan's own, or the other one seen from below.
func turnSeen(pl *plate.Plate, part plan.Part) plan.Sense {
	clockwise := pl.Plan.Arrangement.PositiveTurn == plan.Clockwise
	if drawing.AsAtDrill.Mirrored(part) {
		clockwise = !clockwise
	}
	if clockwise {
		return plan.Clockwise
	}
	return plan.Counterclockwise
}

// azimuthSeen returns an azimuth, given as seen from above, in the view of a
// part.
func azimuthSeen(part plan.Part, az geom.Angle) geom.Angle {
	if drawing.AsAtDrill.Mirrored(part) {
		az = -az
	}
	return az.Wrap()
}

// faceUp returns the face of a part that lies up at the drill; a wear ring lies
// as the part it is let into.
func (c Chart) faceUp(part plan.Part) plate.Face { return plate.FaceOf(drawing.Like(c.plate, part)) }
