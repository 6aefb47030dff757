package check

import (
	"math"

	"stopwright/detent/plan"
)

// reachOn is the angle within which a ball is over a mouth on its own ring:
// 2·asin(a/2R).
func reachOn(radius float64) float64 { return 2 * math.Asin(mouth/4/radius) * 180 / math.Pi }

// two is a plate with catches A at 0 and B at an azimuth, and a stop of A at 40.
func two(azimuth, radius float64, edits ...func(*plan.Plan)) plan.Plan {
	return build(nil, append([]func(*plan.Plan){
		catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Azimuth: azimuth, Radius: radius}),
		stop(plan.Stop{Angle: 40}), travel(-60, 60),
	}, edits...)...)
}

// sweepCases are about what happens between the stops.
var sweepCases = map[string][]fixture{
	"false-click": {
		{
			"the ball of B reaches A's seat at -50, a right angle before A does", two(90, ring),
			[]expected{{
				Finding{Angles: angles(40), Seats: []int{0}, Value: 90, Limit: reachOn(ring), Unit: deg, Pockets: []int{1}, Tracks: []int{1}},
				"At a turn of -50°, where no stop is, the ball of catch B drops into seat A1, cut for 40°.",
			}},
		},
		{
			"at the very end of the travel", two(100, ring),
			[]expected{{
				Finding{Angles: angles(40), Seats: []int{0}, Value: 100, Limit: reachOn(ring), Unit: deg, Pockets: []int{1}, Tracks: []int{1}},
				"At a turn of -60°, where no stop is, the ball of catch B drops into seat A1, cut for 40°.",
			}},
		},
		{"a hair beyond the end of the travel", two(100+hair, ring), nil},
		{
			"a hair less than the mouth's radius off the ring, where the ball is over the rim for a moment", two(90, ring+mouth/2-hair),
			[]expected{{
				Finding{
					Angles: angles(40), Seats: []int{0}, Value: 90, Unit: deg, Pockets: []int{1}, Tracks: []int{1},
					Limit: 2 * math.Asin(math.Sqrt((mouth-hair)*hair/4/ring/(ring+mouth/2-hair))) * 180 / math.Pi,
				},
				"At a turn of -50°, where no stop is, the ball of catch B drops into seat A1, cut for 40°.",
			}},
		},
		{"the mouth's radius off the ring", two(90, ring+mouth/2), nil},
		{"short of the mouth's radius within the slack", two(90, ring+mouth/2-within), nil},
		{"a stop is wanted there: two balls drop", two(90, ring, stop(plan.Stop{Angle: -50, Catches: []string{"B"}})), nil},
		{"a stop of a third kind is wanted there", two(90, ring, stop(plan.Stop{Angle: -50})), nil},
		{"an opposed pair: each ball passes the other's seat half a turn away", two(180, ring, stop(plan.Stop{Angle: 0, Catches: []string{"A", "B"}})), nil},
		{
			"half a degree from a stop: the ball pulls it off", two(90, ring, stop(plan.Stop{Angle: -49.5})),
			[]expected{{
				Finding{Angles: angles(40, -49.5), Seats: []int{1}, Value: 0.5, Limit: reachOn(ring), Unit: deg, Pockets: []int{1}, Tracks: []int{1}},
				"At a turn of -50° the ball of catch B drops into seat A2, cut for 40°: that is 0.5° from the stop at -49.5° and pulls it off.",
			}},
		},
		{
			"as far from a stop as the ball begins to sink: it is not pulled", two(90, ring, stop(plan.Stop{Angle: -50 + reachOn(ring) + hair})),
			[]expected{{
				Finding{Angles: angles(40), Seats: []int{1}, Value: reachOn(ring) + hair, Limit: reachOn(ring), Unit: deg, Pockets: []int{1}, Tracks: []int{1}},
				"At a turn of -50°, where no stop is, the ball of catch B drops into seat A2, cut for 40°.",
			}},
		},
		{
			"a seat that two balls reach: told of the one nearer to a stop", two(90, ring,
				catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Azimuth: 30, Radius: ring}, plan.Placement{Name: "C", Azimuth: 60, Radius: ring})),
			[]expected{{
				Finding{Angles: angles(40), Seats: []int{0}, Value: 30, Limit: reachOn(ring), Unit: deg, Pockets: []int{1}, Tracks: []int{1}},
				"At a turn of 10°, where no stop is, the ball of catch B drops into seat A1, cut for 40°.",
			}},
		},
		{"no end stops, but only one catch", build([]float64{0, 40, 90}, travel(-360, 360)), nil},
		{"a stop without a seat in the way: none are cut", build(nil, catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Azimuth: 90, Radius: ring})), nil},
	},
}
