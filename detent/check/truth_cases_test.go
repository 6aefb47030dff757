package check

import (
	"fmt"
	"math"

	"stopwright/detent/plan"
	"stopwright/detent/plate"
	woods "stopwright/detent/stock"
)

// twoDiscs95 holds 95 in 100 of the sum of two errors that are each one
// coordinate of a point in a disc of radius 1, to either side: by quadrature,
// outside this project.
const twoDiscs95 = 1.3546718403548181

// seatsOff is a plan of stops at 0 and at 20 and 40 of which nothing is off but
// where seats land, in circles of radius 0.3 mm; in degrees each is offTurn.
func seatsOff(edits ...func(*plan.Plan)) plan.Plan {
	return build([]float64{0, 20, 40}, append([]func(*plan.Plan){triangle, seatError(0.3), steadyRest}, edits...)...)
}

var offTurn = twoDiscs95 * 0.3 / ring * 180 / math.Pi

// steadyRest lets the ball come home from anywhere: nothing rubs.
func steadyRest(p *plan.Plan) { p.Shop.TableFriction, p.Shop.Friction = 0, 0 }

// limited sets the target to what the third stop's interval is, less a little.
func limited(less float64, p plan.Plan) plan.Plan {
	e, _ := plate.New(p).Trueness.Zeroed(2)
	p.Shop.Target = e.Interval95.Degrees() - less
	return p
}

// truthFinding is a finding about catch A's stops at the angles given.
func truthFinding(value, limit float64, at ...float64) []expected {
	return []expected{{
		Finding{Angles: angles(at...), Pockets: []int{0}, Value: value, Limit: limit, Unit: deg},
		fmt.Sprintf("With catch A a stop is within %s of its angle on 95 plates in 100; the target is %s.", thousandths(value), thousandths(limit)),
	}}
}

func thousandths(deg float64) string { return fmt.Sprintf("%g°", math.Round(deg*1000)/1000) }

func pivotPlay(c float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Turntable.RadialPlay = c } }

func reference(a float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Shop.Reference = &a } }

// boundIn puts a table of one material and 400 mm into a collar of another.
func boundIn(table, collar string, clearance float64) func(*plan.Plan) {
	return func(p *plan.Plan) {
		c := plan.NewCollar(p.Turntable)
		c.Clearance, c.Material = clearance, collar
		p.Turntable.Material, p.Collar = table, &c
	}
}

func humidity(made, low, high float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Shop.Humidity = plan.Humidity{MadeAt: made, Low: low, High: high} }
}

// beechGrows is how much a disc of beech of the fixtures' size grows from one
// humidity to another: the Wood Handbook's coefficient and equilibrium formula.
func beechGrows(from, to float64) float64 {
	return disc * 0.00431 * (woods.EquilibriumMoisture(to, 20) - woods.EquilibriumMoisture(from, 20))
}

// seasonFinding is a finding about the stop at 0 and a clearance left.
func seasonFinding(left float64, text string) []expected {
	return []expected{{Finding{Angles: angles(0), Value: left, Unit: mm}, text}}
}

// mdfGrows is what MDF of the fixtures' size grows: 0.3 % from 30 to 90 %.
func mdfGrows(change float64) float64 { return disc * 0.003 / 60 * change }

// truthCases are about errors and seasons.
var truthCases = map[string][]fixture{
	"trueness-over-target": {
		{"the target exactly", limited(0, seatsOff()), nil},
		{"over it within the slack", limited(within, seatsOff()), nil},
		{"over it by a hair: both stops that are not the reference", limited(hair, seatsOff()), truthFinding(offTurn, offTurn-hair, 20, 40)},
		{"zeroed at another stop", limited(hair, seatsOff(reference(20))), truthFinding(offTurn, offTurn-hair, 0, 40)},
		{"the reference stop alone is off by nothing", at0(seatError(5), target(0)), nil},
		{"a stop on the reference's own seat has only the pivot's play, twice", build([]float64{0, 360}, triangle, steadyRest, seatError(5), pivotPlay(0.3), target(0.1)), truthFinding(offTurn, 0.1, 360)},
		{"a catch's place cancels where both stops have it", build([]float64{0, 20}, triangle, steadyRest, func(p *plan.Plan) { p.Shop.CatchError = 0.4 }, target(0)), nil},
		{"a ball that falls in holds nothing", at0(seat(12, 6, 118), seatError(5), target(0), stop(plan.Stop{Angle: 20})), nil},
	},

	"season-binds": {
		{"no collar to bind in", at0(func(p *plan.Plan) { p.Turntable.Material = "beech" }), nil},
		{"plywood in plywood moves together", at0(boundIn("birch-plywood", "birch-plywood", 0.01), humidity(50, 0, 100)), nil},
		{"and with no clearance at all it binds", at0(boundIn("birch-plywood", "birch-plywood", 0)), seasonFinding(0, "At 70 % humidity the table would be 0 mm too large for its collar; it is cut with 0 mm of clearance.")},
		{
			"solid beech in damp air", at0(boundIn("beech", "birch-plywood", 0.5), humidity(50, 35, 70)),
			seasonFinding(0.5-beechGrows(50, 70)+disc*0.0002*2, "At 70 % humidity the table would be 5.99 mm too large for its collar; it is cut with 0.5 mm of clearance."),
		},
		{
			"a solid collar does not give", at0(boundIn("beech", "beech", 0.5), humidity(50, 35, 70)),
			seasonFinding(0.5-beechGrows(50, 70), "At 70 % humidity the table would be 6.15 mm too large for its collar; it is cut with 0.5 mm of clearance."),
		},
		{"clearance for all it grows, and a hair", at0(boundIn("mdf", "aluminium", mdfGrows(20)+hair), humidity(50, 35, 70)), nil},
		{
			"clearance for all it grows", at0(boundIn("mdf", "aluminium", mdfGrows(20)), humidity(50, 35, 70)),
			seasonFinding(0, "At 70 % humidity the table would be 0 mm too large for its collar; it is cut with 0.4 mm of clearance."),
		},
		{
			"within the slack above it", at0(boundIn("mdf", "aluminium", mdfGrows(20)+within), humidity(50, 35, 70)),
			seasonFinding(within, "At 70 % humidity the table would be 0 mm too large for its collar; it is cut with 0.4 mm of clearance."),
		},
		{
			"a collar that shrinks round a metal table", at0(boundIn("aluminium", "mdf", 0.2), humidity(50, 35, 70)),
			seasonFinding(0.2-mdfGrows(15), "At 35 % humidity the collar would be 0.1 mm too small for its table; it is cut with 0.2 mm of clearance."),
		},
		{"a material of which nothing is known", at0(boundIn("cherry", "beech", 0)), nil},
		{"a collar of which nothing is known", at0(boundIn("beech", "cherry", 0)), nil},
		{"a plastic whose movement no source gives", at0(boundIn("acrylic", "acrylic", 0)), nil},
	},
}

// loosely is how far (degrees) a value of trueness-over-target may be off: its
// distribution is a series that is cut off.
const loosely = 2e-7
