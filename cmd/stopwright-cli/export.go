package main

import (
	"fmt"
	"strings"
	"time"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/export"
	"stopwright/export/drawing"
)

const exportUsage = `stopwright-cli export PLAN [--dxf F] [--svg F] [--pdf F] [--csv F]
                             [--proof F] [--template F] [--scale F] [--strip F]
                             [--coupon F] [--router F] [--layer-depths]
                             [--date D] [--paper P] [--bar-x L] [--bar-y L]
                             [--step A] [--vernier V] [--rim L] [--index A]

Writes the files to make the plate from. Several may be asked for at once; they
are written whatever the findings, which go to standard error.

  PLAN          a plan file; - reads standard input
  --dxf F       drawings in mm: F holds all parts side by side, and beside it
                F-base, F-turntable and, where there are some, F-collar,
                F-wear-ring, F-carrier and F-pad (before the ending, as in
                plate-base.dxf) hold one part each with the pivot at the origin,
                as it lies at the drill
  --svg F       the same as SVG, true to size, for a laser or a drawing program
  --pdf F       drilling chart to hang at the machine, a PDF
  --csv F       drilling chart for a spreadsheet
  --proof F     proof sheet, a PDF: where the cut crosses the fence, what the
                measured stops say, repairs, and room for the next readings
  --template F  paper templates of all parts at full size, to glue on and drill
                through, tiled over sheets of paper: a PDF
  --scale F     graduations for the table and an index with a vernier, flat: a
                DXF, SVG or PDF file, as its ending says
  --strip F     the same as a strip to wrap round the rim, by its ending too
  --coupon F    a test piece with a ladder of seats, bores and recesses to try,
                by its ending too
  --router F    programs for a router, RS274/NGC: F-base, F-turntable and so on
                (before the ending, as in plate-base.ngc) drill and mill one
                part each as the plan's section "router" says; F itself
                is the card of them all and moves nothing. Refused, with nothing
                written, where a hole is deeper than its part, a cutter does not
                fit, or the spindle is off
  --date D      date to print on them, as 2026-11-20; without it the chart has a
                blank to fill in, and equal plans give equal files
  --paper P     paper of the PDFs: a4 (if not given), letter, a3 or tabloid
  --bar-x L     what the bar across a printed template measures, as 149.5mm; the
                next one is corrected. Over 2 % off is refused: the printer
                fitted it to the page
  --bar-y L     the same for the bar up the paper
  --step A      graduations of a scale: 1 (if not given), 0.5 or 0.25 degrees
  --vernier V   what it reads: 0.1 degrees (if not given), 5 minutes, or none
  --rim L       diameter of the rim as measured, if not the turntable's
  --index A     where the index stands, clockwise from the operator's side
  --layer-depths
                name each layer that is cut with its depth, as SEATS-6_00MM or
                OUTLINE-THROUGH, for programs that take the depth of cut from it

A file is replaced only by a whole one, and none is if any cannot be made.
Exit code 1 if any finding is an error, 3 if a file could not be written.
`

func runExport(sh *shell, args []string) error {
	flags := newFlags("export")
	var q export.Request
	for _, f := range export.Formats {
		flags.Var(pathFlag{f.Path(&q)}, f.Name, "")
	}
	flags.BoolVar(&q.LayerDepths, "layer-depths", false, "")
	flags.Func("date", "", dateFlag(&q.Date))
	flags.Func("paper", "", paperFlag(&q.Paper))
	barFlags(flags, &q.Printer)
	scaleFlags(flags, &q.Scaling)
	name, err := onlyPlan(flags, args)
	if err != nil {
		return sh.orHelp(err, exportUsage)
	}
	if err := q.Scaling.Check(); err != nil {
		return &usageError{"export", words.English().Told(err)}
	}
	if !asked(q) {
		return &usageError{"export", "export needs at least one of " + formatFlags()}
	}
	p, err := sh.load(name)
	if err != nil {
		return err
	}
	if name != stdin {
		q.Plan = name
	}
	r := detent.Solve(p)
	for _, line := range findings(r, words.English()) {
		fmt.Fprintln(sh.err, line)
	}
	if _, err := export.Export(r, q); err != nil {
		return err
	}
	return verdict(r)
}

// dateFlag reads a date to print.
func dateFlag(date *string) func(string) error {
	return func(s string) error {
		*date = s
		if _, err := time.Parse(time.DateOnly, s); err != nil {
			return fmt.Errorf("must be a date as 2026-11-20")
		}
		return nil
	}
}

// paperFlag reads the name of a paper.
func paperFlag(paper *drawing.Paper) func(string) error {
	return func(s string) (err error) {
		*paper, err = paperNamed(s)
		return err
	}
}

// asked reports whether any file is asked for.
func asked(q export.Request) bool {
	for _, f := range export.Formats {
		if *f.Path(&q) != "" {
			return true
		}
	}
	return false
}

// formatFlags lists the flags that ask for a file.
func formatFlags() string {
	var all []string
	for _, f := range export.Formats {
		all = append(all, "--"+f.Name)
	}
	return strings.Join(all, ", ")
}

// paperNamed finds a paper by its name, in capitals or not.
func paperNamed(name string) (drawing.Paper, error) {
	var names []string
	for _, p := range drawing.Papers {
		if strings.EqualFold(p.Name, name) {
			return p, nil
		}
		names = append(names, strings.ToLower(p.Name))
	}
	return drawing.Paper{}, fmt.Errorf("must be one of %s", strings.Join(names, ", "))
}
