package main

import (
	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/export"
)

// stdin stands for standard input where a PLAN is asked for.
const stdin = "-"

// load reads the plan that an argument names.
func (sh *shell) load(name string) (plan.Plan, error) {
	if name != stdin {
		return export.ReadPlan(name)
	}
	p, err := plan.Decode(sh.in)
	if err != nil {
		return plan.Plan{}, &inputError{err}
	}
	return p, nil
}

// verdict returns errFindings if any finding of a report is an error.
func verdict(r detent.Report) error {
	if worst, _ := r.Worst(); worst == check.Error {
		return errFindings
	}
	return nil
}

// findings returns what a report found, one line each: severity, id, sentence.
func findings(r detent.Report, c *words.Catalogue) []string {
	lines := make([]string, 0, len(r.Findings))
	for _, f := range r.Findings {
		lines = append(lines, oneLine(string(f.Severity)+" "+f.ID+": "+check.Sentence(r.Plate, f, c)))
	}
	return lines
}
