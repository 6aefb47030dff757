package main

import (
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/measure"
)

// setting writes what a report says about tool and fence and about measured
// stops, where the plan gives them.
func setting(w io.Writer, r detent.Report, c *words.Catalogue) error {
	if x, ok := r.CutLine(); ok {
		if err := crossingTable(w, x); err != nil {
			return err
		}
		lines := append(x.Say(r, c), x.SayMarks(c)...)
		fmt.Fprintf(w, "%s\n\n", strings.Join(lines, "\n"))
	}
	v, ok := r.Proving()
	if ok {
		if err := provedTable(w, v); err != nil {
			return err
		}
	}
	if lines := v.Say(r, c); len(lines) > 0 {
		fmt.Fprintf(w, "%s\n\n", strings.Join(lines, "\n"))
	}
	return nil
}

// crossingTable writes one line a stop: where the cut crosses the fence.
func crossingTable(w io.Writer, x detent.CutLine) error {
	fmt.Fprintf(w, "Cut line: where the tool crosses the fence, mm right of the pivot.\n")
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(t, "stop\tcrosses at\t")
	for _, k := range x.Crossings {
		at := "-"
		if k.Meets {
			at = measure.Fixed(k.X, decimals)
		}
		fmt.Fprintf(t, "%s\t%s\t\n", measure.Trim(k.Angle.Degrees(), decimals), at)
	}
	return t.Flush()
}

// provedTable writes one line a measured stop.
func provedTable(w io.Writer, v detent.Proving) error {
	fmt.Fprintf(w, "Measured stops: off is measured less wanted, own what the seat itself is off by,\nmove how far it would have to go along the ring, clockwise +.\n")
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(t, "stop\treadings\toff\town\tmove\t")
	for _, s := range v.Seats {
		out := ""
		if s.Out {
			out = "  out"
		}
		fmt.Fprintf(t, "%s\t%d\t%s\t%s\t%s\t%s\n", measure.Trim(v.Stops[s.Stop].Degrees(), decimals), s.Readings,
			measure.Fixed(s.Difference, decimals), measure.Fixed(s.Own, decimals), measure.Fixed(s.Move, decimals), out)
	}
	return t.Flush()
}
