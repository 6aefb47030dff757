package check

import (
	"cmp"
	"slices"

	"stopwright/assets/words"
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
		var found stopFindings
		for _, same := range sameAngle(pl.Stops) {
			f := Finding{Seats: pl.Stops[same[0]].Seats, Limit: 1}
			entries := map[int]bool{}
			for _, k := range same {
				entries[pl.Stops[k].Index] = true
				f.Angles = append(f.Angles, pl.Stops[k].Angle)
			}
			// A stop barely off 0 does not repeat its own other side.
			if f.Value = float64(len(entries)); f.Value > f.Limit {
				found.add(f)
			}
		}
		found.report(report)
	},
	say: func(_ *plate.Plate, f Finding) (string, words.Args) {
		return "text", words.Args{"Angle": words.Deg(f.Angles[0]), "Times": int(f.Value)}
	},
	fix: listOnce,
}

// sameAngle returns the groups of two or more stops at one angle, as indices,
// by angle.
func sameAngle(stops []plate.Stop) [][]int {
	order := make([]int, len(stops))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(a, b int) int { return cmp.Or(cmp.Compare(stops[a].Angle, stops[b].Angle), a-b) })
	var groups [][]int
	for from, to := 0, 0; from < len(order); from = to {
		to = from + 1
		for to < len(order) && stops[order[to]].Angle-stops[order[to-1]].Angle <= Slack {
			to++
		}
		if to-from > 1 {
			groups = append(groups, order[from:to])
		}
	}
	return groups
}

// listOnce keeps one entry for every angle of a finding and takes the others
// off the list. An entry on both sides is kept first: it says more.
func listOnce(pl *plate.Plate, f Finding) *Fix {
	kept, extra := map[int]bool{}, map[int]bool{} // into the plan's stops
	for _, same := range sameAngle(pl.Stops) {
		if !slices.Contains(f.Angles, pl.Stops[same[0]].Angle) {
			continue
		}
		keep := same[0]
		for _, k := range same {
			extra[pl.Stops[k].Index] = true
			if saysMore(pl, k, keep) {
				keep = k
			}
		}
		kept[pl.Stops[keep].Index] = true
	}
	for k := range kept {
		delete(extra, k)
	}
	return &Fix{
		Key: "fix.list-once",
		Apply: func(p plan.Plan) plan.Plan {
			var stops []plan.Stop
			for i, s := range p.Stops {
				if !extra[i] {
					stops = append(stops, s)
				}
			}
			p.Stops = stops
			return p
		},
	}
}

// saysMore reports whether the entry of stop a is to be kept before that of b:
// it is on both sides, or else it stands first in the list.
func saysMore(pl *plate.Plate, a, b int) bool {
	i, k := pl.Stops[a].Index, pl.Stops[b].Index
	if one, other := pl.Plan.Stops[i].BothSides, pl.Plan.Stops[k].BothSides; one != other {
		return one
	}
	return i < k
}
