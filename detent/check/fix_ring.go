package check

import (
	"math"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// ringStep is the step (mm) to which a proposed ring radius is rounded up: one
// that can be set on a trammel.
const ringStep = 0.5

// leastWeb (mm) is what must be left between two seats even under a web rule of
// 0: seats that touch still count as run into each other.
const leastWeb = 2 * Slack

// widerRing proposes the least ring radius at which two seats of one ring keep
// the web rule, R = (mouth + web)/(2 sin(apart/2)), when both parts have room
// for it.
func widerRing(pl *plate.Plate, f Finding) *Fix {
	if len(f.Seats) < 2 {
		return nil
	}
	a, b := pl.Seats[f.Seats[0]], pl.Seats[f.Seats[1]]
	if a.Radius != b.Radius {
		return nil
	}
	apart := (a.Azimuth - b.Azimuth).Wrap()
	web := max(pl.Plan.Rules.Web, leastWeb)
	radius := (pl.Plan.Seat.Mouth() + web) / geom.Chord(1, apart)
	// A chord is at most twice its radius: a quarter of the slack given here is
	// well within the slack of the web, and well above the rounding.
	radius = math.Ceil((radius-Slack/4)/ringStep) * ringStep
	if radius > largestRing(pl) {
		return nil
	}
	old := a.Radius
	return &Fix{
		Key: "fix.ring", Args: words.Args{"Radius": words.MM(radius)},
		Apply: func(p plan.Plan) plan.Plan {
			p.Catches = slices.Clone(p.Catches)
			for k := range p.Catches {
				if p.Catches[k].Radius == old {
					p.Catches[k].Radius = radius
				}
			}
			return p
		},
	}
}

// largestRing returns the radius (mm) up to which seats and pockets keep the
// edge rule all round, in both parts.
func largestRing(pl *plate.Plate) float64 {
	inscribed := func(part plan.Part) float64 {
		o := plate.OutlineOf(pl.Plan, part)
		return o.InsideArc(geom.Arc{Sweep: geom.FullTurn})
	}
	widest := 0.0
	for _, p := range pl.Pockets {
		widest = max(widest, p.Widest())
	}
	edge := pl.Plan.Rules.Edge
	return min(
		inscribed(pl.SeatsPart)-edge-pl.Plan.Seat.Mouth()/2,
		inscribed(pl.CatchPart)-edge-widest/2,
	)
}
