package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// carrierRoom fires when a catch's carrier leaves less than rules.edge round the
// catch's bore or at its screws, or less than rules.web between the two. One
// finding: the first of these.
var carrierRoom = Check{
	ID:       "carrier-room",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		if f, _ := carrierFault(pl); f.Unit != "" {
			report(f)
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		_, key := carrierFault(pl)
		return key, numbers(pl, f)
	},
}

// carrierFault returns what is wrong with the carriers, with its key; the zero
// Finding where nothing is, or there are none.
func carrierFault(pl *plate.Plate) (f Finding, key string) {
	c, rules := pl.Plan.Making.Carrier, pl.Plan.Rules
	if c.Width == 0 {
		return Finding{}, ""
	}
	bore := pl.Pockets[0].Body
	round := (min(c.Width, c.Length) - bore) / 2
	between := (c.Spacing - c.Screw - bore) / 2
	end := min(c.Length-c.Spacing, c.Width)/2 - c.Screw/2
	switch {
	case round < rules.Edge-Slack:
		return Finding{Value: round, Limit: rules.Edge, Unit: mm}, "bore"
	case between < rules.Web-Slack:
		return Finding{Value: between, Limit: rules.Web, Unit: mm}, "screw"
	case end < rules.Edge-Slack:
		return Finding{Value: end, Limit: rules.Edge, Unit: mm}, "end"
	}
	return Finding{}, ""
}
