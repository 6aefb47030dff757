package plate

import (
	"math"

	"stopwright/detent/geom"
)

// Ball is where one catch's ball is with the table turned, over the face that
// holds the seats.
type Ball struct {
	Catch  int        // into the plan's catches
	Centre geom.Point // in the seats' own part, seen from above, table at zero
	Seat   int        // the nearest seat; -1: there is none
	Offset float64    // mm from that seat's axis; infinite when there is none
	Served bool       // that seat is meant for this catch at this turn
}

// Over reports whether the ball stands over its nearest seat's mouth, so that
// it sinks in.
func (b Ball) Over(mouth float64) bool { return b.Offset < mouth/2 }

// Balls returns where every catch's ball is with the table turned by turn. A
// ball counts as served at a seat when a stop that seat serves with that catch
// is nearer than the angle at which the ball begins to drop: the click is one
// the maker asked for.
func (pl *Plate) Balls(turn geom.Angle) []Ball {
	out := make([]Ball, len(pl.Tracks))
	mouth := pl.Plan.Seat.Mouth()
	for i, t := range pl.Tracks {
		c := pl.Plan.Catches[i]
		at := geom.Polar(t.Path.Radius, geom.Angle(c.Azimuth)+pl.Sigma*turn)
		b := Ball{Catch: i, Centre: at, Seat: -1, Offset: math.Inf(1)}
		if n := pl.index.nearestTo(at); n.Seat >= 0 {
			b.Seat, b.Offset = n.Seat, n.Distance
			b.Served = pl.served(n.Seat, i, turn, 2*captureHalf(mouth, t.Path.Radius))
		}
		out[i] = b
	}
	return out
}

// served reports whether a seat serves a stop of the catch within reach of a
// turn.
func (pl *Plate) served(seat, catch int, turn, reach geom.Angle) bool {
	for _, v := range pl.Seats[seat].Serves {
		if v.Catch == catch && (v.Angle-turn).Wrap().Abs() <= reach {
			return true
		}
	}
	return false
}

// captureHalf returns half the angle within which a ball begins to drop on
// either side of a stop: asin(a/2R), a the mouth's radius.
func captureHalf(mouth, radius float64) geom.Angle {
	return geom.FromRadians(math.Asin(math.Min(1, mouth/4/radius)))
}
