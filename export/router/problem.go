package router

import (
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// Problem is one thing for which a program is refused.
type Problem struct {
	ID    string // its sentence is router.problem.ID
	Part  plan.Part
	Job   Job    // empty: none in particular
	Tag   string // of the first hole concerned; empty: none in particular
	Value float64
	Limit float64
	Unit  string // mm, rev/min or moves
}

// Text says what is wrong, in one sentence.
func (p Problem) Text(c *words.Catalogue) string {
	quantity := func(x float64) any {
		if p.Unit == mm {
			return words.MM(x)
		}
		return measure.Trim(x, 0)
	}
	args := words.Args{
		"Part":  c.Text("part." + string(p.Part)),
		"Value": quantity(p.Value), "Limit": quantity(p.Limit),
	}
	if p.Job != "" {
		what := c.Text("router.job." + string(p.Job))
		if p.Tag != "" {
			what += " (" + p.Tag + ")"
		}
		args["What"] = what
	}
	return c.Text("router.problem."+p.ID, args)
}

// The units of values and limits.
const (
	mm     = "mm"
	turns  = "rev/min"
	motion = "moves"
)

// Refusal is the error for which a program is not made: every problem there is.
type Refusal struct{ Problems []Problem }

// Error returns one line a problem, in English.
func (r *Refusal) Error() string { return r.In(words.English()) }

// Refused tells it from an error that is nobody's decision.
func (*Refusal) Refused() {}

// In returns one line a problem.
func (r *Refusal) In(c *words.Catalogue) string {
	lines := make([]string, len(r.Problems))
	for i, p := range r.Problems {
		lines[i] = p.Text(c)
	}
	return strings.Join(lines, "\n")
}

// refusal returns the problems as an error; nil where there are none.
func refusal(problems []Problem) error {
	if len(problems) == 0 {
		return nil
	}
	return &Refusal{problems}
}
