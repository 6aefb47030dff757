package router

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// MoveKind is how the tool moves.
type MoveKind int

// The kinds of move.
const (
	Rapid MoveKind = iota // as fast as the machine goes, in the air
	Feed                  // straight, at a feed
	Turn                  // once round Centre, anticlockwise, while Z goes to its end
)

// Place is where a tool's end is, mm: X and Y as seen from the face, Z above it.
type Place struct{ X, Y, Z float64 }

// Flat returns the place as seen on the face.
func (p Place) Flat() geom.Point { return geom.Point{X: p.X, Y: p.Y} }

// Move is one move of a program.
type Move struct {
	Kind   MoveKind
	To     Place
	Centre geom.Point // of a Turn, which ends over where it began
	Feed   float64    // mm/min; of a Rapid 0
	Step   int        // into the program's steps
	Hole   int        // into the step's holes
}

// length returns how far the tool goes from a place by the move, mm. A helix is
// the slope of a strip as long as its circle.
func (m Move) length(from Place) float64 {
	if m.Kind == Turn {
		return math.Hypot(2*math.Pi*m.Centre.Distance(from.Flat()), m.To.Z-from.Z)
	}
	return math.Hypot(m.To.Flat().Distance(from.Flat()), m.To.Z-from.Z)
}

// mostMoves is how many moves a program may have: many times what the largest
// plate needs with settings that make sense, and short of what fills memory.
const mostMoves = 1_000_000

// countMoves returns how many moves the cuts need at most.
func countMoves(cuts []cut, set plan.Router) float64 {
	n := 0.0
	for _, c := range cuts {
		each := 3.0 // over, down, up
		if c.Mill {
			circles := math.Ceil(math.Max(c.Diameter-set.Cutter, 0) / 2 / (stepOver * set.Cutter))
			each += (circles + 1) * (math.Ceil(c.Depth/set.DepthPerPass) + 6)
		} else {
			each += 3 * float64(len(pecks(set.Approach, c.Depth, set.Peck)))
		}
		n += each * float64(len(c.Holes))
	}
	return n
}

// path gathers moves, each from where the last one ended.
type path struct {
	at         Place
	moves      []Move
	step, hole int
}

func (p *path) add(m Move) {
	m.Step, m.Hole = p.step, p.hole
	p.moves = append(p.moves, m)
	p.at = m.To
}

// over travels to a place at the height the tool has.
func (p *path) over(at geom.Point) { p.add(Move{Kind: Rapid, To: Place{at.X, at.Y, p.at.Z}}) }

// fast travels up or down to a height, if it is not there already.
func (p *path) fast(z float64) {
	if z != p.at.Z {
		p.add(Move{Kind: Rapid, To: Place{p.at.X, p.at.Y, z}})
	}
}

// plunge goes straight down.
func (p *path) plunge(z, feed float64) {
	p.add(Move{Kind: Feed, To: Place{p.at.X, p.at.Y, z}, Feed: feed})
}

// aside goes straight sideways.
func (p *path) aside(to geom.Point, feed float64) {
	p.add(Move{Kind: Feed, To: Place{to.X, to.Y, p.at.Z}, Feed: feed})
}

// round goes once round a centre.
func (p *path) round(centre geom.Point, z, feed float64) {
	p.add(Move{Kind: Turn, To: Place{p.at.X, p.at.Y, z}, Centre: centre, Feed: feed})
}
