package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/export"
)

const bundleUsage = `stopwright-cli bundle PLAN TO [--date D] [--paper P] [--replace]
                             [--bar-x L] [--bar-y L] [--layer-depths]

Writes everything that can be made of a plan into one new folder or zip file:
all that export knows, the plan itself, and a page of contents to begin with,
contents.html, which opens in any browser. Says the path of what it wrote.

  PLAN        a plan file; - reads standard input
  TO          a folder to make, or a zip file if it ends in .zip; in a folder
              that is there already a new one is made, called after the plan and
              the date
  --date D    date to print on all, as 2026-11-20; without it charts have a
              blank to fill in, and equal plans give equal files
  --paper P   paper of the PDF: a4 (if not given), letter, a3 or tabloid
  --bar-x L, --bar-y L, --layer-depths
              as for export
  --replace   put it in the place of an older bundle of the same name; a folder
              that holds anything else is never replaced

It is there whole or not at all, also when it is stopped midway. What is refused
(a router's program for a hole its cutter does not fit) is left out, and told on
standard error. Exit code 1 if any finding is an error, 2 if there is something
at TO already, 3 if it could not be written.
`

func runBundle(sh *shell, args []string) error {
	flags := newFlags("bundle")
	var q export.BundleRequest
	flags.Func("date", "", dateFlag(&q.Date))
	flags.Func("paper", "", paperFlag(&q.Paper))
	barFlags(flags, &q.Printer)
	flags.BoolVar(&q.LayerDepths, "layer-depths", false, "")
	flags.BoolVar(&q.Replace, "replace", false, "")
	others, err := parse(flags, args)
	if err != nil {
		return sh.orHelp(err, bundleUsage)
	}
	if len(others) != 2 || others[0] == "" || others[1] == "" {
		return &usageError{"bundle", "bundle needs a PLAN, and a folder or zip file to write"}
	}
	p, err := sh.load(others[0])
	if err != nil {
		return err
	}
	q.Name = export.BundleName(p.Title)
	if name := others[0]; name != stdin {
		q.Plan = name
		q.Name = export.BundleName(strings.TrimSuffix(filepath.Base(name), filepath.Ext(name)))
	}
	q.To = export.BundlePath(others[1], q.Name, q.Date)
	r := detent.Solve(p)
	for _, line := range findings(r, words.English()) {
		fmt.Fprintln(sh.err, line)
	}
	stopped, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	done, err := export.Bundle(stopped, r, q, func(export.Progress) {})
	if err != nil {
		return err
	}
	for _, l := range done.LeftOut {
		sh.complain("left out "+l.Format, told(l.Reason))
	}
	fmt.Fprintln(sh.out, oneLine(done.Path))
	return verdict(r)
}

// settleBundle tells an error that only a bundle can have, and returns the exit
// code for it.
func (sh *shell) settleBundle(err error) (status int, told bool) {
	var exists *export.ExistsError
	switch {
	case errors.As(err, &exists):
		sh.complain("cannot write", exists.Error()+"; --replace puts a bundle in the place of an older one")
		return statusUnusable, true
	case errors.Is(err, context.Canceled):
		sh.complain("stopped", "nothing is written")
		return statusUnwritten, true
	}
	return 0, false
}
