package ui

import (
	"errors"
	"fmt"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// proposal is a list of stops that could be added.
type proposal struct {
	store.Offer
	err error // why those that are new cannot be added
}

// propose sorts out stops that could be added.
func (w *Window) propose(stops []plan.Stop) proposal {
	p := proposal{Offer: w.store.Offer(stops)}
	whole := w.store.Plan()
	whole.Stops = slices.Concat(whole.Stops, p.New)
	if err := plan.Validate(whole); err != nil {
		p.err = w.fieldProblem(plan.Field{Path: "stops"}, err)
	}
	return p
}

// refused returns which stops no plan may have, and why. A plan tells a thousand
// problems at most, so it is asked until it has none.
func (w *Window) refused(stops []plan.Stop) map[int]string {
	out := map[int]string{}
	p := w.store.Plan()
	p.Stops = slices.Clone(stops)
	for {
		var problems plan.Problems
		if !errors.As(plan.Validate(p), &problems) {
			return out
		}
		found := false
		for _, pr := range problems {
			var i int
			if n, _ := fmt.Sscanf(pr.Path, "stops[%d].", &i); n == 1 {
				found = true
				out[i] = w.words.Text("field.must", words.Args{"Value": pr.Value, "Want": pr.Want})
				p.Stops[i] = plan.Stop{}
			}
		}
		if !found { // it is the list as a whole
			return out
		}
	}
}

// addProposed adds what is new of a proposal, as one edit.
func (w *Window) addProposed(p proposal) {
	name := w.words.Text("edit.addmany", words.Args{"N": len(p.New)})
	if len(p.New) == 1 {
		name = w.editName("edit.add", p.New[0].Angle)
	}
	w.report(w.store.AddStops(name, p.New...))
}

// reasonKeys are the texts of why part of a list is not understood.
var reasonKeys = map[measure.Reason]string{
	measure.NotUnderstood:  "why.notunderstood",
	measure.Empty:          "why.empty",
	measure.TooLong:        "why.toolong",
	measure.Separators:     "why.separators",
	measure.PowerOfTen:     "why.poweroften",
	measure.UnknownUnit:    "why.unknownunit",
	measure.ZeroDivisor:    "why.zerodivisor",
	measure.ImproperMixed:  "why.impropermixed",
	measure.DegreesFirst:   "why.degreesfirst",
	measure.MinutesRange:   "why.minutesrange",
	measure.SecondsRange:   "why.secondsrange",
	measure.DecimalPlace:   "why.decimalplace",
	measure.CommaUnclear:   "why.commaunclear",
	measure.SpaceUnclear:   "why.spaceunclear",
	measure.ColumnsUnclear: "why.columnsunclear",
	measure.ManyColumns:    "why.manycolumns",
	measure.TooMany:        "why.toomany",
}
