package main

import (
	"context"

	"stopwright/assets/words"
	"stopwright/detent"
)

const reportUsage = `stopwright-cli report PLAN [--json] [--quick]

Says what follows from a plan: where every seat lies and what is wrong.

  PLAN      a plan file; - reads standard input
  --json    one JSON object for other programs, instead of a table; lengths are
            mm, angles degrees, torques N·m, and keys are only ever added. They
            are seats; findings; click, for each catch; trueness; season; room,
            the ways to make room; pairs, what it does to stops that two catches
            drop together; cut_line; proving
  --quick   leave out what takes long to work out

Exit code 1 if any finding is an error; the report is written all the same.
`

func runReport(sh *shell, args []string) error {
	flags := newFlags("report")
	asJSON := flags.Bool("json", false, "")
	quick := flags.Bool("quick", false, "")
	name, err := onlyPlan(flags, args)
	if err != nil {
		return sh.orHelp(err, reportUsage)
	}
	p, err := sh.load(name)
	if err != nil {
		return err
	}
	r := detent.Solve(p)
	if !*quick {
		if r, err = detent.Study(context.Background(), r); err != nil {
			return err
		}
	}
	if *asJSON {
		err = r.Encode(sh.out, words.English())
	} else {
		err = table(sh.out, r, words.English())
	}
	if err != nil {
		return err
	}
	return verdict(r)
}
