package plate

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Plate is what follows from one plan. It shares no memory with later edits of
// the plan and is never changed once made.
type Plate struct {
	Plan plan.Plan

	// Sigma is the one sign that rules all: +1 when the catch is in the
	// turntable and a positive stop turns it clockwise, or the catch is in the
	// base and it turns counterclockwise; else -1. A seat's azimuth in its own
	// part is the catch's azimuth plus Sigma times the stop's angle.
	Sigma geom.Angle

	CatchPart plan.Part // holds the catches, in pockets
	SeatsPart plan.Part // holds the seats, and the balls' tracks

	Stops    []Stop
	Seats    []Seat // by catch, then by angle
	Pockets  []Pocket
	Tracks   []Track
	Features []Feature
	Clicks   []Click // one a catch
	Holds    []Hold  // one for each set of catches that drop together
	Trueness Trueness
	Drilled  []DrilledSeat // the plan's log, in its order

	index    ringIndex
	measured map[service]int // into Drilled, the last of each
}

// New works out the plate of a plan that [plan.Validate] accepts.
func New(p plan.Plan) *Plate {
	pl := &Plate{Plan: p, Sigma: sigma(p.Arrangement), CatchPart: p.Arrangement.CatchIn}
	pl.SeatsPart = plan.PartBase
	if pl.CatchPart == plan.PartBase {
		pl.SeatsPart = plan.PartTurntable
	}
	pl.Stops = expand(p)
	pl.placeSeats()
	linkSeats(pl.Stops, pl.Seats)
	pl.Pockets = pockets(p)
	pl.Tracks = tracks(p, pl.Sigma)
	pl.Features = append(features(p), fittings(pl)...)
	pl.Clicks = clicks(p)
	pl.Holds = holds(p, pl.Stops, pl.Clicks)
	pl.Trueness = pl.truth()
	pl.readDrilled()
	return pl
}

// placeSeats makes the seats, one for those that coincide, and measures the web
// beside each.
func (pl *Plate) placeSeats() {
	all := seats(pl.Plan, pl.Sigma, pl.Stops)
	pl.index = newRingIndex(all)
	pl.Seats = merge(pl.index)
	if len(pl.Seats) < len(all) {
		pl.index = newRingIndex(pl.Seats)
	}
	number(pl.Plan, pl.Seats)
	pl.index.findWebs(pl.Plan.Seat.Mouth())
}

// sigma returns the sign that rules all: see [Plate.Sigma].
func sigma(a plan.Arrangement) geom.Angle {
	if (a.CatchIn == plan.PartTurntable) == (a.PositiveTurn == plan.Clockwise) {
		return 1
	}
	return -1
}

// AtDrill returns where p, seen from above, lies on a part as it is laid to be
// drilled or routed: the turntable underside up, base and collar top up.
func AtDrill(part plan.Part, p geom.Point) geom.Point {
	if part == plan.PartTurntable {
		return p.MirrorX()
	}
	return p
}

// Face is the side of a part from which it is drilled.
type Face string

// The faces.
const (
	Top       Face = "top"
	Underside Face = "underside"
)

// FaceOf returns the face of a part that lies up at the drill: the one that
// meets the other part.
func FaceOf(part plan.Part) Face {
	if part == plan.PartTurntable {
		return Underside
	}
	return Top
}
