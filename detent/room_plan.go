package detent

import (
	"slices"

	"stopwright/detent/plan"
	"stopwright/detent/room"
)

// planOf returns the plan with the catches of an answer where they are placed,
// and every stop held by its catch. A stop on both sides whose sides go different
// ways becomes two. Names, labels, and all that is measured stay.
func (m maker) planOf(a room.Answer, placed []plan.Placement) plan.Plan {
	p := m.plan.Clone()
	p.Catches = placed
	held := func(catch int) []string {
		if catch == 0 {
			return nil // the first, as where no catch is named
		}
		return []string{placed[catch].Name}
	}
	var stops []plan.Stop
	for k := 0; k < len(m.stops); k++ {
		s := a.Stops[k]
		stop := m.plan.Stops[m.stops[k].Index]
		stop.Angle, stop.Catches = s.Turn.Degrees(), held(s.Catch)
		if k+1 == len(m.stops) || !m.stops[k+1].Mirrored {
			stops = append(stops, stop)
			continue
		}
		k++
		other := a.Stops[k]
		if other.Catch == s.Catch && other.Turn == -s.Turn {
			stops = append(stops, stop)
			continue
		}
		stop.BothSides = false
		stops = append(stops, stop)
		stop.Angle, stop.Catches = other.Turn.Degrees(), held(other.Catch)
		stops = append(stops, stop)
	}
	p.Stops = stops
	return p
}

// names returns names for n catches: the plan's own and then the next free ones.
func (s *site) names(n int) []string {
	p := s.plan
	p.Catches = slices.Clone(p.Catches)
	for len(p.Catches) < n {
		p.Catches = append(p.Catches, plan.NewPlacement(p))
	}
	out := make([]string, n)
	for i := range out {
		out[i] = p.Catches[i].Name
	}
	return out
}
