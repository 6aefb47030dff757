package check

import (
	"math"

	"stopwright/detent/geom"
)

// stopFindings gathers findings about stops so that there is one for each seat:
// the worst, which also concerns the other stops found there. One seat serves
// several stops where they are a full turn apart, or where catches share it.
type stopFindings struct {
	found []stopFinding
	at    map[int]int // into found, by the seat it is about
}

// stopFinding is the worst finding about one seat, and what any of them
// concerns, with repeats.
type stopFinding struct {
	worst  Finding
	angles []geom.Angle
	seats  []int
}

// add keeps f, or joins it to what is about the same seat.
func (fs *stopFindings) add(f Finding) {
	k, known := fs.at[f.Seats[0]]
	if !known {
		if fs.at == nil {
			fs.at = map[int]int{}
		}
		k = len(fs.found)
		fs.at[f.Seats[0]] = k
		fs.found = append(fs.found, stopFinding{worst: f})
	}
	at := &fs.found[k]
	if math.Abs(f.Value-f.Limit) > math.Abs(at.worst.Value-at.worst.Limit) {
		at.worst = f
	}
	at.angles = append(at.angles, f.Angles...)
	at.seats = append(at.seats, f.Seats...)
}

// report tells one finding for each seat, in the order in which they came up.
func (fs *stopFindings) report(report func(Finding)) {
	for _, at := range fs.found {
		f := at.worst
		f.Angles = distinct(f.Angles, at.angles)
		f.Seats = distinct(f.Seats, at.seats)
		report(f)
	}
}

// distinct returns everything in the lists once, in order.
func distinct[T comparable](lists ...[]T) []T {
	var out []T
	seen := map[T]bool{}
	for _, list := range lists {
		for _, x := range list {
			if !seen[x] {
				seen[x] = true
				out = append(out, x)
			}
		}
	}
	return out
}
