package chart

import "slices"

// rings returns the radius of every ring with a hole on it, each once, from the
// pivot outward.
func (s Sheet) rings() []float64 {
	var out []float64
	for _, r := range s.Seats {
		out = append(out, r.Radius)
	}
	for _, p := range s.Pockets {
		out = append(out, p.Radius)
	}
	slices.Sort(out)
	return slices.Compact(out)
}
