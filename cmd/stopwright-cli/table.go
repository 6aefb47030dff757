package main

import (
	"errors"
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/measure"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// decimals of the lengths (mm) and angles (degrees) in a table: finer than any
// workshop measures.
const decimals = 3

// table writes a report to be read by people.
func table(w io.Writer, r detent.Report, c *words.Catalogue) error {
	pl := r.Plate
	seat := pl.Plan.Seat
	deep := "right through"
	if seat.Depth > 0 {
		deep = c.Length(seat.Depth) + " deep"
	}
	fmt.Fprintf(w, "%s\n\n", drawing.Title(pl.Plan, c, ""))
	fmt.Fprintf(w, "%d seats in the %s, %s; mouth %s, %s.\n",
		len(pl.Seats), pl.SeatsPart, c.Text("view."+string(plate.FaceOf(pl.SeatsPart))), c.Length(seat.Mouth()), deep)
	fmt.Fprintf(w, "Lengths mm, angles degrees; x and y as seen from above, drill x and y as seen at the drill.\n\n")
	if len(pl.Seats) > 0 {
		if err := seatTable(w, pl); err != nil {
			return err
		}
		fmt.Fprintln(w)
	}
	if err := errors.Join(truenessTable(w, r), drilledTable(w, pl), seasonLines(w, pl), setting(w, r, c), roomTable(w, r, c)); err != nil {
		return err
	}
	_, err := fmt.Fprintln(w, strings.Join(findings(r, c), "\n"))
	return err
}

// seatTable writes one line a seat.
func seatTable(w io.Writer, pl *plate.Plate) error {
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(t, "seat\tcatch\tazimuth\tradius\tx\ty\tdrill x\tdrill y\tweb\tstops\t  label")
	for _, s := range pl.Seats {
		at := plate.AtDrill(pl.SeatsPart, s.Centre)
		cells := []string{oneLine(s.Tag), oneLine(pl.Plan.Catches[s.Catch].Name)}
		for _, x := range []float64{s.Azimuth.Degrees(), s.Radius, s.Centre.X, s.Centre.Y, at.X, at.Y, s.Web} {
			cells = append(cells, measure.Fixed(x, decimals))
		}
		label := ""
		if s.Label != "" { // the last cell stands outside the columns
			label = "  " + oneLine(s.Label)
		}
		fmt.Fprintln(t, strings.Join(append(cells, stopsOf(s), label), "\t"))
	}
	return t.Flush()
}

// stopsOf lists the angles of the stops that a seat serves.
func stopsOf(s plate.Seat) string {
	var all []string
	for _, v := range s.Serves {
		all = append(all, measure.Trim(v.Angle.Degrees(), decimals))
	}
	return strings.Join(all, ", ")
}
