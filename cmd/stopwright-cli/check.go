package main

import (
	"fmt"

	"stopwright/assets/words"
	"stopwright/detent"
)

const checkUsage = `stopwright-cli check PLAN

Says what is wrong with a plan, and what is worth knowing: one line a finding,
with its severity, its id and a sentence.

  PLAN   a plan file; - reads standard input

Severities: error (it will not work, or breaks out), warning (it may not work),
note (worth knowing). Exit code 1 if any finding is an error.
`

func runCheck(sh *shell, args []string) error {
	name, err := onlyPlan(newFlags("check"), args)
	if err != nil {
		return sh.orHelp(err, checkUsage)
	}
	p, err := sh.load(name)
	if err != nil {
		return err
	}
	r := detent.Solve(p)
	for _, line := range findings(r, words.English()) {
		fmt.Fprintln(sh.out, line)
	}
	return verdict(r)
}
