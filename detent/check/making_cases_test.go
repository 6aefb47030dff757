package check

import (
	"math"

	"stopwright/detent/plan"
)

// making changes what is made besides the plate.
func making(change func(*plan.Making)) func(*plan.Plan) {
	return func(p *plan.Plan) { change(&p.Making) }
}

// endStop is a pin on a radius, with a slot as wide as itself, that ends the
// travel exactly.
func endStop(diameter, radius float64) func(*plan.Plan) {
	return making(func(m *plan.Making) {
		m.EndStops = plan.Slider{Diameter: diameter, Radius: radius, Azimuth: 180}
	})
}

// featureFinding is a finding about features alone.
func featureFinding(value, limit float64, text string, features ...int) []expected {
	return []expected{{Finding{Features: features, Value: value, Limit: limit, Unit: mm}, text}}
}

// plainFinding is a finding that concerns no one thing.
func plainFinding(value, limit float64, text string) []expected {
	return featureFinding(value, limit, text)
}

func knockOut(diameter float64) func(*plan.Plan) {
	return making(func(m *plan.Making) { m.KnockOut = diameter })
}

func wearRing(width, thickness float64) func(*plan.Plan) {
	return making(func(m *plan.Making) { m.WearRing.Width, m.WearRing.Thickness = width, thickness })
}

func carrier(change func(*plan.Carrier)) func(*plan.Plan) {
	return making(func(m *plan.Making) {
		m.Carrier.Width, m.Carrier.Length = 30, 60
		change(&m.Carrier)
	})
}

// makingCases are about the fittings; both parts are alike, so that most say the
// same the other way up.
var makingCases = map[string][]fixture{
	"knock-out-wide": {
		{"no hole to push it out", at0(), nil},
		{"a hole that leaves a ledge", at0(knockOut(4)), nil},
		{"a hair of ledge", at0(knockOut(8.1 - hair)), nil},
		{
			"as wide as the body's bore", at0(knockOut(8.1)),
			pocketFinding(8.1, 8.1, "The hole to push the catches out is 8.1 mm wide, and the bore that holds them 8.1 mm."),
		},
	},

	"wear-ring-room": {
		{"none", at0(), nil},
		{"the rules exactly beside the seats", at0(wearRing(mouth+2*web, 2)), nil},
		{
			"a hair narrower", at0(wearRing(mouth+2*web-2*hair, 2)),
			plainFinding(web-hair, web, "The wear ring leaves 2 mm beside the seats; the rule is 2 mm."),
		},
		{"the edge rule exactly", at0(onRing(disc/2-20-edge), wearRing(40, 2)), nil},
		{
			"a hair too near the edge", at0(onRing(disc/2-20-edge+hair), wearRing(40, 2)),
			plainFinding(edge-hair, edge, "The wear ring's recess leaves 4 mm to the edge or the pivot bore; the rule is 4 mm."),
		},
		{"the edge rule exactly at the bore", at0(onRing(20+edge+bore/2), wearRing(40, 2)), nil},
		{
			"a hair too near the bore", at0(onRing(20+edge+bore/2-hair), wearRing(40, 2)),
			plainFinding(edge-hair, edge, "The wear ring's recess leaves 4 mm to the edge or the pivot bore; the rule is 4 mm."),
		},
		{
			"as thick as the part", at0(wearRing(20, thickness)),
			plainFinding(thickness, thickness, "The wear ring is 18 mm thick, and the part it is let into 18 mm."),
		},
	},

	"carrier-room": {
		{"none", at0(), nil},
		{"roomy", at0(carrier(func(*plan.Carrier) {})), nil},
		{"the edge rule exactly round the bore", at0(carrier(func(c *plan.Carrier) { c.Width, c.Screw = 8.1+2*edge, 3 })), nil},
		{
			"a hair narrower", at0(carrier(func(c *plan.Carrier) { c.Width, c.Screw = 8.1+2*edge-2*hair, 3 })),
			plainFinding(edge-hair, edge, "The carrier leaves 4 mm round the catch's bore; the rule is 4 mm."),
		},
		{
			"a screw a hair too near the bore", at0(carrier(func(c *plan.Carrier) { c.Spacing = 8.1 + c.Screw + 2*web - 2*hair })),
			plainFinding(web-hair, web, "The carrier leaves 2 mm between the catch's bore and a screw; the rule is 2 mm."),
		},
		{
			"a screw a hair too near the end", at0(carrier(func(c *plan.Carrier) { c.Length = c.Spacing + c.Screw + 2*edge - 2*hair })),
			plainFinding(edge-hair, edge, "The carrier leaves 4 mm between a screw and its edge; the rule is 4 mm."),
		},
	},
}

// makingCasesOneWayUp concern one part, whichever holds the catch.
var makingCasesOneWayUp = map[string][]fixture{
	"fitting-edge": {
		{"no fitting; a slot of the maker's may be open", at0(baseHole(disc/2, 0, 10, "notch")), nil},
		{"the rule exactly, to the edge", at0(travel(-30, 30), endStop(6, disc/2-3-edge)), nil},
		{
			"a hair less, pin and slot", at0(travel(-30, 30), endStop(6, disc/2-3-edge+hair)),
			[]expected{
				{
					Finding{Features: []int{0}, Value: edge - hair, Limit: edge, Unit: mm},
					"End stop pin leaves 4 mm to the edge of its part or its bore; the rule is 4 mm.",
				},
				{
					Finding{Features: []int{1}, Value: edge - hair, Limit: edge, Unit: mm},
					"End stop slot leaves 4 mm to the edge of its part or its bore; the rule is 4 mm.",
				},
			},
		},
		{"the rule exactly, to the bore", at0(travel(-30, 30), endStop(6, bore/2+edge+3)), nil},
		{
			"straight slots out over the edge", at0(making(func(m *plan.Making) {
				m.Fence = plan.FenceSlots{Width: 6, Length: 40, Spacing: 100, Y: 180}
			})),
			[]expected{
				{
					Finding{Features: []int{0}, Value: disc/2 - math.Hypot(50, 200) - 3, Limit: edge, Unit: mm},
					"Fence slot 1 runs out over the edge of its part or into its bore by 9.16 mm.",
				},
				{
					Finding{Features: []int{1}, Value: disc/2 - math.Hypot(50, 200) - 3, Limit: edge, Unit: mm},
					"Fence slot 2 runs out over the edge of its part or into its bore by 9.16 mm.",
				},
			},
		},
		{"registration pins in the waste", at0(making(func(m *plan.Making) { m.Registration.Diameter = 6 })), nil},
		{"registration pins inside, the rule exactly", at0(making(func(m *plan.Making) {
			m.Registration = plan.Registration{Diameter: 6, Distance: disc/2 - 3 - edge}
		})), nil},
		{"registration pins that would straddle the edge go to the waste", at0(making(func(m *plan.Making) {
			m.Registration = plan.Registration{Diameter: 6, Distance: disc / 2}
		})), nil},
	},

	"fitting-web": {
		{"two of the maker's own are the maker's affair", at0(baseHole(60, 0, 10, "a"), baseHole(62, 0, 10, "b")), nil},
		{"the rule exactly", at0(travel(-30, 30), endStop(6, 60), baseHole(60+3+web+5, 180, 10, "foot")), nil},
		{
			"a hair less", at0(travel(-30, 30), endStop(6, 60), baseHole(60+3+web+5-hair, 180, 10, "foot")),
			featureFinding(web-hair, web, "End stop slot leaves 2 mm to foot; the rule is 2 mm.", 2, 0),
		},
		{
			"clamp and end stop on one circle", at0(travel(-60, 60), endStop(6, 60), making(func(m *plan.Making) {
				m.Clamp = plan.Slider{Diameter: 6, Radius: 60, Azimuth: 90}
			})),
			featureFinding(-6, web, "Clamp slot and End stop slot run into each other by 6 mm.", 3, 1),
		},
		{
			"two straight slots that cross", at0(feature(plan.Feature{Part: plan.PartBase, Kind: plan.Slot, X: 0, Y: 60, X2: 90, Y2: 60, Width: 4, Label: "rule"}), making(func(m *plan.Making) {
				m.Fence = plan.FenceSlots{Width: 6, Length: 40, Spacing: 100, Y: 60}
			})),
			featureFinding(-5, web, "Fence slot 2 and rule run into each other by 5 mm.", 2, 0),
		},
	},

	"fitting-turns": {
		{"a table that turns half the way", at0(travel(-90, 90), endStop(6, 60)), nil},
		{"the rule exactly", at0(travel(0, 360-turnAt(60, 6+web)), endStop(6, 60)), nil},
		{
			"a hair less", at0(travel(0, 360-turnAt(60, 6+web-hair)), endStop(6, 60)),
			featureFinding(web-hair, web, "End stop slot leaves 2 mm between its ends; the rule is 2 mm.", 1),
		},
		{
			"a table that turns all the way round", at0(making(func(m *plan.Making) { m.Clamp.Diameter = 8; m.Clamp.Radius = 60 })),
			featureFinding(-9, web, "Clamp slot goes all the way round and would cut the middle out of the base: it needs a travel with ends.", 1),
		},
	},

	"screw-holes": {
		{"no collar", at0(making(func(m *plan.Making) { m.Screws.Pilot = 9 })), nil},
		{"one hole right through both", onScrews(func(*plan.Making) {}), nil},
		{"a pilot", onScrews(func(m *plan.Making) { m.Screws.Pilot, m.Screws.PilotDepth = 3, thickness }), nil},
		{
			"a pilot as wide as the screw's hole", onScrews(func(m *plan.Making) { m.Screws.Pilot = 4.5 }),
			featureFinding(4.5, 4.5, "The pilot holes are 4.5 mm and the clearance holes 4.5 mm: the screws would not bite.", 2, 3),
		},
		{
			"a pilot deeper than the base", onScrews(func(m *plan.Making) { m.Screws.Pilot, m.Screws.PilotDepth = 3, thickness+hair }),
			featureFinding(thickness+hair, thickness, "The pilot holes are 18 mm deep, and the base 18 mm thick.", 2, 3),
		},
		{"a recess for the head", onScrews(func(m *plan.Making) { m.Screws.Head = 9 }), nil},
		{
			"a recess no wider than the hole", onScrews(func(m *plan.Making) { m.Screws.Head = 4.5 }),
			featureFinding(4.5, 4.5, "The recesses for the screws' heads are 4.5 mm wide, and their holes 4.5 mm.", 0, 1),
		},
		{
			"a recess through the collar", onScrews(func(m *plan.Making) { m.Screws.Head, m.Screws.HeadDepth = 9, thickness }),
			featureFinding(thickness, thickness, "The recesses for the screws' heads are 18 mm deep, and the collar 18 mm thick.", 0, 1),
		},
	},
}

// turnAt returns the turn whose chord at a radius is a distance.
func turnAt(radius, distance float64) float64 {
	return 2 * math.Asin(distance/(2*radius)) * 180 / math.Pi
}

// onScrews is a plate with a collar on two screws.
func onScrews(change func(*plan.Making)) plan.Plan {
	return at0(making(change), func(p *plan.Plan) {
		p.Turntable.Diameter = 300
		c := plan.NewCollar(p.Turntable)
		c.Screws.Count = 2
		p.Collar = &c
	})
}
