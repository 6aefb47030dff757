package main

import (
	"flag"

	"stopwright/detent/measure"
	"stopwright/export/scale"
)

// scaleFlags adds the flags that say what scale is wanted. Whether they go
// together is checked when all are read.
func scaleFlags(flags *flag.FlagSet, o *scale.Options) {
	flags.Func("step", "", func(s string) error {
		a, err := measure.ParseAngle(s)
		if err == nil && a == 0 { // which stands for a step that was not given
			a = -1
		}
		o.Step = a.Degrees()
		return err
	})
	flags.Func("vernier", "", func(s string) error {
		o.Reading = scale.Reading(s)
		return nil
	})
	flags.Func("rim", "", func(s string) (err error) {
		o.Rim, err = measure.ParseLength(s, measure.Millimetre)
		return err
	})
	flags.Func("index", "", func(s string) (err error) {
		o.Index, err = measure.ParseAngle(s)
		return err
	})
}
