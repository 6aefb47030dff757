package check

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// truer proposes the change that asks for least and brings the stops within the
// target: a larger ring, a closer pivot, a closer way to place holes, or several
// of them together.
func truer(pl *plate.Plate, f Finding) *Fix {
	worst := worstOf(pl, f)
	if worst < 0 {
		return nil
	}
	r, ok := pl.Cheapest(worst, geom.Angle(f.Limit))
	if !ok {
		return nil
	}
	return &Fix{Key: remedyKey(r), Args: remedyArgs(pl.Plan, r), Apply: r.Apply}
}

// remedyArgs returns the values that a remedy's text names.
func remedyArgs(p plan.Plan, r plate.Remedy) words.Args {
	args := words.Args{}
	if r.Factor != 0 {
		args["Radius"] = words.MM(r.Apply(p).Catches[0].Radius)
	}
	if r.Play != 0 {
		args["Play"] = words.MM(r.Play)
	}
	if r.Method != nil {
		args["Method"] = words.Phrase{Key: "choice." + r.Method.ID}
	}
	return args
}

// remedyKey is the key of the text that says what a remedy changes.
func remedyKey(r plate.Remedy) string {
	ring, pivot, method := r.Factor != 0, r.Play != 0, r.Method != nil
	switch {
	case ring && pivot && method:
		return "fix.method-pivot-ring"
	case ring && pivot:
		return "fix.pivot-ring"
	case ring && method:
		return "fix.method-ring"
	case pivot && method:
		return "fix.method-pivot"
	case ring:
		return "fix.ring"
	case pivot:
		return "fix.pivot"
	}
	return "fix.method"
}
