package stock

import (
	"slices"
)

// Point is the included angle of a drill's point or of a countersink.
type Point struct {
	ID    string  // what it is for
	Angle float64 // degrees, over 0 to 180 (flat)
	Evidence
}

var pointPractice = Evidence{"common practice, no source", CommonPractice}

var drillPoints = []Point{
	{"centre-drill", 60, pointPractice},
	{"spotting-drill", 90, pointPractice},
	{"general", 118, pointPractice},
	{"spotting-drill-wide", 120, pointPractice},
	{"split-point", 135, pointPractice},
	{"flat", 180, pointPractice},
}

var countersinks = []Point{
	{"inch", 82, Evidence{"flat heads, ASME B18.3 and B18.6.3", Memory}},
	{"metric", 90, Evidence{"flat heads, ISO 7721", Memory}},
	{"aerospace", 100, Evidence{"flat heads of aerospace hardware", Memory}},
}

// DrillPoints returns the points to which drills are ground, the sharpest
// first; flat is an end mill or a Forstner bit.
func DrillPoints() []Point { return slices.Clone(drillPoints) }

// Countersinks returns the angles of countersinks, the sharpest first.
func Countersinks() []Point { return slices.Clone(countersinks) }
