package store

import "slices"

// Selection is what the maker is looking at: some stops of the plan, or one
// finding, or one feature. At most one of the three is chosen.
type Selection struct {
	Stops   []int // into the plan's stops, in order
	Lead    int   // the stop chosen last; -1: none
	Finding int   // into the report's findings; -1: none
	Feature int   // into the plan's features; -1: none
}

// Has reports whether a stop is selected.
func (sel Selection) Has(stop int) bool { return slices.Contains(sel.Stops, stop) }

// noSelection is nothing chosen.
func noSelection() Selection { return Selection{Lead: -1, Finding: -1, Feature: -1} }

// only selects one stop, or nothing.
func only(stop int) Selection {
	sel := noSelection()
	if stop >= 0 {
		sel.Lead, sel.Stops = stop, []int{stop}
	}
	return sel
}

// within drops what a plan of n stops and so many features does not have. Findings are made anew by
// every edit, so none stays chosen.
func (sel Selection) within(n, features int) Selection {
	stops := slices.DeleteFunc(slices.Clone(sel.Stops), func(i int) bool { return i >= n })
	out := Selection{Stops: stops, Lead: sel.Lead, Finding: -1, Feature: sel.Feature}
	if out.Feature >= features {
		out.Feature = -1
	}
	if out.Lead >= n {
		out.Lead = -1
		if len(stops) > 0 {
			out.Lead = stops[len(stops)-1]
		}
	}
	return out
}

// moved returns the same stops selected in a list put in another order, which
// gives for each place where its stop was before.
func (sel Selection) moved(order []int) Selection {
	out := noSelection()
	for now, was := range order {
		if _, found := slices.BinarySearch(sel.Stops, was); found {
			out.Stops = append(out.Stops, now)
		}
		if was == sel.Lead {
			out.Lead = now
		}
	}
	return out
}

// Selection returns what is selected. The caller must not write to its list.
func (s *Store) Selection() Selection { return s.selection }

// SelectStop selects one stop of the plan; -1 selects nothing.
func (s *Store) SelectStop(stop int) {
	if stop >= len(s.plan.Stops) {
		stop = -1
	}
	s.choose(only(stop))
}

// ToggleStop adds a stop to those selected, or takes it away.
func (s *Store) ToggleStop(stop int) {
	if stop < 0 || stop >= len(s.plan.Stops) {
		return
	}
	sel := Selection{Stops: slices.Clone(s.selection.Stops), Lead: stop, Finding: -1, Feature: -1}
	at, found := slices.BinarySearch(sel.Stops, stop)
	if !found {
		sel.Stops = slices.Insert(sel.Stops, at, stop)
	} else if sel.Stops = slices.Delete(sel.Stops, at, at+1); len(sel.Stops) > 0 {
		sel.Lead = sel.Stops[len(sel.Stops)-1]
	} else {
		sel.Lead = -1
	}
	s.choose(sel)
}

// SelectAllStops selects every stop.
func (s *Store) SelectAllStops() {
	sel := only(len(s.plan.Stops) - 1)
	sel.Stops = nil
	for i := range s.plan.Stops {
		sel.Stops = append(sel.Stops, i)
	}
	s.choose(sel)
}

// SelectFinding selects a finding of the report; -1 selects nothing.
func (s *Store) SelectFinding(finding int) {
	sel := noSelection()
	if finding < len(s.report.Findings) {
		sel.Finding = max(finding, -1)
	}
	s.choose(sel)
}

// SelectFeature selects a feature of the plan; -1 selects nothing.
func (s *Store) SelectFeature(feature int) {
	sel := noSelection()
	if feature < len(s.plan.Features) {
		sel.Feature = max(feature, -1)
	}
	s.choose(sel)
}

func (s *Store) choose(sel Selection) {
	now := s.selection
	if sel.Lead != now.Lead || sel.Finding != now.Finding || sel.Feature != now.Feature || !slices.Equal(sel.Stops, now.Stops) {
		s.selection = sel
		s.tell(SelectionChanged)
	}
}

// StopOfSeat returns which of the plan's stops a seat serves first.
func (s *Store) StopOfSeat(seat int) int {
	pl := s.report.Plate
	return pl.Stops[pl.Seats[seat].Serves[0].Stop].Index
}
