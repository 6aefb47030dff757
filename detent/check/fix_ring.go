package check

import (
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

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
	radius := room.RoundUp(room.RingFor(apart, pl.Plan.Seat.Mouth()+web))
	if radius > pl.LargestRing()+Slack {
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
