package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/export"
)

const trialUsage = `stopwright-cli trial PLAN [--size F] [-o FILE]

Writes the plan of a trial: the same plate at another size, to be made in scrap
first. Plates, rings and where screws and features lie become that much smaller
or larger. Ball, catch, seats, drills, screws, thickness and errors stay. It is
a plan of its own, checked as one, and all that is exported from it bears its
scale. What was measured on the plate, and where its tool stands, is left out.

  PLAN       a plan file; - reads standard input
  --size F   how large, 0.05 to 20 times the plate but not 1; 0.5, half size, if
             not given. 1/3 is understood
  -o FILE    write it to FILE, in place of what is there but never of PLAN; to
             standard output if not given

Written whatever the findings of the trial, which go to standard error. Exit
code 1 if any is an error, 2 if a part would be too small or too large for a
plan.
`

// halfSize is the size a trial is usually made at.
const halfSize = 0.5

func runTrial(sh *shell, args []string) error {
	flags := newFlags("trial")
	factor := halfSize
	sizeFlag(flags, &factor)
	var path string
	flags.Var(pathFlag{&path}, "o", "")
	name, err := onlyPlan(flags, args)
	if err != nil {
		return sh.orHelp(err, trialUsage)
	}
	p, err := sh.load(name)
	if err != nil {
		return err
	}
	if name != stdin && sameFile(name, path) {
		return &export.ClashError{Path: path, Plan: true}
	}
	trial, err := plan.Trial(p, factor)
	if err != nil {
		return &trialError{err}
	}
	r := detent.Solve(trial)
	for _, line := range findings(r, words.English()) {
		fmt.Fprintln(sh.err, line)
	}
	if path == "" {
		err = plan.Encode(sh.out, trial)
	} else {
		err = export.WriteFile(path, func(w io.Writer) error { return plan.Encode(w, trial) })
	}
	if err != nil {
		return err
	}
	return verdict(r)
}

// sizeFlag adds the flag that says how large a trial is.
func sizeFlag(flags *flag.FlagSet, factor *float64) {
	flags.Func("size", "", func(s string) (err error) {
		if *factor, err = measure.ParseNumber(s); err == nil && !plan.TrialSize(*factor) {
			err = errors.New("must be 0.05 to 20, and not 1")
		}
		return err
	})
}

// sameFile reports whether two paths lead to one file that is there.
func sameFile(a, b string) bool {
	x, errX := os.Stat(a)
	y, errY := os.Stat(b)
	return errX == nil && errY == nil && os.SameFile(x, y)
}

// trialError means that the plan at another size is no plan.
type trialError struct{ error }

func (e *trialError) Unwrap() error { return e.error }

// settleTrial tells an error that only a trial can have, and returns the exit
// code for it.
func (sh *shell) settleTrial(err error) (status int, was bool) {
	var trial *trialError
	if !errors.As(err, &trial) {
		return 0, false
	}
	sh.complain("no trial of that size", words.English().Told(trial.error))
	return statusUnusable, true
}
