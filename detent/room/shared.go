package room

import (
	"context"
	"iter"

	"stopwright/detent/geom"
)

// MaxCatches is the most catches an answer has: more are more work than another
// plate.
const MaxCatches = 12

// SharedRing yields answers that put every stop on one ring with so many catches,
// at least 2: on the plan's own ring if that does, then from the smallest up. The
// stops are dealt in turn, which no deal betters. Either each catch keeps to a
// sector of its own; or, where all stops lie on equal divisions of a turn, the
// sectors lie into each other so that a ball meets a strange seat only at a stop.
func (p Problem) SharedRing(ctx context.Context, catches int) iter.Seq[Answer] {
	stops := p.inTravel()
	if catches < 2 || catches > len(stops.turns) {
		return none
	}
	return func(yield func(Answer) bool) {
		of := Deal(len(stops.turns), catches)
		parts := spans(stops.turns, of, catches)
		for _, r := range p.atLeast(RingFor(DealtGap(stops.turns, catches), p.pitch())) {
			if ctx.Err() != nil {
				return
			}
			if places, ok := p.sectors(r, parts); ok && !yield(p.onOneRing(SharedRing, r, places, stops, of, nil)) {
				return
			}
		}
		for a := range p.interleaved(ctx, stops, catches) {
			if !yield(a) {
				return
			}
		}
	}
}

// none is no answer.
func none(func(Answer) bool) {}

// onOneRing is an answer with one ring, by the places of its catches and the catch
// of each stop.
func (p Problem) onOneRing(kind Kind, radius float64, catches []geom.Angle, at places, of []int, moved []geom.Angle) Answer {
	a := Answer{Kind: kind, Stops: p.stops(at, of, moved)}
	for _, c := range catches {
		a.Catches = append(a.Catches, Catch{Hole: Hole{Place: c, Radius: radius}})
	}
	a.Web = p.ringWeb(a)
	return a
}
