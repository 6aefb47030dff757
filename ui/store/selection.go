package store

import "stopwright/detent"

// Selection is what the maker is looking at: a stop of the plan, or a finding.
// -1 is none; at most one of the two is chosen.
type Selection struct {
	Stop    int // into the plan's stops
	Finding int // into the report's findings
}

// NoSelection is nothing chosen.
var NoSelection = Selection{-1, -1}

// within drops what a new report no longer has. Findings are made anew by every
// edit, so none stays chosen.
func (sel Selection) within(r detent.Report) Selection {
	if sel.Stop >= len(r.Plate.Plan.Stops) {
		sel.Stop = -1
	}
	sel.Finding = -1
	return sel
}

// Selection returns what is selected.
func (s *Store) Selection() Selection { return s.selection }

// SelectStop selects a stop of the plan; -1 selects nothing.
func (s *Store) SelectStop(stop int) { s.selectWhat(Selection{stop, -1}) }

// SelectFinding selects a finding of the report; -1 selects nothing.
func (s *Store) SelectFinding(finding int) { s.selectWhat(Selection{-1, finding}) }

func (s *Store) selectWhat(sel Selection) {
	if sel.Stop < -1 || sel.Stop >= len(s.plan.Stops) {
		sel.Stop = -1
	}
	if sel.Finding < -1 || sel.Finding >= len(s.report.Findings) {
		sel.Finding = -1
	}
	if sel != s.selection {
		s.selection = sel
		s.tell(SelectionChanged)
	}
}

// Marks says how each item of the plate is to be marked.
type Marks struct {
	Selected, Faulty Items
}

// Items is a set of a plate's items.
type Items struct {
	Seats, Pockets, Features, Tracks map[int]bool
}

func newItems() Items {
	return Items{map[int]bool{}, map[int]bool{}, map[int]bool{}, map[int]bool{}}
}

// add puts indices into one of the sets.
func add(set map[int]bool, indices []int) {
	for _, i := range indices {
		set[i] = true
	}
}

// Marks returns what is selected and what any finding is about.
func (s *Store) Marks() Marks {
	m := Marks{newItems(), newItems()}
	for i, f := range s.report.Findings {
		sets := []Items{m.Faulty}
		if i == s.selection.Finding {
			sets = append(sets, m.Selected)
		}
		for _, set := range sets {
			add(set.Seats, f.Seats)
			add(set.Pockets, f.Pockets)
			add(set.Features, f.Features)
			add(set.Tracks, f.Tracks)
		}
	}
	for _, stop := range s.report.Plate.Stops {
		if stop.Index == s.selection.Stop {
			add(m.Selected.Seats, stop.Seats)
		}
	}
	return m
}

// StopOfSeat returns which of the plan's stops a seat serves first.
func (s *Store) StopOfSeat(seat int) int {
	pl := s.report.Plate
	return pl.Stops[pl.Seats[seat].Serves[0].Stop].Index
}
