package main

import (
	"fmt"
	"io"
	"math"
	"strings"
	"text/tabwriter"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/measure"
)

// roomTable writes the ways to make room, one line each; nothing where the plan
// was not studied, or has no stops.
func roomTable(w io.Writer, r detent.Report, c *words.Catalogue) error {
	if len(r.Rooms) == 0 {
		return nil
	}
	fmt.Fprint(w, "Ways to give every stop its seat:\n")
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	for _, m := range r.Rooms {
		kind := c.Text("room.kind." + string(m.Kind))
		if !m.Fits {
			fmt.Fprintf(t, "%s\tdoes not fit: needs a ring of %s mm, room for %s mm\n", kind, measure.Trim(m.Needs, decimals), measure.Trim(m.Most, decimals))
			continue
		}
		web := "-"
		if !math.IsInf(m.Web, 1) {
			web = measure.Trim(m.Web, decimals)
		}
		var at []string
		for _, k := range m.Plan.Catches {
			at = append(at, fmt.Sprintf("%s %s° on %s mm", oneLine(k.Name), measure.Trim(k.Azimuth, decimals), measure.Trim(k.Radius, decimals)))
		}
		fmt.Fprintf(t, "%s\t%d seats\tweb %s mm\t%s\n", kind, m.Seats, web, strings.Join(at, ", "))
	}
	fmt.Fprintln(t)
	return t.Flush()
}
