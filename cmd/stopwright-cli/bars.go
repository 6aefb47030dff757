package main

import (
	"errors"
	"flag"

	"stopwright/detent/measure"
	"stopwright/export/tile"
)

// barFlags adds the flags that say what the bars of a printed sheet measure.
func barFlags(flags *flag.FlagSet, c *tile.Correction) {
	bar := func(name string, to *float64) {
		flags.Func(name, "", func(s string) (err error) {
			if *to, err = measure.ParseLength(s, measure.Millimetre); err != nil {
				return err
			}
			if *to == 0 { // which stands for a bar that was not measured
				return errors.New("must be above 0")
			}
			_, err = c.Stretch()
			return err
		})
	}
	bar("bar-x", &c.X)
	bar("bar-y", &c.Y)
}
