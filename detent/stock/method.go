package stock

import "slices"

// Method is a way to place holes.
type Method struct {
	ID string // as plans write it
	// Spread is the radius (mm) of the circle within which centres land.
	Spread Value
	// Effort is what it asks of a shop compared with the others, 1 the least:
	// an estimate, for proposing what costs least.
	Effort int
}

// placing is the evidence for every method: what workshops reckon with, from
// several that agree no better than this.
var placing = Evidence{"common practice, no single source", CommonPractice}

var methods = []Method{
	{"hand-drill", between(0.5, 2, placing), 1},
	{"pillar-drill", between(0.5, 1.6, placing), 2},        // to a centre-punched mark
	{"pillar-drill-guided", between(0.1, 0.3, placing), 4}, // through a bush, or against fixed stops
	{"router", between(0.1, 0.25, placing), 6},             // a hobby machine
	{"router-tight", figure(0.05, placing), 8},             // one known to hold close positions
}

// Methods returns the ways to place holes, the easiest first.
func Methods() []Method { return slices.Clone(methods) }
