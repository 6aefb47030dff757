package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// featureOverlap fires when a seat or a catch's pocket touches or runs into a
// feature of its own part: a screw hole, a slot. A thin web between them is
// web-thin's; two pockets in each other's way are not flagged here.
var featureOverlap = Check{
	ID:       "feature-overlap",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		found := make(pairs, len(pl.Seats))
		besideFeatures(pl, 2*Slack, func(seat, feature int, web float64) {
			if web <= Slack {
				found.offer(seat, pair{web: web, seat: -1, feature: feature})
			}
		})
		found.report(pl, 0, report)
		for k, p := range pl.Pockets {
			if f, web := nearestFeature(pl, p); web <= Slack {
				report(Finding{Features: []int{f}, Pockets: []int{k}, Value: web, Unit: mm})
			}
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		if len(f.Pockets) == 0 {
			return sayPair(pl, f)
		}
		return "pocket", words.Args{
			"Catch": pl.Pockets[f.Pockets[0]].Name, "Feature": pl.Features[f.Features[0]],
			"Overlap": words.MM(-f.Value),
		}
	},
}

// nearestFeature returns the feature of the pocket's own part with the least
// material to it, and that material.
func nearestFeature(pl *plate.Plate, p plate.Pocket) (feature int, web float64) {
	feature, web = -1, inf
	for k, f := range pl.Features {
		if f.Part != pl.CatchPart {
			continue
		}
		if w := f.Clear(p.Centre, p.Widest()/2); w < web {
			feature, web = k, w
		}
	}
	return feature, web
}
