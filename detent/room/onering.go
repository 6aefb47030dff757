package room

import (
	"iter"

	"stopwright/detent/geom"
)

// OneRing yields answers that put every stop on one ring with one catch: on the
// plan's own ring if that does, then from the smallest ring up.
func (p Problem) OneRing() iter.Seq[Answer] {
	stops := p.inTravel()
	return func(yield func(Answer) bool) {
		for _, r := range p.atLeast(SmallestRing(stops.turns, p.pitch())) {
			if !yield(p.single(OneRing, r, stops, nil)) {
				return
			}
		}
	}
}

// OnRing returns the answer that puts every stop on a ring of that radius, whether
// or not there is room.
func (p Problem) OnRing(radius float64) Answer { return p.single(OneRing, radius, p.inTravel(), nil) }

// single is an answer with one catch.
func (p Problem) single(kind Kind, radius float64, at places, moved []geom.Angle) Answer {
	return p.onOneRing(kind, radius, []geom.Angle{0}, at, make([]int, len(at.turns)), moved)
}
