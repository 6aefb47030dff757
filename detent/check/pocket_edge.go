package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// pocketEdge fires when a catch's pocket, at its widest, leaves less than
// rules.edge to the outer edge of its part or the pivot bore, or less than
// rules.web to another pocket. One finding a pocket: what is most lacking.
// Screws and slots in its way are feature-overlap's.
var pocketEdge = Check{
	ID:       "pocket-edge",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		for i, p := range pl.Pockets {
			left, rule, other := pocketRoom(pl, p)
			if left >= rule-Slack {
				continue
			}
			f := Finding{Angles: stopsOf(pl, p.Catch), Pockets: []int{i}, Value: left, Limit: rule, Unit: mm}
			if other >= 0 {
				f.Pockets = append(f.Pockets, other)
			}
			report(f)
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		args := clickArgs(pl, f)
		if len(f.Pockets) < 2 {
			return "edge", args
		}
		args["Other"] = pl.Pockets[f.Pockets[1]].Name
		return "pocket", args
	},
}

// pocketRoom returns the material (mm) left where a pocket is most lacking by
// its rule, that rule, and the other pocket it is lacking to (-1: an edge).
func pocketRoom(pl *plate.Plate, p plate.Pocket) (left, rule float64, other int) {
	rules := pl.Plan.Rules
	left, rule, other = plate.OutlineOf(pl.Plan, pl.CatchPart).Inside(p.Centre)-p.Widest()/2, rules.Edge, -1
	if bore := plate.BoreOf(pl.Plan, pl.CatchPart); bore > 0 {
		left = min(left, p.Radius-bore/2-p.Widest()/2)
	}
	for i, q := range pl.Pockets {
		if q.Catch == p.Catch {
			continue
		}
		if web := p.Centre.Distance(q.Centre) - p.Widest(); web-rules.Web < left-rule {
			left, rule, other = web, rules.Web, i
		}
	}
	return left, rule, other
}
