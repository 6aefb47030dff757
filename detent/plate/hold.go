package plate

import (
	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Hold is what keeps the table at some of its stops: the catches that drop
// there together. All catches of a plan are alike, so that all click or none.
type Hold struct {
	Catches []int // into the plan's catches, ascending
	Stops   []int // into the plate's stops

	Drag     float64    // torque with which the table resists, N·m
	Clicks   bool       // the balls click: Holding and Centring mean something
	Holding  float64    // greatest torque of the balls on the way out, N·m
	Centring float64    // with which the balls pull home, N·m
	HasDead  bool       // the balls click and find the seats: Dead means something
	Dead     geom.Angle // how far off the stop the table may rest, to either side
}

// Push returns the force (N) at the turntable's rim that turns it out of the
// stop.
func (h Hold) Push(p plan.Plan) float64 {
	push, _ := ball.AtHandle(h.Holding+h.Drag, p.Turntable.Diameter/2)
	return push
}

// holds lists the sets of catches that drop together, in the order of the stops.
func holds(p plan.Plan, stops []Stop, clicks []Click) []Hold {
	var out []Hold
	at := map[uint64]int{} // into out, by a bit for every catch: there are at most 64
	for i, s := range stops {
		var set uint64
		for _, c := range s.Catches {
			set |= 1 << c
		}
		k, known := at[set]
		if !known {
			k = len(out)
			at[set] = k
			out = append(out, newHold(p, clicks, members(set)))
		}
		out[k].Stops = append(out[k].Stops, i)
	}
	return out
}

// HoldOf returns what catches, ascending, would do together, whether or not a stop
// has them.
func (pl *Plate) HoldOf(catches []int) Hold { return newHold(pl.Plan, pl.Clicks, catches) }

// members lists the catches of a set, ascending.
func members(set uint64) []int {
	var out []int
	for c := 0; set != 0; c, set = c+1, set>>1 {
		if set&1 == 1 {
			out = append(out, c)
		}
	}
	return out
}

// newHold adds up catches that drop together. Each overcomes its share of the
// drag, by its arm; the table rests as far off as the worst of them lets it.
func newHold(p plan.Plan, clicks []Click, catches []int) Hold {
	h := Hold{Catches: catches, Drag: dragOf(p, clicks, catches)}
	arms := 0.0
	for _, c := range catches {
		arms += clicks[c].Setup.RingRadius
	}
	for _, c := range catches {
		k := clicks[c]
		t, ok := k.Torques()
		if !ok {
			return h
		}
		h.Holding += t.Holding
		h.Centring += t.Centring
		dead, ok := k.DeadBand(k.Miss, h.Drag*k.Setup.RingRadius/arms)
		h.HasDead, h.Dead = ok, max(h.Dead, dead.RestsAngle)
	}
	h.Clicks = true
	return h
}
