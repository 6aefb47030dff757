package router

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// Program is what a router does to one part, as plain values.
type Program struct {
	Part     plan.Part
	Title    string // of the plan, on one line
	Settings plan.Router
	Tools    []Tool
	Steps    []Step // all of one tool together
	Moves    []Move // from the safe height over the pivot
	Left     []Left // what is left to the drawings

	Copies    int     // how many parts are made alike
	Thickness float64 // of the part
	Deepest   float64 // how far below the face the program goes
	Seconds   float64 // estimate of the time it takes, changes of tool not counted
}

// New makes the program of a part, every move of it. The error is a [*Refusal];
// a part in which there is nothing to cut has a program without steps. Words
// name the holes.
func New(pl *plate.Plate, part plan.Part, c *words.Catalogue) (Program, error) {
	cuts := work(pl, part, c)
	p := Program{
		Part: part, Title: drawing.Title(pl.Plan, c, ""), Settings: pl.Plan.RouterSettings(),
		Copies: copies(pl, part), Thickness: plate.ThicknessOf(pl.Plan, part), Left: left(pl, part),
	}
	if len(cuts) == 0 {
		return p, nil
	}
	if problems := refuse(pl, part, cuts); len(problems) > 0 {
		return p, refusal(problems)
	}
	p.Tools, p.Steps = number(cuts)
	for _, s := range p.Steps {
		p.Deepest = max(p.Deepest, s.Depth)
	}
	p.Moves = moves(p.Steps, p.Settings)
	p.Seconds = seconds(p)
	return p, nil
}

// moves works out every move of the steps.
func moves(steps []Step, set plan.Router) []Move {
	p := path{at: Place{Z: set.SafeHeight}}
	for i, s := range steps {
		for k, h := range s.Holes {
			p.step, p.hole = i, k
			if s.Mill {
				p.pocket(h.At, s.Diameter, s.Depth, set)
			} else {
				p.drill(h.At, s.Depth, set)
			}
		}
	}
	return p.moves
}

// All makes the program of every part in which there is something to cut, in
// the order of a plan's parts. The error is a [*Refusal] with what is wrong in
// any of them.
func All(pl *plate.Plate, c *words.Catalogue) ([]Program, error) {
	var programs []Program
	var problems []Problem
	for _, part := range drawing.AllPartsOf(pl.Plan) {
		p, err := New(pl, part, c)
		if r, refused := err.(*Refusal); refused {
			problems = append(problems, r.Problems...)
		}
		if len(p.Steps) > 0 {
			programs = append(programs, p)
		}
	}
	if len(problems) > 0 {
		return nil, refusal(problems)
	}
	return programs, nil
}

// Holes returns how many holes the program makes; a stepped one counts once for
// each step.
func (p Program) Holes() int {
	n := 0
	for _, s := range p.Steps {
		n += len(s.Holes)
	}
	return n
}
