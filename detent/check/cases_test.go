package check

import (
	"maps"
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// cases holds the fixtures of every check, by its id.
var cases = merged(placeCases, ballCases, pocketCases, torqueCases, toolCases, makingCases, truthCases, sweepCases)

// casesOneWayUp need a base that is no disc, or a collar, or say something else
// the other way up.
var casesOneWayUp = merged(placeCasesOneWayUp, pocketCasesOneWayUp, makingCasesOneWayUp)

func merged(tables ...map[string][]fixture) map[string][]fixture {
	out := map[string][]fixture{}
	for _, t := range tables {
		maps.Copy(out, t)
	}
	return out
}

// placeCases are about where seats, tracks and stops lie.
var placeCases = map[string][]fixture{
	"seats-overlap": {
		{
			"half a millimetre into each other", build([]float64{0, turnForWeb(-0.5)}),
			[]expected{{
				Finding{Angles: angles(0, turnForWeb(-0.5)), Seats: []int{0, 1}, Value: -0.5, Unit: mm},
				"Seats A1 at 0° and A2 at 2.183° overlap by 0.5 mm.",
			}},
		},
		{
			"touching is overlapping", build([]float64{0, turnForWeb(0)}),
			[]expected{{
				Finding{Angles: angles(0, turnForWeb(0)), Seats: []int{0, 1}, Value: 0, Unit: mm},
				"Seats A1 at 0° and A2 at 2.456° overlap by 0 mm.",
			}},
		},
		{
			"touching within the slack", build([]float64{0, turnForWeb(within)}),
			[]expected{{
				Finding{Angles: angles(0, turnForWeb(within)), Seats: []int{0, 1}, Value: within, Unit: mm},
				"Seats A1 at 0° and A2 at 2.456° overlap by 0 mm.",
			}},
		},
		{"a hair apart", build([]float64{0, turnForWeb(hair)}), nil},
		{"one seat for two stops", build([]float64{180, -180}), nil},
		{
			"three in a row: the middle one is told with its worse side", build([]float64{turnForWeb(-0.5), 0, -turnForWeb(-1)}),
			[]expected{
				{
					Finding{Angles: angles(-turnForWeb(-1), 0), Seats: []int{0, 1}, Value: -1, Unit: mm},
					"Seats A1 at -1.91° and A2 at 0° overlap by 1 mm.",
				},
				{
					Finding{Angles: angles(turnForWeb(-0.5), 0), Seats: []int{2, 1}, Value: -0.5, Unit: mm},
					"Seats A3 at 2.183° and A2 at 0° overlap by 0.5 mm.",
				},
			},
		},
		{
			"on two rings, 4 mm apart", build(nil,
				catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Radius: ring + 4}),
				stop(plan.Stop{Angle: 10, Catches: []string{"A", "B"}})),
			[]expected{{
				Finding{Angles: angles(10), Seats: []int{0, 1}, Value: 4 - mouth, Unit: mm},
				"Seats A1 at 10° and B1 at 10° overlap by 0.5 mm.",
			}},
		},
	},

	"web-thin": {
		{
			"half the rule", build([]float64{0, turnForWeb(1)}),
			[]expected{{
				Finding{Angles: angles(0, turnForWeb(1)), Seats: []int{0, 1}, Value: 1, Limit: web, Unit: mm},
				"Between seats A1 at 0° and A2 at 3.002° only 1 mm is left; the rule is 2 mm.",
			}},
		},
		{"the rule exactly", build([]float64{0, turnForWeb(web)}), nil},
		{"short of the rule within the slack", build([]float64{0, turnForWeb(web - within)}), nil},
		{
			"a hair short of the rule", build([]float64{0, turnForWeb(web - hair)}),
			[]expected{{
				Finding{Angles: angles(0, turnForWeb(web-hair)), Seats: []int{0, 1}, Value: web - hair, Limit: web, Unit: mm},
				"Between seats A1 at 0° and A2 at 3.547° only 2 mm is left; the rule is 2 mm.",
			}},
		},
		{
			"a hair is left", build([]float64{0, turnForWeb(hair)}),
			[]expected{{
				Finding{Angles: angles(0, turnForWeb(hair)), Seats: []int{0, 1}, Value: hair, Limit: web, Unit: mm},
				"Between seats A1 at 0° and A2 at 2.456° only 0 mm is left; the rule is 2 mm.",
			}},
		},
		{"nothing is left: seats-overlap tells", build([]float64{0, turnForWeb(0)}), nil},
		{"no rule", build([]float64{0, turnForWeb(0.1)}, func(p *plan.Plan) { p.Rules.Web = 0 }), nil},
		{
			"an overlap on one side does not hide a thin web on the other", build([]float64{0, turnForWeb(-0.5), -turnForWeb(1)}),
			[]expected{
				{
					Finding{Angles: angles(-turnForWeb(1), 0), Seats: []int{0, 1}, Value: 1, Limit: web, Unit: mm},
					"Between seats A1 at -3.002° and A2 at 0° only 1 mm is left; the rule is 2 mm.",
				},
			},
		},
		{
			"to a hole farther out", build([]float64{0}, baseHole(ring+mouth/2+2.5+1, 0, 5, "foot screw")),
			[]expected{{
				Finding{Angles: angles(0), Seats: []int{0}, Features: []int{0}, Value: 1, Limit: web, Unit: mm},
				"Between seat A1 at 0° and foot screw only 1 mm is left; the rule is 2 mm.",
			}},
		},
		{"the rule exactly, to a hole", build([]float64{0}, baseHole(ring+mouth/2+2.5+web, 0, 5, "")), nil},
		{"a hole in the other part", build([]float64{0}, hole(plan.PartTurntable, ring+mouth/2+2.5+1, 0, 5, "")), nil},
		{"a hole that touches: feature-overlap tells", build([]float64{0}, baseHole(ring+mouth/2+2.5, 0, 5, "")), nil},
		{
			"the worst of a seat and two nameless features", build([]float64{0, turnForWeb(1.5)},
				feature(plan.Feature{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: ring - mouth/2 - 4 - 1, From: -5, To: 1, Width: 8}),
				feature(plan.Feature{Part: plan.PartBase, Kind: plan.Slot, X: -50, Y: ring + mouth/2 + 3 + 0.5, X2: 0, Y2: ring + mouth/2 + 3 + 0.5, Width: 6})),
			[]expected{
				{
					Finding{Angles: angles(0), Seats: []int{0}, Features: []int{1}, Value: 0.5, Limit: web, Unit: mm},
					"Between seat A1 at 0° and slot 2 only 0.5 mm is left; the rule is 2 mm.",
				},
				{
					Finding{Angles: angles(turnForWeb(1.5), 0), Seats: []int{1, 0}, Value: 1.5, Limit: web, Unit: mm},
					"Between seats A2 at 3.274° and A1 at 0° only 1.5 mm is left; the rule is 2 mm.",
				},
			},
		},
	},

	"edge-thin": {
		{"the rule exactly", build([]float64{33}, onRing(disc/2-mouth/2-edge)), nil},
		{"short of it within the slack", build([]float64{33}, onRing(disc/2-mouth/2-edge+within)), nil},
		{
			"a hair short of it", build([]float64{33}, onRing(disc/2-mouth/2-edge+hair)),
			[]expected{{
				Finding{Angles: angles(33), Seats: []int{0}, Value: edge - hair, Limit: edge, Unit: mm},
				"Seat A1 at 33° leaves only 4 mm to the edge; the rule is 4 mm.",
			}},
		},
		{
			"half of it", build([]float64{33}, onRing(disc/2-mouth/2-2)),
			[]expected{{
				Finding{Angles: angles(33), Seats: []int{0}, Value: 2, Limit: edge, Unit: mm},
				"Seat A1 at 33° leaves only 2 mm to the edge; the rule is 4 mm.",
			}},
		},
		{
			"out over the edge", build([]float64{33}, onRing(disc/2-mouth/2+1)),
			[]expected{{
				Finding{Angles: angles(33), Seats: []int{0}, Value: -1, Limit: edge, Unit: mm},
				"Seat A1 at 33° breaks out at the edge by 1 mm; the rule is 4 mm left.",
			}},
		},
		{"the rule exactly, to the pivot bore", build([]float64{33}, onRing(bore/2+mouth/2+edge)), nil},
		{
			"near the pivot bore", build([]float64{33}, onRing(bore/2+mouth/2+3)),
			[]expected{{
				Finding{Angles: angles(33), Seats: []int{0}, Value: 3, Limit: edge, Unit: mm},
				"Seat A1 at 33° leaves only 3 mm to the pivot bore; the rule is 4 mm.",
			}},
		},
		{
			"touching the pivot bore", build([]float64{33}, onRing(bore/2+mouth/2)),
			[]expected{{
				Finding{Angles: angles(33), Seats: []int{0}, Value: 0, Limit: edge, Unit: mm},
				"Seat A1 at 33° breaks into the pivot bore by 0 mm; the rule is 4 mm left.",
			}},
		},
		{"no pivot bore to be near", build([]float64{33}, onRing(3), func(p *plan.Plan) { p.Turntable.PivotBore = 0 }), nil},
	},

	"feature-overlap": {
		{
			"a seat half a millimetre into a hole", build([]float64{0}, baseHole(ring+mouth/2+2.5-0.5, 0, 5, "foot screw")),
			[]expected{{
				Finding{Angles: angles(0), Seats: []int{0}, Features: []int{0}, Value: -0.5, Unit: mm},
				"Seat A1 at 0° runs into foot screw by 0.5 mm.",
			}},
		},
		{
			"touching is overlapping", build([]float64{0}, baseHole(ring+mouth/2+2.5, 0, 5, "")),
			[]expected{{
				Finding{Angles: angles(0), Seats: []int{0}, Features: []int{0}, Value: 0, Unit: mm},
				"Seat A1 at 0° runs into hole 1 by 0 mm.",
			}},
		},
		{"a hair apart", build([]float64{0}, baseHole(ring+mouth/2+2.5+hair, 0, 5, "")), nil},
		{"a hole in the other part", build([]float64{90}, hole(plan.PartTurntable, ring, 90, 5, "")), nil},
		{
			"the worse of two", build([]float64{0},
				baseHole(ring+mouth/2+2.5-0.25, 0, 5, ""),
				feature(plan.Feature{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: ring - mouth/2 - 4 + 1, From: -20, To: 20, Width: 8})),
			[]expected{{
				Finding{Angles: angles(0), Seats: []int{0}, Features: []int{1}, Value: -1, Unit: mm},
				"Seat A1 at 0° runs into curved slot 2 by 1 mm.",
			}},
		},
		{
			"a pocket half a millimetre into a slot", build(nil, feature(plan.Feature{
				Part: plan.PartTurntable, Kind: plan.Slot,
				X: -30, Y: ring + pocket/2 + 3 - 0.5, X2: 30, Y2: ring + pocket/2 + 3 - 0.5, Width: 6, Label: "dust",
			})),
			[]expected{{
				Finding{Features: []int{0}, Pockets: []int{0}, Value: -0.5, Unit: mm},
				"The pocket for catch A runs into dust by 0.5 mm.",
			}},
		},
		{
			"a pocket that touches a hole", build(nil, hole(plan.PartTurntable, ring+pocket/2+2.5, 0, 5, "")),
			[]expected{{
				Finding{Features: []int{0}, Pockets: []int{0}, Value: 0, Unit: mm},
				"The pocket for catch A runs into hole 1 by 0 mm.",
			}},
		},
		{"a pocket a hair from a hole", build(nil, hole(plan.PartTurntable, ring+pocket/2+2.5+hair, 0, 5, "")), nil},
		{"a pocket over a hole of the other part", build(nil, baseHole(ring, 0, 5, "")), nil},
	},

	"track-crossed": {
		{
			"a hole half a millimetre over the path", build(nil, travel(-60, 60), baseHole(ring+2.5-0.5, 30, 5, "foot screw")),
			[]expected{{
				Finding{Features: []int{0}, Tracks: []int{0}, Value: -0.5, Unit: mm},
				"The ball of catch A passes over foot screw, 0.5 mm inside its edge, and drops into it.",
			}},
		},
		{"the path only touches its edge", build(nil, travel(-60, 60), baseHole(ring+2.5, 30, 5, "")), nil},
		{"over it within the slack", build(nil, travel(-60, 60), baseHole(ring+2.5-within, 30, 5, "")), nil},
		{
			"over it by a hair", build(nil, travel(-60, 60), baseHole(ring+2.5-hair, 30, 5, "")),
			[]expected{{
				Finding{Features: []int{0}, Tracks: []int{0}, Value: -hair, Unit: mm},
				"The ball of catch A passes over hole 1, 0 mm inside its edge, and drops into it.",
			}},
		},
		{"on the ring, its edge where the travel ends", build(nil, travel(-60, 60), baseHole(ring, geom.Angle(60+turnFor(2.5)), 5, "")), nil},
		{
			"on the ring, its edge a hair within the travel", build(nil, travel(-60, 60), baseHole(ring, geom.Angle(60+turnFor(2.5-hair)), 5, "")),
			[]expected{{
				Finding{Features: []int{0}, Tracks: []int{0}, Value: -hair, Unit: mm},
				"The ball of catch A passes over hole 1, 0 mm inside its edge, and drops into it.",
			}},
		},
		{"a hole in the other part", build(nil, travel(-60, 60), hole(plan.PartTurntable, ring, 30, 5, "")), nil},
		{
			"a slot under two tracks: told once, where the ball goes deepest", build(nil, travel(-60, 60),
				catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Radius: ring + 3}),
				feature(plan.Feature{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: ring + 2, From: -10, To: 10, Width: 6})),
			[]expected{{
				Finding{Features: []int{0}, Tracks: []int{1}, Value: 1 - 3, Unit: mm},
				"The ball of catch B passes over curved slot 1, 2 mm inside its edge, and drops into it.",
			}},
		},
	},

	"track-leaves": {
		{"along the very edge", build(nil, onRing(disc/2)), nil},
		{"past it within the slack", build(nil, onRing(disc/2+within)), nil},
		{
			"past it by a hair", build(nil, onRing(disc/2+hair)),
			[]expected{{
				Finding{Tracks: []int{0}, Pockets: []int{0}, Value: -hair, Unit: mm},
				"The ball of catch A at radius 200 mm runs 0 mm past the edge of the face.",
			}},
		},
		{
			"half a millimetre past it", build(nil, onRing(disc/2+0.5)),
			[]expected{{
				Finding{Tracks: []int{0}, Pockets: []int{0}, Value: -0.5, Unit: mm},
				"The ball of catch A at radius 200.5 mm runs 0.5 mm past the edge of the face.",
			}},
		},
		{"along the rim of the pivot bore", build(nil, onRing(bore/2)), nil},
		{
			"half a millimetre into the pivot bore", build(nil, onRing(bore/2-0.5)),
			[]expected{{
				Finding{Tracks: []int{0}, Pockets: []int{0}, Value: -0.5, Unit: mm},
				"The ball of catch A at radius 3.5 mm runs 0.5 mm into the pivot bore.",
			}},
		},
		{"no pivot bore to run into", build(nil, onRing(0.1), func(p *plan.Plan) { p.Turntable.PivotBore = 0 }), nil},
	},

	"stop-outside-travel": {
		{"at the very ends", build([]float64{-60, 45, 60}, travel(-60, 60)), nil},
		{"past an end within the slack", build([]float64{60 + within, -60 - within}, travel(-60, 60)), nil},
		{
			"past the end by a hair", build([]float64{60 + hair}, travel(-60, 60)),
			[]expected{{
				Finding{Angles: angles(60 + hair), Seats: []int{0}, Value: 60 + hair, Limit: 60, Unit: deg},
				"The stop at 60° lies outside the travel from -60° to 60°.",
			}},
		},
		{
			"on both sides", build(nil, travel(-60, 60), stop(plan.Stop{Angle: 75, BothSides: true})),
			[]expected{
				{
					Finding{Angles: angles(75), Seats: []int{1}, Value: 75, Limit: 60, Unit: deg},
					"The stop at 75° lies outside the travel from -60° to 60°.",
				},
				{
					Finding{Angles: angles(-75), Seats: []int{0}, Value: -75, Limit: -60, Unit: deg},
					"The stop at -75° lies outside the travel from -60° to 60°.",
				},
			},
		},
		{
			"two stops of one seat are told together, the farther out first", build(nil, travel(-170, 90), stop(plan.Stop{Angle: -180}), stop(plan.Stop{Angle: 180})),
			[]expected{{
				Finding{Angles: angles(180, -180), Seats: []int{0}, Value: 180, Limit: 90, Unit: deg},
				"The stops at 180°, -180° lie outside the travel from -170° to 90°.",
			}},
		},
		{
			"a stop with a seat of its own besides", build(nil, travel(-60, 60),
				catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Azimuth: 90, Radius: ring}),
				stop(plan.Stop{Angle: 70, Catches: []string{"A", "B"}}), stop(plan.Stop{Angle: -290})),
			[]expected{{
				Finding{Angles: angles(-290, 70), Seats: []int{0, 1}, Value: -290, Limit: -60, Unit: deg},
				"The stops at -290°, 70° lie outside the travel from -60° to 60°.",
			}},
		},
	},

	"stop-repeated": {
		{
			"twice", build([]float64{30, 10, 30}),
			[]expected{{
				Finding{Angles: angles(30), Seats: []int{1}, Value: 2, Limit: 1},
				"The stop at 30° is listed 2 times.",
			}},
		},
		{"once each", build([]float64{30, 10, -30}), nil},
		{
			"equal within the slack", build([]float64{30, 30 + within}),
			[]expected{{
				Finding{Angles: angles(30, 30+within), Seats: []int{0}, Value: 2, Limit: 1},
				"The stop at 30° is listed 2 times.",
			}},
		},
		{"twice the slack apart", build([]float64{30, 30 + 2*Slack}), nil},
		{"a full turn apart", build([]float64{180, -180}), nil},
		{"0 is never doubled", build(nil, stop(plan.Stop{Angle: 0, BothSides: true})), nil},
		{"both sides of a stop barely off 0", build(nil, stop(plan.Stop{Angle: within / 2, BothSides: true})), nil},
		{
			"0 and -0", build([]float64{0, math.Copysign(0, -1)}),
			[]expected{{
				Finding{Angles: angles(0), Seats: []int{0}, Value: 2, Limit: 1},
				"The stop at 0° is listed 2 times.",
			}},
		},
		{
			"once by itself and once as another's other side", build([]float64{-30}, stop(plan.Stop{Angle: 30, BothSides: true})),
			[]expected{{
				Finding{Angles: angles(-30), Seats: []int{0}, Value: 2, Limit: 1},
				"The stop at -30° is listed 2 times.",
			}},
		},
		{
			"two angles of one seat are told together, the more often listed first", build([]float64{-180, -180, 180, 180, 180}),
			[]expected{{
				Finding{Angles: angles(180, -180), Seats: []int{0}, Value: 3, Limit: 1},
				"The stop at 180° is listed 3 times.",
			}},
		},
	},
}

var placeCasesOneWayUp = map[string][]fixture{
	"web-thin": {
		{
			"beside a screw of the collar", build([]float64{22.5}, func(p *plan.Plan) {
				p.Collar = &plan.Collar{Clearance: 0.5, OutsideDiameter: 450, Thickness: 18, Screws: plan.Screws{
					Count: 8, Circle: 2 * (ring + mouth/2 + 2.25 + 1), Diameter: 4.5, Start: 22.5,
				}}
			}),
			[]expected{{
				Finding{Angles: angles(22.5), Seats: []int{0}, Features: []int{8}, Value: 1, Limit: web, Unit: mm},
				"Between seat A1 at 22.5° and collar screw 1 only 1 mm is left; the rule is 2 mm.",
			}},
		},
	},
	"edge-thin": {
		{
			"near the long side of a rectangle, far from the others", build([]float64{0, 90}, rectangle(340, 2*(ring+mouth/2+1))),
			[]expected{{
				Finding{Angles: angles(0), Seats: []int{0}, Value: 1, Limit: edge, Unit: mm},
				"Seat A1 at 0° leaves only 1 mm to the edge; the rule is 4 mm.",
			}},
		},
	},
	"track-leaves": {
		{"round the corner of a rectangle, out of its sides' reach", build(nil, rectangle(220, 220), onRing(150), travel(43, 47)), nil},
		{
			"over the side of a rectangle between two stops", build([]float64{-45, 45}, rectangle(220, 220), onRing(112), travel(-45, 45)),
			[]expected{{
				Finding{Tracks: []int{0}, Pockets: []int{0}, Value: -2, Unit: mm},
				"The ball of catch A at radius 112 mm runs 2 mm past the edge of the face.",
			}},
		},
	},
}
