// Package preset holds sizes of catches and seats to begin with. They are
// typical ones of our own choosing, common practice with no source and nobody's
// product: the parts in hand are measured before anything is drilled.
package preset

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
)

// Preset is a set of sizes with a name.
type Preset struct {
	Key   string // its name in the words of the window, after "preset."
	Args  words.Args
	apply func(*plan.Plan)
}

// Apply puts the sizes into a plan. It judges nothing: see [plan.Validate].
func (s Preset) Apply(p *plan.Plan) { s.apply(p) }
