package check

import (
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// onCatches runs a check of what all catches have in common, since they are
// alike and so are the seats: one finding, about every catch and stop.
func onCatches(judge func(pl *plate.Plate, k plate.Click) (Finding, bool)) func(*plate.Plate, func(Finding)) {
	return func(pl *plate.Plate, report func(Finding)) {
		f, fires := judge(pl, pl.Clicks[0])
		if !fires {
			return
		}
		f.Angles = allStops(pl)
		for i := range pl.Pockets {
			f.Pockets = append(f.Pockets, i)
		}
		report(f)
	}
}

// onHolds runs a check of every set of catches that drop together: one finding
// each, about those catches and their stops.
func onHolds(judge func(pl *plate.Plate, h plate.Hold) (Finding, bool)) func(*plate.Plate, func(Finding)) {
	return func(pl *plate.Plate, report func(Finding)) {
		for _, h := range pl.Holds {
			f, fires := judge(pl, h)
			if !fires {
				continue
			}
			f.Pockets = h.Catches
			for _, i := range h.Stops {
				f.Angles = append(f.Angles, pl.Stops[i].Angle)
			}
			report(f)
		}
	}
}

// say gives the sentence of a key with a finding's numbers in whichever unit it
// wants, and the names of the catches concerned: A + B for those that drop
// together.
func say(key string) func(*plate.Plate, Finding) (string, words.Args) {
	return func(pl *plate.Plate, f Finding) (string, words.Args) { return key, numbers(pl, f) }
}

func numbers(pl *plate.Plate, f Finding) words.Args {
	names := make([]string, len(f.Pockets))
	for i, k := range f.Pockets {
		names[i] = pl.Pockets[k].Name
	}
	args := words.Args{"Catch": strings.Join(names, " + ")}
	switch f.Unit {
	case deg:
		args["Value"], args["Limit"] = words.Deg(f.Value), words.Deg(f.Limit)
	case nm:
		args["Value"], args["Limit"] = words.NM(f.Value), words.NM(f.Limit)
	case newton:
		args["Value"], args["Limit"] = words.N(f.Value), words.N(f.Limit)
	default:
		args["Value"], args["Limit"] = words.MM(f.Value), words.MM(f.Limit)
	}
	return args
}

// allStops returns the angles of every stop.
func allStops(pl *plate.Plate) []geom.Angle {
	var out []geom.Angle
	for _, s := range pl.Stops {
		out = append(out, s.Angle)
	}
	return out
}
