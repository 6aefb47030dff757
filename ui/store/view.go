package store

import (
	"stopwright/detent/plan"
	"stopwright/ui/units"
)

// View is how the plate is looked at: settings of the window, not of the plan.
type View struct {
	Part      plan.Part   // the one part shown as it lies at the drill; "": all, from above
	Snap      float64     // degrees to which a click on the ring is rounded; 0: free
	BothSides bool        // whether new stops come with their other side
	Layers    Layers      // what is hidden
	Units     units.Style // how numbers are shown
}

// Layers is a set of what can be hidden on the plate.
type Layers int

// What can be hidden.
const (
	BasePart Layers = 1 << iota
	TurntablePart
	CollarPart
	Angles       // the stops' angles
	Dimensions   // the tightest web, and the measures of what is selected
	Construction // centre marks and balls' tracks
)

// Hides reports whether a layer is hidden.
func (l Layers) Hides(layer Layers) bool { return l&layer != 0 }

// PartLayer returns the layer a part is on.
func PartLayer(p plan.Part) Layers {
	switch p {
	case plan.PartTurntable:
		return TurntablePart
	case plan.PartCollar:
		return CollarPart
	}
	return BasePart
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

// ToggleLayer hides a layer, or shows it again.
func (s *Store) ToggleLayer(layer Layers) {
	v := s.view
	v.Layers ^= layer
	s.SetView(v)
}
