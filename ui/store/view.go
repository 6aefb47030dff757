package store

import "stopwright/detent/plan"

// View is how the plate is looked at: settings of the window, not of the plan.
type View struct {
	Part      plan.Part // the one part shown as it lies at the drill; "": all, from above
	Snap      float64   // degrees to which a click on the ring is rounded; 0: free
	BothSides bool      // whether new stops come with their other side
}

// DefaultView looks at the whole plate from above.
func DefaultView() View { return View{Snap: 0.5, BothSides: true} }

// View returns how the plate is looked at.
func (s *Store) View() View { return s.view }

// SetView changes how the plate is looked at.
func (s *Store) SetView(v View) {
	if v != s.view {
		s.view = v
		s.tell(ViewChanged)
	}
}
