package check

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// pocketEdge fires when a catch's pocket, at its widest, leaves less than
// rules.edge to the outer edge of its part or the pivot bore, or less than
// rules.web to another pocket. One finding a pocket, of what lacks most by its
// rule, and one for two pockets that lack most to each other. Screws and slots
// in its way are feature-overlap's.
var pocketEdge = Check{
	ID:       "pocket-edge",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		rooms := make([]pocketRoom, len(pl.Pockets))
		for i := range pl.Pockets {
			r := roomOf(pl, i)
			rooms[i] = r
			if r.left >= r.rule-Slack {
				continue
			}
			f := Finding{Angles: stopsOf(pl, i), Pockets: []int{i}, Value: r.left, Limit: r.rule, Unit: mm}
			if o := r.other; o >= 0 {
				if o < i && rooms[o].other == i {
					continue // told already, with the other first
				}
				f.Pockets = append(f.Pockets, o)
				f.Angles = distinct(f.Angles, stopsOf(pl, o))
			}
			report(f)
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		args := numbers(pl, f)
		if len(f.Pockets) < 2 {
			return "edge", args
		}
		args["Catch"], args["Other"] = pl.Pockets[f.Pockets[0]].Name, pl.Pockets[f.Pockets[1]].Name
		return "pocket", args
	},
}

// pocketRoom is the material (mm) left beside a pocket where it lacks most, the
// rule there, and the other pocket it is to; -1: an edge. Of what lacks equally,
// but for rounding, the edge stands first and then the pockets in their order.
type pocketRoom struct {
	left, rule float64
	other      int
}

func roomOf(pl *plate.Plate, i int) pocketRoom {
	p, rules := pl.Pockets[i], pl.Plan.Rules
	left := plate.OutlineOf(pl.Plan, pl.CatchPart).Inside(p.Centre)
	if bore := plate.BoreOf(pl.Plan, pl.CatchPart); bore > 0 {
		left = min(left, p.Radius-bore/2)
	}
	worst := pocketRoom{left - p.Widest()/2, rules.Edge, -1}
	for k, q := range pl.Pockets {
		web := p.Centre.Distance(q.Centre) - p.Widest() // pockets are alike
		if k != i && web-rules.Web < worst.left-worst.rule-Slack {
			worst = pocketRoom{web, rules.Web, k}
		}
	}
	return worst
}

// stopsOf returns the angles of the stops that use a catch.
func stopsOf(pl *plate.Plate, catch int) []geom.Angle {
	var out []geom.Angle
	for _, h := range pl.Holds {
		for _, c := range h.Catches {
			if c != catch {
				continue
			}
			for _, i := range h.Stops {
				out = append(out, pl.Stops[i].Angle)
			}
		}
	}
	return out
}
