package router

import "math"

// runUp is how long a spindle is given to come up to speed, s: common practice,
// no source.
const runUp = 3

// seconds estimates the time of a program from the lengths of its moves and
// their feeds. What a machine loses by starting and stopping is not counted, nor
// what a maker takes to change a tool.
func seconds(p Program) float64 {
	s := stepper{Program: p, at: Place{Z: p.Settings.SafeHeight}, tool: -1}
	for _, m := range p.Moves {
		s.take(m, math.Inf(1))
	}
	return s.time
}
