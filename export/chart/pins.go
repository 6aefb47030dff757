package chart

import (
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// Pins says what two seats are gauged with: two equal pins, or balls, that fit
// them, and one in the pivot bore.
type Pins struct {
	Diameter float64 // of each
	Balls    bool    // balls resting in countersinks; else pins that fill the holes
	Pivot    float64 // diameter of the pin in the pivot bore; 0: no bore
}

// pinsOf chooses the pins: of the drill's own size in drilled seats; in the
// relief hole of a countersunk one; and where it has none, two of the catch's
// balls, which centre themselves in the cones.
func pinsOf(p plan.Plan) Pins {
	seats := plan.PartBase
	if p.Arrangement.CatchIn == plan.PartBase {
		seats = plan.PartTurntable
	}
	pins := Pins{Diameter: p.Seat.Diameter, Pivot: plate.BoreOf(p, seats)}
	if p.Seat.Form == plan.Countersunk {
		pins.Diameter = p.Seat.ReliefDiameter
		if pins.Diameter == 0 {
			pins.Diameter, pins.Balls = p.Catch.BallDiameter, true
		}
	}
	return pins
}

// OverPivot returns the outside reading (mm) from the pin in the pivot bore to
// a pin in a seat at the given ring radius: R + (pin + pivot pin)/2. It means
// nothing without a pivot bore.
func (p Pins) OverPivot(radius float64) float64 { return radius + (p.Diameter+p.Pivot)/2 }

// Gauge is what two seats measure from one another, mm.
type Gauge struct {
	From    int     // the row measured from; -1: none, and the rest means nothing
	Tag     string  // its tag
	Chord   float64 // centre to centre
	Fits    bool    // the pins clear each other; else only the chord has meaning
	Outside float64 // over the pins: chord + pin
	Inside  float64 // between the pins: chord - pin
}

// between measures row to from row from. There is nothing to measure from -1,
// or from a row to itself.
func (p Pins) between(rows []Seat, from, to int) Gauge {
	if from < 0 || from == to {
		return Gauge{From: -1}
	}
	chord := rows[from].At.Distance(rows[to].At)
	return Gauge{
		From: from, Tag: rows[from].Tag, Chord: chord, Fits: chord >= p.Diameter,
		Outside: chord + p.Diameter, Inside: chord - p.Diameter,
	}
}
