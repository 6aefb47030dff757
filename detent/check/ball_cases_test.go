package check

import (
	"math"

	"stopwright/detent/plan"
)

// What the ball does in the seat, reckoned from triangles. The ball is 6 mm and
// stands out 2 mm unless a fixture says otherwise.
const (
	radius = 3.0  // of the ball
	rim    = 2.25 // radius of a seat of 4.5 mm
)

// sinks is how far the ball sinks in a sharp-edged seat of radius rim.
var sinks = radius - math.Sqrt(radius*radius-rim*rim)

// seat is a sharp-edged seat; point 180 is a flat floor, depth 0 right through.
func seat(diameter, depth, point float64) func(*plan.Plan) {
	return func(p *plan.Plan) {
		p.Seat = plan.Seat{Form: plan.Drilled, Diameter: diameter, Depth: depth, DrillPoint: point, CountersinkAngle: 90}
	}
}

// sharp is the seat of most fixtures: deep enough to be no matter.
var sharp = seat(2*rim, 6, 118)

func countersink(diameter, depth float64) func(*plan.Plan) {
	return func(p *plan.Plan) {
		p.Seat = plan.Seat{Form: plan.Countersunk, Diameter: diameter, Depth: depth, DrillPoint: 118, CountersinkAngle: 90}
	}
}

func relief(diameter float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Seat.ReliefDiameter = diameter }
}

func chamfer(mm float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Seat.Chamfer = mm } }

func gap(mm float64) func(*plan.Plan) { return func(p *plan.Plan) { p.FaceGap = mm } }

func standsOut(mm float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Catch.Protrusion = mm } }

func rubbing(friction float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Shop.Friction = friction }
}

// catchFinding is a finding about the one catch and its one stop at 0.
func catchFinding(value, limit float64, unit, text string) []expected {
	return []expected{{Finding{Angles: angles(0), Pockets: []int{0}, Value: value, Limit: limit, Unit: unit}, text}}
}

// at0 is a plan with one stop at 0.
func at0(edits ...func(*plan.Plan)) plan.Plan { return build([]float64{0}, edits...) }

// degrees of an angle whose sine, or tangent, is x.
func asin(x float64) float64 { return math.Asin(x) * 180 / math.Pi }
func atan(x float64) float64 { return math.Atan(x) * 180 / math.Pi }

// ballCases are about whether the ball seats.
var ballCases = map[string][]fixture{
	"ball-over-body": {
		{"a ball with a wall round it", at0(), nil},
		{"a hair of wall", at0(bodyOver(hair)), nil},
		{
			"as wide as the body", at0(bodyOver(0)),
			pocketFinding(6, 6, "The ball is 6 mm across, and the body it runs in 6 mm."),
		},
		{
			"wider than the body", at0(bodyOver(-1)),
			pocketFinding(6, 5, "The ball is 6 mm across, and the body it runs in 5 mm."),
		},
	},

	"ball-falls-in": {
		{"as wide as the ball", at0(seat(6, 6, 118)), catchFinding(6, 6, mm, "The balls, 6 mm, fall into seats 6 mm wide.")},
		{"as wide within the slack", at0(seat(6-within, 6, 118)), catchFinding(6-within, 6, mm, "The balls, 6 mm, fall into seats 6 mm wide.")},
		{"a hair narrower", at0(seat(6-hair, 6, 118)), nil},
		{"wider, right through", at0(seat(6.5, 0, 118)), catchFinding(6.5, 6, mm, "The balls, 6 mm, fall into seats 6.5 mm wide.")},
		{"wider, kept up by a flat floor on which it rolls", at0(seat(6.5, 0.8, 180)), catchFinding(6.5, 6, mm, "The balls, 6 mm, fall into seats 6.5 mm wide.")},
		{"wider, but little more than the drill's point: a dimple that centres it", at0(seat(6.5, 0.1, 118)), nil},
		{"a chamfer wider than the ball over a hole that is not", at0(seat(5.5, 6, 118), chamfer(0.5)), nil},
		{"a countersink wider than the ball", at0(countersink(8, 0)), nil},
		{"a countersink with a relief hole as wide as the ball", at0(countersink(8, 0), relief(6)), catchFinding(8, 6, mm, "The balls, 6 mm, fall into seats 8 mm wide.")},
		{
			"told once for two catches and all stops", build([]float64{0, 20}, seat(6, 6, 118),
				catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Azimuth: 90, Radius: 80})),
			[]expected{{
				Finding{Angles: angles(0, 20), Pockets: []int{0, 1}, Value: 6, Limit: 6, Unit: mm},
				"The balls, 6 mm, fall into seats 6 mm wide.",
			}},
		},
		{
			"before there is a stop", build(nil, seat(6, 6, 118)),
			[]expected{{Finding{Pockets: []int{0}, Value: 6, Limit: 6, Unit: mm}, "The balls, 6 mm, fall into seats 6 mm wide."}},
		},
	},

	"ball-locks": {
		{
			"a mouth of 0.99 of the ball", at0(seat(0.99*6, 6, 118), standsOut(3)),
			catchFinding(asin(0.99)+atan(0.2), 90, deg, "The balls lock: contact and friction angle make 93.2°, and from 90° on no turning lifts them out."),
		},
		{
			// A triangle of 3, 4 and 5: the contact angle has tangent 4/3, the
			// friction angle 3/4.
			"90 degrees exactly", at0(seat(4.8, 6, 118), rubbing(0.75)),
			catchFinding(90, 90, deg, "The balls lock: contact and friction angle make 90°, and from 90° on no turning lifts them out."),
		},
		{"a hair less friction", at0(seat(4.8, 6, 118), rubbing(0.75-hair)), nil},
		{"a steep rim from which its housing keeps the ball", at0(seat(0.99*6, 6, 118)), nil},
		{
			// The ball rests on the point at 31°, then meets the rim: its centre
			// is there r from the rim, and on a line that passes the rim at
			// r - depth·sin 59°.
			"home on the drill's point at ease, but steep where it meets the rim", at0(seat(5.94, 1, 118), standsOut(3), rubbing(0.3)),
			catchFinding(31+math.Acos(1-math.Sin(59*math.Pi/180)/radius)*180/math.Pi+atan(0.3), 90, deg,
				"The balls lock: contact and friction angle make 92.115°, and from 90° on no turning lifts them out."),
		},
	},

	"ball-cannot-reach": {
		{"the gap as wide as the ball stands out", at0(sharp, gap(2)), catchFinding(2, 2, mm, "The balls stand out 2 mm, and the faces are 2 mm apart.")},
		{"as wide within the slack", at0(sharp, gap(2-within)), catchFinding(2, 2-within, mm, "The balls stand out 2 mm, and the faces are 2 mm apart.")},
		{"a hair narrower", at0(sharp, gap(2-hair)), nil},
		{"far apart", at0(sharp, gap(3.5)), catchFinding(2, 3.5, mm, "The balls stand out 2 mm, and the faces are 3.5 mm apart.")},
		{"a catch that sits too deep", at0(sharp, standsOut(0.15)), catchFinding(0.15, 0.2, mm, "The balls stand out 0.15 mm, and the faces are 0.2 mm apart.")},
	},

	"ball-short": {
		{"just home", at0(sharp, gap(2-sinks)), nil},
		{"short within the slack", at0(sharp, gap(2-sinks+within)), nil},
		{
			"a hair short", at0(sharp, gap(2-sinks+hair)),
			catchFinding(sinks-hair, sinks, mm, "The balls sink 1.02 mm; to rest in the seats they would have to sink 1.02 mm."),
		},
		{
			"0.2 mm short of the rim", at0(sharp, gap(2-sinks+0.2)),
			catchFinding(sinks-0.2, sinks, mm, "The balls sink 0.82 mm; to rest in the seats they would have to sink 1.02 mm."),
		},
		{
			"faces warped to a gap of 1.8 mm", at0(sharp, gap(1.8)),
			catchFinding(0.2, sinks, mm, "The balls sink 0.2 mm; to rest in the seats they would have to sink 1.02 mm."),
		},
		{
			// In a cone of 90° a sphere's centre is √2 r over the tip.
			"short of a cone", at0(countersink(4.5, 0), gap(1.5)),
			catchFinding(0.5, radius-(math.Sqrt2*radius-rim), mm, "The balls sink 0.5 mm; to rest in the seats they would have to sink 1.01 mm."),
		},
		{
			"a mouth of 0.99 of the ball is too deep for this catch", at0(seat(0.99*6, 6, 118)),
			catchFinding(1.8, radius-radius*math.Sqrt(1-0.99*0.99), mm, "The balls sink 1.8 mm; to rest in the seats they would have to sink 2.58 mm."),
		},
		{"out of reach altogether: ball-cannot-reach tells", at0(sharp, gap(2)), nil},
	},

	"seat-bottoms": {
		{
			"a flat floor 0.8 mm deep", at0(seat(4.5, 0.8, 180)),
			catchFinding(0.8, sinks, mm, "The balls stand on the floor of seats 0.8 mm deep; 1.02 mm would let them down on rim or cone."),
		},
		{"a flat floor that just lets the ball down", at0(seat(4.5, sinks, 180)), nil},
		{"too high within the slack", at0(seat(4.5, sinks-within, 180)), nil},
		{
			"a hair too high", at0(seat(4.5, sinks-hair, 180)),
			catchFinding(sinks-hair, sinks, mm, "The balls stand on the floor of seats 1.02 mm deep; 1.02 mm would let them down on rim or cone."),
		},
		{
			// The cone's tip is rim/tan 59° below the depth, the centre
			// r/sin 59° above it.
			"a drill's point too high", at0(seat(4.5, 0.1, 118)),
			catchFinding(0.1, radius/math.Sin(59*math.Pi/180)-rim/math.Tan(59*math.Pi/180)-(radius-sinks), mm,
				"The balls stand on the floor of seats 0.1 mm deep; 0.16 mm would let them down on rim or cone."),
		},
		{"a relief hole through the flat floor lets the ball down", at0(seat(4.5, 0.8, 180), relief(2.5)), nil},
		{
			"the edge of a relief hole holds it up", at0(seat(4.5, 0.7, 180), relief(2.5)),
			catchFinding(0.7, math.Sqrt(radius*radius-1.25*1.25)-(radius-sinks), mm,
				"The balls stand on the floor of seats 0.7 mm deep; 0.74 mm would let them down on rim or cone."),
		},
		{
			"the flat nose of a countersink", at0(countersink(4.5, 0.9)),
			catchFinding(0.9, radius-(math.Sqrt2*radius-rim), mm, "The balls stand on the floor of seats 0.9 mm deep; 1.01 mm would let them down on rim or cone."),
		},
		{
			// The chamfer is 1 mm deep and takes the floor with it; it carries
			// the ball as a cone of 90° and 5 mm does.
			"a chamfer deeper than the seat", at0(seat(3, 0.5, 180), chamfer(1)),
			catchFinding(0.5, radius-(math.Sqrt2*radius-2.5), mm, "The balls stand on the floor of seats 0.5 mm deep; 1.26 mm would let them down on rim or cone."),
		},
		{"right through", at0(seat(4.5, 0, 180)), nil},
		{"a ball held up higher by its housing: ball-short tells", at0(seat(4.5, 0.8, 180), gap(1.5)), nil},
		{"a ball that only the floor holds: ball-falls-in tells", at0(seat(6.5, 0.8, 180)), nil},
	},
}

// bodyOver makes the catch's body wider than its ball by so much, mm.
func bodyOver(mm float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Catch.BodyDiameter = p.Catch.BallDiameter + mm }
}
