package ui

import (
	"stopwright/detent"
	"stopwright/detent/check"
	"stopwright/detent/plate"
)

// fixes are the changes that would mend the findings of one report, each worked
// out when it is first asked for: a row is shown several times after an edit, to
// be measured and to be drawn, and to look for the best seat takes longer than
// all the rest of it.
type fixes struct {
	of    *plate.Plate       // of the report
	found map[int]*check.Fix // by finding; nil: there is none
}

// fix returns what would mend one of a report's findings, or nil.
func (f *fixes) fix(r detent.Report, i int) *check.Fix {
	if f.of != r.Plate {
		f.of, f.found = r.Plate, map[int]*check.Fix{}
	}
	fix, known := f.found[i]
	if !known {
		fix = check.FixOf(r.Plate, r.Findings[i])
		f.found[i] = fix
	}
	return fix
}
