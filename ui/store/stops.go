package store

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// AddStops adds stops to the plan's list, each where its angle belongs if the
// list is in order, else at the end, and selects the last. It is one edit.
func (s *Store) AddStops(name string, stops ...plan.Stop) error {
	at := len(s.plan.Stops) + len(stops) - 1
	err := s.Edit(name, func(p *plan.Plan) {
		inOrder := slices.IsSortedFunc(p.Stops, byAngle)
		p.Stops = append(p.Stops, stops...)
		if inOrder && len(stops) > 0 {
			last := plan.Stop{Angle: math.Nextafter(stops[len(stops)-1].Angle, math.Inf(1))}
			slices.SortStableFunc(p.Stops, byAngle)
			at, _ = slices.BinarySearchFunc(p.Stops, last, byAngle)
			at--
		}
	})
	if err == nil {
		s.SelectStop(at)
	}
	return err
}

// RemoveStops takes stops off the list and selects the one that takes the place
// of the first.
func (s *Store) RemoveStops(name string, stops ...int) error {
	if len(stops) == 0 {
		return nil
	}
	err := s.Edit(name, func(p *plan.Plan) {
		kept := p.Stops[:0]
		for i, stop := range p.Stops {
			if !slices.Contains(stops, i) {
				kept = append(kept, stop)
			}
		}
		p.Stops = kept
	})
	s.SelectStop(min(slices.Min(stops), len(s.plan.Stops)-1))
	return err
}

// ChangeStops changes stops of the list, as one edit. Those there are none of
// are passed over.
func (s *Store) ChangeStops(name string, change func(*plan.Stop), stops ...int) error {
	return s.Edit(name, func(p *plan.Plan) {
		for _, i := range stops {
			if i >= 0 && i < len(p.Stops) {
				change(&p.Stops[i])
			}
		}
	})
}

// SortStops puts the list in order of angle. What is selected stays so.
func (s *Store) SortStops(name string) error {
	stops := s.plan.Stops
	order := make([]int, len(stops)) // for each place, where its stop was before
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return byAngle(stops[a], stops[b]) })
	sel := s.selection.moved(order)
	err := s.Edit(name, func(p *plan.Plan) {
		was := slices.Clone(p.Stops)
		for now, i := range order {
			p.Stops[now] = was[i]
		}
	})
	sel.Finding = s.selection.Finding // none, if the order was another
	s.choose(sel)
	return err
}

func byAngle(a, b plan.Stop) int { return cmp.Compare(a.Angle, b.Angle) }

// StopAt returns the turn of the table that brings a place of the seats' part,
// seen from above, under the ball of a catch: rounded to a step in degrees (0:
// not rounded), inside the travel where it can be, and as near to 0.
func (s *Store) StopAt(at geom.Point, catch int, step float64) geom.Angle {
	pl := s.report.Plate
	c := s.plan.Catches[catch]
	turn := (pl.Sigma * (at.Azimuth() - geom.Angle(c.Azimuth))).Wrap()
	if step > 0 {
		turn = Tidy(math.Round(turn.Degrees()/step) * step).Wrap()
	}
	return s.InTravel(turn)
}

// Tidy takes the rounding of a sum off an angle in degrees: no stop is meant to
// a finer step than a millionth of a degree.
func Tidy(deg float64) geom.Angle { return geom.Angle(math.Round(deg*1e6)/1e6 + 0) }
