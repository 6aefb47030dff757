package main

import (
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"stopwright/detent"
	"stopwright/detent/angles"
	"stopwright/detent/measure"
	"stopwright/detent/plate"
)

// mostListed is how many stops the table of trueness lists; what all of them have
// in common is said above it.
const mostListed = 200

// truenessTable writes how far off the stops may be.
func truenessTable(w io.Writer, r detent.Report) error {
	pl, t := r.Plate, r.Plate.Trueness
	if t.Reference < 0 {
		return nil
	}
	fmt.Fprintln(w, "Trueness")
	_, worst, ok := t.WorstZeroed()
	if !ok {
		_, err := fmt.Fprintf(w, "The ball does not click, so that nothing holds the table at a stop.\n\n")
		return err
	}
	fmt.Fprintf(w, "How far off a stop may be, to either side: at worst, as a standard deviation, and on 95 plates in 100.\nZeroed: with the table set to zero at the stop of %s; target %s.\n\n",
		degrees(pl.Stops[t.Reference].Angle.Degrees()), degrees(pl.Plan.Shop.Target))
	c := tabwriter.NewWriter(w, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(c, "stop\tworst\tstd\t95 %\tzeroed worst\tstd\t95 %\t")
	for i, s := range pl.Stops[:min(len(pl.Stops), mostListed)] {
		drilled, _ := t.Drilled(i)
		zeroed, _ := t.Zeroed(i)
		cells := []string{measure.Trim(s.Angle.Degrees(), decimals)}
		for _, e := range []plate.StopError{drilled, zeroed} {
			cells = append(cells, measure.Fixed(e.Worst.Degrees(), decimals), measure.Fixed(e.Std.Degrees(), decimals), measure.Fixed(e.Interval95.Degrees(), decimals))
		}
		fmt.Fprintln(c, strings.Join(cells, "\t")+"\t")
	}
	if err := c.Flush(); err != nil {
		return err
	}
	if more := len(pl.Stops) - mostListed; more > 0 {
		fmt.Fprintf(w, "and %d more stops\n", more)
	}
	fmt.Fprintf(w, "\nOf the widest: seats %s, catches %s, pivot or collar %s, where the ball rests %s.\n",
		share(worst, plate.SeatPlace), share(worst, plate.CatchPlace), share(worst, plate.GuidePlay), share(worst, plate.BallRest))
	if s := r.Sampled; s != nil {
		fmt.Fprintf(w, "In %d trials %s of the plates had every stop within the target, and 95 in 100 within %s.\n",
			s.Trials, percent(s.AllWithinTarget), degrees(s.AllWithin95.Degrees()))
	}
	for _, n := range []int{4, 8} {
		length := angles.JointLength(pl.Plan.Shop.StockWidth, n)
		corner, ok := angles.CornerGap(length, worst.Interval95)
		closing, closes := angles.ClosingGap(length, n, worst.Interval95)
		if ok && closes {
			fmt.Fprintf(w, "A frame of %d sides from stock %s mm wide would gape %s mm at a corner, %s mm at the last.\n",
				n, measure.Trim(pl.Plan.Shop.StockWidth, decimals), measure.Fixed(corner, 2), measure.Fixed(closing, 2))
		}
	}
	_, err := fmt.Fprintln(w)
	return err
}

// drilledTable writes the stops that seats measured after drilling give.
func drilledTable(w io.Writer, pl *plate.Plate) error {
	if len(pl.Drilled) == 0 {
		return nil
	}
	fmt.Fprintf(w, "As drilled\n\n")
	c := tabwriter.NewWriter(w, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(c, "stop\tcatch\tx\ty\treally\toff\toff zeroed\tradius off\t")
	for _, d := range pl.Drilled {
		cells := []string{measure.Trim(d.Angle, decimals), oneLine(d.AsDrilled.Catch), measure.Fixed(d.X, decimals), measure.Fixed(d.Y, decimals)}
		if d.Stop < 0 {
			cells = append(cells, "no such stop", "", "", "")
		} else {
			zeroed := "–"
			if off, ok := pl.ReallyOffZeroed(d.Stop); ok {
				zeroed = measure.Fixed(off.Degrees(), decimals)
			}
			cells = append(cells, measure.Fixed(d.True.Degrees(), decimals), measure.Fixed(d.Off.Degrees(), decimals), zeroed, measure.Fixed(d.Radial, decimals))
		}
		fmt.Fprintln(c, strings.Join(cells, "\t")+"\t")
	}
	if err := c.Flush(); err != nil {
		return err
	}
	_, err := fmt.Fprintln(w)
	return err
}

// seasonLines writes what dry and damp air do.
func seasonLines(w io.Writer, pl *plate.Plate) error {
	s, air := plate.NewSeason(pl.Plan), pl.Plan.Shop.Humidity
	fmt.Fprintf(w, "Season\nWood comes to %s %% moisture at %s %% humidity and to %s %% at %s %%.\n",
		measure.Fixed(s.Dry.Moisture, 1), measure.Trim(air.Low, 1), measure.Fixed(s.Wet.Moisture, 1), measure.Trim(air.High, 1))
	if s.Growth.Known() {
		fmt.Fprintf(w, "The turntable grows by %s mm between them.\n", measure.Fixed(s.Growth.Typical, 2))
	} else {
		fmt.Fprintln(w, "How its turntable moves is not known.")
	}
	if s.HasCollar {
		fmt.Fprintf(w, "Its clearance in the collar is then %s mm and %s mm; %s mm is enough to cut.\n",
			measure.Fixed(s.Dry.Clearance, 2), measure.Fixed(s.Wet.Clearance, 2), measure.Trim(s.Choose, 1))
	}
	_, err := fmt.Fprintln(w)
	return err
}

func degrees(x float64) string { return measure.Trim(x, decimals) + "°" }

func percent(x float64) string { return measure.Fixed(100*x, 0) + " %" }

func share(e plate.StopError, c plate.Cause) string { return percent(e.Share(c)) }
