package check

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// eachClick runs a check over every catch. The finding is about the catch and
// all the stops it serves.
func eachClick(judge func(pl *plate.Plate, k plate.Click) (Finding, bool)) func(*plate.Plate, func(Finding)) {
	return func(pl *plate.Plate, report func(Finding)) {
		for _, k := range pl.Clicks {
			f, fires := judge(pl, k)
			if !fires {
				continue
			}
			f.Angles, f.Pockets = stopsOf(pl, k.Catch), []int{k.Catch}
			report(f)
		}
	}
}

// stopsOf returns the angles of the stops that use a catch.
func stopsOf(pl *plate.Plate, catch int) []geom.Angle {
	out := []geom.Angle{}
	for _, s := range pl.Stops {
		for _, c := range s.Catches {
			if c == catch {
				out = append(out, s.Angle)
			}
		}
	}
	return out
}

// sayClick gives the one sentence of a check of eachClick.
func sayClick(key string) func(*plate.Plate, Finding) (string, words.Args) {
	return func(pl *plate.Plate, f Finding) (string, words.Args) {
		return key, clickArgs(pl, f)
	}
}

// clickArgs returns the words about the catch a finding is about, in whichever
// unit its sentence wants.
func clickArgs(pl *plate.Plate, f Finding) words.Args {
	return words.Args{
		"Catch": pl.Pockets[f.Pockets[0]].Name,
		"Value": words.MM(f.Value), "Limit": words.MM(f.Limit),
		"Angle": words.Deg(f.Value), "AngleLimit": words.Deg(f.Limit),
		"Torque": words.NM(f.Value), "TorqueLimit": words.NM(f.Limit),
		"Force": words.N(f.Value), "ForceLimit": words.N(f.Limit),
	}
}
