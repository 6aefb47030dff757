package store

import (
	"math"

	"stopwright/detent/geom"
)

// Turn returns how far the table is turned on screen. It is not part of the
// plan.
func (s *Store) Turn() geom.Angle { return s.turn }

// SetTurn turns the table on screen, as far as its travel goes.
func (s *Store) SetTurn(turn geom.Angle) {
	t := s.plan.Travel
	turn = geom.Angle(math.Max(t.From, math.Min(t.To, turn.Degrees())))
	if turn != s.turn {
		s.turn = turn
		s.tell(TurnChanged)
	}
}

// NextStop returns the angle of the nearest stop on from the table's turn, one
// way (+1) or the other (-1), and false when there is none.
func (s *Store) NextStop(way int) (geom.Angle, bool) {
	best, found := geom.Angle(0), false
	for _, stop := range s.report.Plate.Stops {
		if on := geom.Angle(way) * (stop.Angle - s.turn); on > turnSlack && (!found || on < geom.Angle(way)*(best-s.turn)) {
			best, found = stop.Angle, true
		}
	}
	return best, found
}

// turnSlack is how near (degrees) the table may be to a stop and be at it.
const turnSlack = 1e-6

// AtStop returns the stop the table is at, and false between stops.
func (s *Store) AtStop() (geom.Angle, bool) {
	for _, stop := range s.report.Plate.Stops {
		if (stop.Angle - s.turn).Abs() <= turnSlack {
			return stop.Angle, true
		}
	}
	return 0, false
}
