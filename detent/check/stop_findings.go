package check

import (
	"math"
	"slices"
)

// stopFindings gathers findings about stops so that there is one for each seat:
// the worst, which also concerns the other stops found there. One seat serves
// several stops where they are a full turn apart, or where catches share it.
type stopFindings struct {
	found []Finding
	at    map[int]int // into found, by the seat it is about
}

// add keeps f, or joins it to the finding about the same seat.
func (fs *stopFindings) add(f Finding) {
	k, known := fs.at[f.Seats[0]]
	if !known {
		if fs.at == nil {
			fs.at = map[int]int{}
		}
		fs.at[f.Seats[0]] = len(fs.found)
		fs.found = append(fs.found, f)
		return
	}
	worst, other := fs.found[k], f
	if math.Abs(f.Value-f.Limit) > math.Abs(worst.Value-worst.Limit) {
		worst, other = other, worst
	}
	worst.Angles = union(worst.Angles, other.Angles)
	worst.Seats = union(worst.Seats, other.Seats)
	fs.found[k] = worst
}

// union returns a and then what b has besides, in a list of its own.
func union[T comparable](a, b []T) []T {
	out := slices.Clone(a)
	for _, x := range b {
		if !slices.Contains(out, x) {
			out = append(out, x)
		}
	}
	return out
}

// report tells every finding kept, in the order in which their seats came up.
func (fs *stopFindings) report(report func(Finding)) {
	for _, f := range fs.found {
		report(f)
	}
}
