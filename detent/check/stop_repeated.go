package check

import (
	"cmp"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// stopRepeated fires when one angle is listed more than once, the other sides
// that both_sides adds included. Stops a full turn apart that share a seat, as
// 180 and -180, are not flagged: they are two readings of one place.
var stopRepeated = Check{
	ID:       "stop-repeated",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		order := make([]int, len(pl.Stops))
		for i := range order {
			order[i] = i
		}
		slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(pl.Stops[a].Angle, pl.Stops[b].Angle) })
		for len(order) > 0 {
			n := 1
			for n < len(order) && pl.Stops[order[n]].Angle-pl.Stops[order[0]].Angle <= Slack {
				n++
			}
			same := order[:n]
			order = order[n:]
			if n == 1 {
				continue
			}
			first := pl.Stops[same[0]]
			report(Finding{
				Angles: []geom.Angle{first.Angle}, Seats: first.Seats, Value: float64(n), Limit: 1,
			})
		}
	},
	say: func(_ *plate.Plate, f Finding) (string, words.Args) {
		return "text", words.Args{"Angle": words.Deg(f.Angles[0]), "Times": int(f.Value)}
	},
	fix: func(pl *plate.Plate, f Finding) *Fix { return dropStop(spare(pl, f.Angles[0])) },
}

// spare returns which of the plan's stops at one angle can best go: the last
// that is not on both sides, else the last.
func spare(pl *plate.Plate, angle geom.Angle) int {
	last := -1
	for _, s := range pl.Stops {
		if (s.Angle - angle).Abs() > Slack {
			continue
		}
		if last < 0 || pl.Plan.Stops[last].BothSides || !pl.Plan.Stops[s.Index].BothSides {
			last = s.Index
		}
	}
	return last
}

// dropStop takes one stop off the list.
func dropStop(index int) *Fix {
	return &Fix{
		Key: "fix.drop-stop",
		Apply: func(p plan.Plan) plan.Plan {
			if index < len(p.Stops) {
				p.Stops = slices.Delete(slices.Clone(p.Stops), index, index+1)
			}
			return p
		},
	}
}
