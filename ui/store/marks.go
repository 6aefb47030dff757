package store

// Marks says how the items of the plate are to be marked.
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

// Marks returns what is selected, and what any finding says is wrong.
func (s *Store) Marks() Marks {
	m := Marks{newItems(), newItems()}
	for i, f := range s.report.Findings {
		var sets []Items
		if f.Wrong() {
			sets = append(sets, m.Faulty)
		}
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
	for i, f := range s.report.Plate.Features {
		if !f.Screw && f.Index == s.selection.Feature {
			m.Selected.Features[i] = true
		}
	}
	chosen := map[int]bool{}
	add(chosen, s.selection.Stops)
	for _, stop := range s.report.Plate.Stops {
		if chosen[stop.Index] {
			add(m.Selected.Seats, stop.Seats)
		}
	}
	return m
}
