package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// screwHoles fires when the holes for the collar's screws do not do what they
// are for: the pilot hole in the base is no smaller than the clearance hole, or
// deeper than the base; the recess for the head is no wider than the hole, or
// goes through the collar. One finding: the first of these. Without a pilot or a
// recess there is nothing to say.
var screwHoles = Check{
	ID:       "screw-holes",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		if f, _ := screwFault(pl); f.Unit != "" {
			report(f)
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		_, key := screwFault(pl)
		return key, numbers(pl, f)
	},
}

// screwFault returns what is wrong with the screws' holes, with its key; the
// zero Finding where nothing is, or there are no screws.
func screwFault(pl *plate.Plate) (f Finding, key string) {
	p := pl.Plan
	if p.Collar == nil || p.Collar.Screws.Count == 0 {
		return Finding{}, ""
	}
	holes, hole := p.Making.Screws, p.Collar.Screws.Diameter
	in := func(part plan.Part, value, limit float64) Finding {
		return Finding{Features: screwsOf(pl, part), Value: value, Limit: limit, Unit: mm}
	}
	switch {
	case holes.Pilot > 0 && holes.Pilot > hole-Slack:
		return in(plan.PartBase, holes.Pilot, hole), "pilot"
	case holes.Pilot > 0 && holes.PilotDepth > p.Base.Thickness+Slack:
		return in(plan.PartBase, holes.PilotDepth, p.Base.Thickness), "pilot-deep"
	case holes.Head > 0 && holes.Head < hole+Slack:
		return in(plan.PartCollar, holes.Head, hole), "head"
	case holes.Head > 0 && holes.HeadDepth > p.Collar.Thickness-Slack:
		return in(plan.PartCollar, holes.HeadDepth, p.Collar.Thickness), "head-deep"
	}
	return Finding{}, ""
}

// screwsOf lists the collar's screws in a part.
func screwsOf(pl *plate.Plate, part plan.Part) []int {
	var out []int
	for k, f := range pl.Features {
		if f.Screw && f.Part == part {
			out = append(out, k)
		}
	}
	return out
}
