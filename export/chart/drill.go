package chart

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Drill is what cuts the seats, and how deep.
type Drill struct {
	Form     plan.Form
	Diameter float64 // of the drill, or of a countersink's mouth
	Point    float64 // included angle of the point, or of the countersink, degrees
	Depth    float64 // of the cylinder, or of the cone; 0: right through
	Stop     float64 // depth-stop setting, from the point touching the face; 0: right through
	Chamfer  float64 // widens the rim all round; 0: none
	Relief   float64 // diameter of the smaller hole on through; 0: none
}

// drillOf works out the tool for the plan's seats.
func drillOf(p plan.Plan) Drill {
	s := p.Seat
	d := Drill{Form: s.Form, Diameter: s.Diameter, Chamfer: s.Chamfer, Relief: s.ReliefDiameter}
	if s.Form == plan.Countersunk {
		d.Point = s.CountersinkAngle
		d.Depth = ball.PointLength(s.Diameter, geom.Angle(d.Point))
		if s.Depth > 0 { // a tool with a flat nose stops short of the cone's tip
			d.Depth = math.Min(d.Depth, s.Depth)
		}
		d.Stop = d.Depth
		return d
	}
	d.Point, d.Depth = s.DrillPoint, s.Depth
	if d.Depth > 0 {
		d.Stop = d.Depth + ball.PointLength(d.Diameter, geom.Angle(d.Point))
	}
	return d
}

// The standard sizes that are told from the diameter alone.
const (
	metricStep     = 0.1 // mm between drills
	metricLeast    = 0.2
	metricMost     = 13.9
	fractionMost   = 12.7 // mm: fractional drills to 1/2 inch
	sizeTolerance  = 1e-6 // mm: rounding of a conversion, far below any drill's tolerance
	sixtyFourthsMM = 25.4 / 64
)

// Standard says which series a drill of exactly this diameter belongs to, as
// a key of the words: "metric" (steps of 0.1 mm, BS 328), "fraction" (64ths of
// an inch), or "" for neither.
func (d Drill) Standard() string {
	switch {
	case d.Diameter >= metricLeast-sizeTolerance && d.Diameter <= metricMost+sizeTolerance && whole(d.Diameter/metricStep, sizeTolerance/metricStep):
		return "metric"
	case d.Diameter <= fractionMost+sizeTolerance && whole(d.Diameter/sixtyFourthsMM, sizeTolerance/sixtyFourthsMM):
		return "fraction"
	}
	return ""
}

// whole reports whether x is a whole number within a tolerance.
func whole(x, tolerance float64) bool { return math.Abs(x-math.Round(x)) <= tolerance }
