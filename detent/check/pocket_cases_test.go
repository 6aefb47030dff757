package check

import (
	"math"

	"stopwright/detent/plan"
)

const thickness = 18.0 // of both parts

func catchLength(mm float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Catch.BodyLength = mm } }

func noFlange(p *plan.Plan) { p.Catch.FlangeDiameter = 0 }

// pocketFinding is a finding about pocket A and the stop at 0.
func pocketFinding(value, limit float64, text string) []expected {
	return catchFinding(value, limit, mm, text)
}

// side is a catch as far round the ring from A as leaves a web between pockets.
func side(name string, web float64) plan.Placement {
	return plan.Placement{Name: name, Azimuth: turnFor(pocket + web), Radius: ring}
}

// dust are the two sentences of dust-trapped.
const (
	dustUp   = "The seats are blind and without a relief hole: dust will pack in them."
	dustDown = "The seats are blind: they open downwards and lose most of the dust, but not what the balls press in."
	clamp    = "A detent positions, a clamp locks: clamp before cutting."
)

// point is the length of a 118° point of a 4.5 mm drill.
var point = 2.25 / math.Tan(59*math.Pi/180)

// pocketCases are about what is bored for catches and seats, and notes.
var pocketCases = map[string][]fixture{
	"pocket-breaks-through": { // the recess is half a millimetre deeper than the flange is thick
		{"as deep as the part is thick", at0(catchLength(thickness - 0.5)), nil},
		{"deeper within the slack", at0(catchLength(thickness - 0.5 + within)), nil},
		{
			"a hair deeper", at0(catchLength(thickness - 0.5 + hair)),
			pocketFinding(thickness+hair, thickness, "The catches' pockets are 18 mm deep, and their part 18 mm thick."),
		},
		{
			"a long catch", at0(catchLength(21)),
			pocketFinding(21.5, thickness, "The catches' pockets are 21.5 mm deep, and their part 18 mm thick."),
		},
		{"without a flange there is no recess: just as deep", at0(catchLength(thickness), noFlange), nil},
	},

	"pocket-edge": {
		{"the rule exactly, to the edge", at0(onRing(disc/2 - pocket/2 - edge)), nil},
		{"short of it within the slack", at0(onRing(disc/2 - pocket/2 - edge + within)), nil},
		{
			"a hair short of it", at0(onRing(disc/2 - pocket/2 - edge + hair)),
			pocketFinding(edge-hair, edge, "The pocket of catch A leaves 4 mm to the edge or the pivot bore; the rule is 4 mm."),
		},
		{
			"out over the edge", at0(onRing(disc/2 - pocket/2 + 1)),
			pocketFinding(-1, edge, "The pocket of catch A leaves -1 mm to the edge or the pivot bore; the rule is 4 mm."),
		},
		{"the rule exactly, to the pivot bore", at0(onRing(bore/2 + pocket/2 + edge)), nil},
		{
			"near the pivot bore", at0(onRing(bore/2 + pocket/2 + 1)),
			pocketFinding(1, edge, "The pocket of catch A leaves 1 mm to the edge or the pivot bore; the rule is 4 mm."),
		},
		{"no pivot bore to be near", at0(onRing(5), func(p *plan.Plan) { p.Turntable.PivotBore = 0 }), nil},
		{"without a flange the body's bore counts, the rule exactly", at0(noFlange, onRing(disc/2-8.1/2-edge)), nil},
		{
			"without a flange, a hair short", at0(noFlange, onRing(disc/2-8.1/2-edge+hair)),
			pocketFinding(edge-hair, edge, "The pocket of catch A leaves 4 mm to the edge or the pivot bore; the rule is 4 mm."),
		},
		{"two pockets, the rule exactly", at0(catches(plan.Placement{Name: "A", Radius: ring}, side("B", web))), nil},
		{"two pockets, short within the slack", at0(catches(plan.Placement{Name: "A", Radius: ring}, side("B", web-within))), nil},
		{
			"two pockets, a hair short: told once", at0(catches(plan.Placement{Name: "A", Radius: ring}, side("B", web-hair))),
			[]expected{{
				Finding{Angles: angles(0), Pockets: []int{0, 1}, Value: web - hair, Limit: web, Unit: mm},
				"The pockets of catches A and B leave 2 mm between them; the rule is 2 mm.",
			}},
		},
		{
			"three in a row: the middle one with its worse side, the outer one with what it lacks", build(nil,
				catches(plan.Placement{Name: "A", Radius: ring}, side("B", 1), plan.Placement{Name: "C", Azimuth: -turnFor(pocket - 0.5), Radius: ring}),
				stop(plan.Stop{Angle: 0}), stop(plan.Stop{Angle: 5, Catches: []string{"B", "C"}}), stop(plan.Stop{Angle: 9, Catches: []string{"C"}})),
			[]expected{
				{
					Finding{Angles: angles(0, 5, 9), Pockets: []int{0, 2}, Value: -0.5, Limit: web, Unit: mm},
					"The pockets of catches A and C leave -0.5 mm between them; the rule is 2 mm.",
				},
				{
					Finding{Angles: angles(5, 0), Pockets: []int{1, 0}, Value: 1, Limit: web, Unit: mm},
					"The pockets of catches B and A leave 1 mm between them; the rule is 2 mm.",
				},
			},
		},
		{
			"the edge lacks more than the other pocket", at0(catches(
				plan.Placement{Name: "A", Radius: disc/2 - pocket/2 - 1},
				plan.Placement{Name: "B", Radius: disc/2 - pocket/2 - 1 - pocket - 1},
			)),
			[]expected{
				{
					Finding{Angles: angles(0), Pockets: []int{0}, Value: 1, Limit: edge, Unit: mm},
					"The pocket of catch A leaves 1 mm to the edge or the pivot bore; the rule is 4 mm.",
				},
				{
					Finding{Angles: angles(0), Pockets: []int{1, 0}, Value: 1, Limit: web, Unit: mm},
					"The pockets of catches B and A leave 1 mm between them; the rule is 2 mm.",
				},
			},
		},
	},

	"drill-breaks-through": {
		{"the point just reaches the other face", at0(seat(4.5, thickness-point, 118)), nil},
		{"through within the slack", at0(seat(4.5, thickness-point+within, 118)), nil},
		{
			"through by a hair", at0(seat(4.5, thickness-point+hair, 118)),
			[]expected{{
				Finding{Angles: angles(0), Value: thickness + hair, Limit: thickness, Unit: mm},
				"The tip of the tool goes 18 mm deep, and the part is 18 mm thick.",
			}},
		},
		{
			"through by half its point", at0(seat(4.5, thickness-point/2, 118)),
			[]expected{{
				Finding{Angles: angles(0), Value: thickness + point/2, Limit: thickness, Unit: mm},
				"The tip of the tool goes 18.68 mm deep, and the part is 18 mm thick.",
			}},
		},
		{"a flat floor as deep as the part is thick", at0(seat(4.5, thickness, 180)), nil},
		{"drilled right through on purpose", at0(seat(4.5, 0, 118)), nil},
		{"a relief hole goes through on purpose", at0(sharp, relief(2.5)), nil},
		{
			"a countersink of 90°, as deep as half its mouth", at0(countersink(37, 0)),
			[]expected{{
				Finding{Angles: angles(0), Value: 18.5, Limit: thickness, Unit: mm},
				"The tip of the tool goes 18.5 mm deep, and the part is 18 mm thick.",
			}},
		},
		{"a countersink with a flat nose that stays inside", at0(countersink(37, 10)), nil},
	},

	"dust-trapped": { // where it fires it says something else the other way up
		{"right through", at0(seat(4.5, 0, 118)), nil},
		{"a relief hole", at0(sharp, relief(0.1)), nil},
		{"no seat yet", build(nil, sharp), nil},
	},

	"not-a-lock": {
		{"any plan", at0(sharp), []expected{{text: clamp}}},
		{"also before there is a stop", build(nil), []expected{{text: clamp}}},
	},
}

// pocketCasesOneWayUp need a base that is no disc, or say something else the
// other way up.
var pocketCasesOneWayUp = map[string][]fixture{
	"pocket-edge": {
		{
			"near the long side of a rectangle", otherPart(at0(onRing(100), rectangle(400, 2*(100+pocket/2+1)))),
			pocketFinding(1, edge, "The pocket of catch A leaves 1 mm to the edge or the pivot bore; the rule is 4 mm."),
		},
	},
	"dust-trapped": {
		{"blind seats that open upwards", at0(sharp), []expected{{Finding{Angles: angles(0), Unit: mm}, dustUp}}},
		{"blind seats that open downwards", otherWayUp(at0(sharp)), []expected{{Finding{Angles: angles(0), Unit: mm}, dustDown}}},
		{"a cone is blind too", at0(countersink(4.5, 0)), []expected{{Finding{Angles: angles(0), Unit: mm}, dustUp}}},
	},
}

// otherPart puts the catches into the base, which may be a rectangle.
func otherPart(p plan.Plan) plan.Plan {
	p.Arrangement.CatchIn = plan.PartBase
	return p
}
