package check

import (
	"math"

	"stopwright/detent/plan"
)

// Forces in a seat of 8 mm under a ball of 10 mm, a triangle of 3, 4 and 5: the
// ball rests on the rim with its centre 3 mm over the face, the contact angle's
// tangent is 4/3. The spring presses alike at every height, the table rubs at
// 100 mm with a friction of 0.2, and nothing misses anything.
const (
	press   = 10.0 // N
	gravity = 9.80665
)

func triangle(p *plan.Plan) {
	p.Catch.BallDiameter, p.Catch.Protrusion = 10, 4
	p.Catch.FreeForce, p.Catch.FlushForce = press, press
	seat(8, 6, 118)(p)
	p.Shop.Friction, p.Shop.TableFriction = 0, 0.2
	p.Shop.SeatError, p.Shop.CatchError, p.Turntable.RadialPlay = 0, 0, 0
	p.Shop.Target = 360
	p.Turntable.BearingRadius = 100
}

// weighing is a load of so many newtons.
func weighing(n float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Shop.Load = n / gravity } }

func pressing(n float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Catch.FreeForce, p.Catch.FlushForce = n, n }
}

// across is two catches across the ring, which drop together only where a stop
// says so.
var across = catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Azimuth: 180, Radius: ring})

// both is a stop at 0 where the pair drops together.
var both = stop(plan.Stop{Angle: 0, Catches: []string{"B", "A"}})

// home is the torque (N·m) of one ball that pulls home: R·F·4/3. The table drags
// as much at a weight of homeWeight: 0.2·(weight - press)·0.1 m.
const (
	home       = ring / 1000 * press * 4 / 3
	homeWeight = home/0.02 + press
)

// bowlMiss and bowlRest are how far seat and track miss each other, and how far
// along it the ball then rests when the table drags with bowlDrag: 1 mm from the
// axis, the rim's contact is 3 mm out, its tangent 3/4, and 0.6 of that is along
// the track.
const (
	bowlMiss   = 0.8
	bowlRest   = 0.6
	bowlDrag   = ring / 1000 * press * 0.75 * 0.6
	bowlWeight = bowlDrag/0.02 + press
)

var bowlTurn = bowlRest / ring * 180 / math.Pi

func bowl(p *plan.Plan) {
	triangle(p)
	p.Shop.SeatError = bowlMiss * 2 / 1.96
	weighing(bowlWeight)(p)
}

func target(deg float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Shop.Target = deg } }

func seatError(mm float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Shop.SeatError = mm } }

// stiff is a plan whose ball pushes back at the rim, 200 mm out, by n newtons:
// R·F·4/3 over 0.2 m, without a drag.
func stiff(n float64) func(*plan.Plan) {
	return func(p *plan.Plan) {
		triangle(p)
		p.Shop.TableFriction = 0
		pressing(n * 0.2 / (ring / 1000 * 4 / 3))(p)
	}
}

// torqueCases are about forces.
var torqueCases = map[string][]fixture{
	"will-not-centre": {
		{
			"as much drag as pull", at0(triangle, weighing(homeWeight)),
			catchFinding(home, home, nm, "Catch A pulls home with 1.4 N·m, and the loaded table resists with 1.4 N·m."),
		},
		{
			"as much within the slack", at0(triangle, weighing(homeWeight-within/0.02)),
			catchFinding(home, home-within, nm, "Catch A pulls home with 1.4 N·m, and the loaded table resists with 1.4 N·m."),
		},
		{"a hair less load", at0(triangle, weighing(homeWeight-hair)), nil},
		{
			// The pull falls to R·F·(4/3 - 1/4)/(1 + 4/3·1/4).
			"a ball that rubs", at0(triangle, rubbing(0.25), weighing(homeWeight)),
			catchFinding(home*3/4*13/16, home, nm, "Catch A pulls home with 0.85 N·m, and the loaded table resists with 1.4 N·m."),
		},
		{
			// A mouth of 6 mm has a slope of 3/4, which friction of 1.2 beats:
			// (3/4 - 1.2)/(1 + 3/4·1.2).
			"a ball held by its own friction", at0(triangle, seat(6, 6, 118), rubbing(1.2), weighing(0)),
			catchFinding(ring/1000*press*(0.75-1.2)/(1+0.75*1.2), 0, nm, "Catch A pulls home with -0.25 N·m, and the loaded table resists with 0 N·m."),
		},
		{
			// The other ball rides: it lifts as much and rubs F·0.25·R.
			"another ball that rubs on the face, and drags too little", at0(triangle, across, rubbing(0.25), weighing(2*press)), nil,
		},
		{
			"another ball that rubs on the face, and drags enough with the load", at0(triangle, across, rubbing(0.25), weighing(2*press+(home*3/4*13/16-ring/1000*press*0.25)/0.02)),
			catchFinding(home*3/4*13/16, home*3/4*13/16, nm, "Catch A pulls home with 0.85 N·m, and the loaded table resists with 0.85 N·m."),
		},
		{"two that drop together pull home what one could not", build(nil, triangle, across, both, weighing(homeWeight)), nil},
		{
			"two that drop together, and that is not enough", build(nil, triangle, across, both, weighing(2*home/0.02+2*press)),
			[]expected{{
				Finding{Angles: angles(0), Pockets: []int{0, 1}, Value: 2 * home, Limit: 2 * home, Unit: nm},
				"Catch A + B pulls home with 2.8 N·m, and the loaded table resists with 2.8 N·m.",
			}},
		},
		{
			"only the stops with one of them", build([]float64{10, 20}, triangle, across, both, stop(plan.Stop{Angle: 30, Catches: []string{"B"}}), weighing(2*press+home/0.02)),
			[]expected{
				{
					Finding{Angles: angles(10, 20), Pockets: []int{0}, Value: home, Limit: home, Unit: nm},
					"Catch A pulls home with 1.4 N·m, and the loaded table resists with 1.4 N·m.",
				},
				{
					Finding{Angles: angles(30), Pockets: []int{1}, Value: home, Limit: home, Unit: nm},
					"Catch B pulls home with 1.4 N·m, and the loaded table resists with 1.4 N·m.",
				},
			},
		},
		{"no stop to come home to", build(nil, triangle, weighing(1000)), nil},
		{"a ball that locks: ball-locks tells", at0(triangle, rubbing(0.75), weighing(1000)), nil},
	},

	"dead-band-wide": {
		{"the target exactly", at0(bowl, target(bowlTurn)), nil},
		{"over it within the slack", at0(bowl, target(bowlTurn-within)), nil},
		{
			"over it by a hair", at0(bowl, target(bowlTurn-hair)),
			catchFinding(bowlTurn, bowlTurn-hair, deg, "With catch A the table may rest up to 0.327° off a stop; the target is 0.327°."),
		},
		{
			"a third of it", at0(bowl, target(0.1)),
			catchFinding(bowlTurn, 0.1, deg, "With catch A the table may rest up to 0.327° off a stop; the target is 0.1°."),
		},
		{"seat and track meet: the bottom is a V", at0(bowl, seatError(0), target(0)), nil},
		{
			"two that drop together share the drag", build(nil, bowl, across, both, weighing(2*bowlDrag/0.02+2*press), target(0.1)),
			[]expected{{
				Finding{Angles: angles(0), Pockets: []int{0, 1}, Value: bowlTurn, Limit: 0.1, Unit: deg},
				"With catch A + B the table may rest up to 0.327° off a stop; the target is 0.1°.",
			}},
		},
		{
			"a miss as wide as the mouth reaches", at0(bowl, seatError(2), seat(3.92, 6, 118)),
			catchFinding(1.96, 1.96, mm, "Seat and track may miss each other by 1.96 mm, and the mouth reaches 1.96 mm from its middle: the ball of catch A may pass a stop by."),
		},
		{"a hair narrower miss", at0(bowl, seatError(2-hair), seat(3.92, 6, 118)), nil},
		{
			"a miss wider than the mouth", at0(bowl, seatError(5)),
			catchFinding(4.9, 4, mm, "Seat and track may miss each other by 4.9 mm, and the mouth reaches 4 mm from its middle: the ball of catch A may pass a stop by."),
		},
		{"no stop to be off", build(nil, bowl, target(0)), nil},
	},

	"table-lifts": { // at the face, 0.2 of 2 mm out, a spring of 8 to 20 N presses with 18.8 N
		{"exactly in balance", at0(sharp, weighing(18.8)), nil},
		{"lighter within the slack", at0(sharp, weighing(18.8-within)), nil},
		{
			"lighter by a hair", at0(sharp, weighing(18.8-hair)),
			[]expected{{
				Finding{Angles: angles(0), Value: 18.8, Limit: 18.8 - hair, Unit: newton},
				"Together the balls lift with 18.8 N, and the load presses down with 18.8 N.",
			}},
		},
		{
			"two balls, of which one serves no stop", at0(sharp, across, weighing(30)),
			[]expected{{
				Finding{Angles: angles(0), Value: 37.6, Limit: 30, Unit: newton},
				"Together the balls lift with 37.6 N, and the load presses down with 30 N.",
			}},
		},
		{"balls that do not reach the face lift nothing", at0(sharp, gap(2), weighing(0)), nil},
	},

	"stop-stiff": {
		{"the limit exactly", at0(stiff(60)), nil},
		{"over it within the slack", at0(stiff(60 + within)), nil},
		{"over it by a hair", at0(stiff(60 + hair)), catchFinding(60+hair, 60, newton, "With catch A it takes 60 N at the table's rim to leave a stop; 60 N is comfortable.")},
		{
			// 0.2·(100 - 90)·0.1 m more, at 0.2 m.
			"with the table's drag", at0(stiff(60), func(p *plan.Plan) {
				p.Shop.TableFriction, p.Shop.Load = 0.2, (10+p.Catch.FreeForce)/gravity
			}),
			catchFinding(61, 60, newton, "With catch A it takes 61 N at the table's rim to leave a stop; 60 N is comfortable."),
		},
		{"one of two that could drop together", build([]float64{10}, stiff(40), across), nil},
		{
			"two that drop together", build([]float64{10}, stiff(40), across, both),
			[]expected{{
				Finding{Angles: angles(0), Pockets: []int{0, 1}, Value: 80, Limit: 60, Unit: newton},
				"With catch A + B it takes 80 N at the table's rim to leave a stop; 60 N is comfortable.",
			}},
		},
		{"a ball that locks: ball-locks tells", at0(stiff(1000.0/7), rubbing(0.75)), nil},
	},
}
