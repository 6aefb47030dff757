package check

import (
	"math"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// wanderOverTarget fires when the place where the tool crosses the fence wanders
// farther, from stop to stop, than the gap that the maker accepts at a joint:
// pieces cut to one length stop then come out unlike by that much. The gap is
// what two cuts off by shop.target open at the corner of a square joint,
// stock_width·tan(2·target); the joint of a steeper mitre is longer, so that
// this is the strictest. Value and limit are in mm.
//
// Stops beyond 85 degrees have no crossing and do not count.
var wanderOverTarget = Check{
	ID:       "wander-over-target",
	Severity: Warning,
	run: func(pl *plate.Plate, report func(Finding)) {
		if pl.Plan.Tool == nil {
			return
		}
		t := plate.ToolLine(*pl.Plan.Tool).Travel(pl.Leans())
		limit := WanderLimit(pl.Plan)
		if t.Leans < 2 || t.Wander() <= limit+Slack {
			return
		}
		a, b := pl.Stops[t.AtLeast].Angle, pl.Stops[t.AtMost].Angle
		report(Finding{
			Angles: []geom.Angle{min(a, b), max(a, b)},
			Value:  t.Wander(), Limit: limit, Unit: mm,
		})
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		args := numbers(pl, f)
		args["A"], args["B"] = words.Deg(f.Angles[0]), words.Deg(f.Angles[1])
		return "text", args
	},
	fix: betterFence,
}

// WanderLimit returns how far (mm) the crossing may wander by the plan's target.
// A target of 45 degrees or more sets no limit.
func WanderLimit(p plan.Plan) float64 {
	if p.Shop.Target >= 45 {
		return math.Inf(1)
	}
	return p.Shop.StockWidth * math.Tan(2*geom.Angle(p.Shop.Target).Radians())
}

// betterFence proposes the fence distance at which the crossing wanders least,
// where that is enough; else only the tool can be moved, and no plan does that.
func betterFence(pl *plate.Plate, f Finding) *Fix {
	line := plate.ToolLine(*pl.Plan.Tool)
	best, ok := line.BestFence(pl.Leans())
	if !ok {
		return nil
	}
	line.Fence = best
	if line.Travel(pl.Leans()).Wander() > f.Limit+Slack {
		return nil
	}
	return &Fix{
		Key: "fix.fence", Args: words.Args{"To": words.MM(best)},
		Apply: func(p plan.Plan) plan.Plan {
			t := *p.Tool
			t.Marks = slices.Clone(t.Marks)
			t.Fence = best
			p.Tool = &t
			return p
		},
	}
}
