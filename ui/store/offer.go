package store

import (
	"math"

	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Offer is a list of stops that could be added, sorted out against the plan.
type Offer struct {
	New      []plan.Stop // the plan has none at their angles
	There    []plan.Stop // the plan has them on every side asked for
	Repeated int         // named again further on in the list
	Outside  int         // of New: beyond the travel, on one side at least
}

// Offer sorts out stops that could be added. Of one that is asked for on both
// sides and there on one, the other is new.
func (s *Store) Offer(stops []plan.Stop) Offer {
	there, named := angleSet{}, angleSet{}
	for _, stop := range s.report.Plate.Stops {
		there.add(stop.Angle.Degrees())
	}
	var o Offer
	for _, stop := range stops {
		var free []float64
		repeated := false
		for _, a := range sides(stop) {
			repeated = repeated || named.has(a)
			if !there.has(a) && !named.has(a) {
				free = append(free, a)
			}
		}
		switch {
		case len(free) == 0 && repeated:
			o.Repeated++
			continue
		case len(free) == 0:
			o.There = append(o.There, stop)
			continue
		case len(free) == 1:
			stop.Angle, stop.BothSides = free[0], false
		}
		for _, a := range free {
			named.add(a)
		}
		if t := s.plan.Travel; min(free[0], free[len(free)-1]) < t.From || max(free[0], free[len(free)-1]) > t.To {
			o.Outside++
		}
		o.New = append(o.New, stop)
	}
	return o
}

// sides returns the angles a stop stands for.
func sides(stop plan.Stop) []float64 {
	if stop.BothSides && stop.Angle != 0 {
		return []float64{stop.Angle, -stop.Angle}
	}
	return []float64{stop.Angle}
}

// InTravel returns an angle, or the same a full turn on or back where that is
// what the table can make.
func (s *Store) InTravel(a geom.Angle) geom.Angle {
	t := s.plan.Travel
	for _, same := range [3]geom.Angle{a, a - geom.FullTurn, a + geom.FullTurn} {
		if same.Degrees() >= t.From && same.Degrees() <= t.To {
			return same + 0
		}
	}
	return a + 0
}

// angleSet is a set of angles in degrees, those within [check.Slack] of one
// another being the same.
type angleSet map[int64]bool

func (s angleSet) add(deg float64) { s[cell(deg)] = true }

func (s angleSet) has(deg float64) bool {
	c := cell(deg)
	return s[c-1] || s[c] || s[c+1]
}

func cell(deg float64) int64 { return int64(math.Floor(deg / check.Slack)) }
