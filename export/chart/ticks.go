package chart

import "slices"

// ticked returns a log of ticks as a set.
func ticked(ticks []string) map[string]bool {
	out := make(map[string]bool, len(ticks))
	for _, t := range ticks {
		out[t] = true
	}
	return out
}

// Stray lists the ticks of a log that belong to no operation: their hole has
// gone or moved since.
func Stray(ticks []string, operations []Operation) []string {
	known := map[string]bool{}
	for _, o := range operations {
		for _, t := range o.Ticks() {
			known[t] = true
		}
	}
	return slices.DeleteFunc(slices.Clone(ticks), func(t string) bool { return known[t] })
}

// Toggled returns a log with some ticks set, or taken off where all of them are
// set already. It shares nothing with the log it was given.
func Toggled(log, ticks []string) []string {
	set := ticked(log)
	if !slices.ContainsFunc(ticks, func(t string) bool { return !set[t] }) {
		off := ticked(ticks)
		return slices.DeleteFunc(slices.Clone(log), func(t string) bool { return off[t] })
	}
	out := slices.Clone(log)
	for _, t := range ticks {
		if !set[t] {
			out = append(out, t)
			set[t] = true
		}
	}
	return out
}
