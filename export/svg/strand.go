package svg

import (
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// piece is a line, or an arc when its radius is above 0: from start, degrees
// anticlockwise from +x, through sweep degrees, negative where it runs clockwise.
type piece struct {
	from, to     geom.Point
	centre       geom.Point
	radius       float64
	start, sweep float64
}

// pieceOf returns a line or an arc as a piece.
func pieceOf(s drawing.Shape) (piece, bool) {
	switch s := s.(type) {
	case drawing.Line:
		return piece{from: s.A, to: s.B}, true
	case drawing.Arc:
		first, last := s.Ends()
		return piece{first, last, s.Centre, s.Radius, s.Start, s.Sweep}, true
	}
	return piece{}, false
}

// reversed returns the piece drawn from its other end.
func (k piece) reversed() piece {
	k.from, k.to = k.to, k.from
	k.start, k.sweep = k.start+k.sweep, -k.sweep
	return k
}

// strand is a run of pieces, each beginning where the last one ends.
type strand struct{ parts []piece }

// meets is how near two ends are that are meant as one, mm: above the rounding
// of a 10 m plate's coordinates, below anything that is cut.
const meets = 1e-6

func meet(a, b geom.Point) bool { return a.Distance(b) <= meets }

// closed reports whether the strand comes back to its beginning.
func (s strand) closed() bool {
	n := len(s.parts)
	return n > 1 && meet(s.parts[0].from, s.parts[n-1].to)
}

// takes reports whether a shape goes on where the strand ends. An empty strand
// takes any line or arc.
func (s strand) takes(shape drawing.Shape) bool {
	k, ok := pieceOf(shape)
	if n := len(s.parts); ok && n > 0 && !s.closed() {
		last := s.parts[n-1]
		return meet(last.to, k.from) || meet(last.to, k.to) ||
			n == 1 && (meet(last.from, k.from) || meet(last.from, k.to))
	}
	return ok && len(s.parts) == 0
}

// add appends a shape that the strand takes, turned round where that is needed,
// and reports whether it is a line or an arc.
func (s *strand) add(shape drawing.Shape) bool {
	k, ok := pieceOf(shape)
	if !ok {
		return false
	}
	if n := len(s.parts); n > 0 {
		last := s.parts[n-1].to
		if !meet(last, k.from) && !meet(last, k.to) {
			s.parts[0] = s.parts[0].reversed() // the only one: the next begins at its beginning
			last = s.parts[0].to
		}
		if !meet(last, k.from) {
			k = k.reversed()
		}
	}
	s.parts = append(s.parts, k)
	return true
}
