package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// trackCrossed fires when a feature on the seats' face lies on the path of a
// ball within the travel, so that the ball drops into it: the path passes over
// the opening. A path that only touches its edge is not flagged. One finding a
// feature: the track that goes deepest into it.
var trackCrossed = Check{
	ID:       "track-crossed",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		for k, f := range pl.Features {
			if f.Part != pl.SeatsPart {
				continue
			}
			worst, clear := -1, -Slack
			for t, track := range pl.Tracks {
				if c := f.Core.DistanceToArc(track.Path) - f.Half; c < clear {
					worst, clear = t, c
				}
			}
			if worst >= 0 {
				report(Finding{Features: []int{k}, Tracks: []int{worst}, Value: clear, Unit: mm})
			}
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		return "text", words.Args{
			"Feature": pl.Features[f.Features[0]], "Catch": pl.Tracks[f.Tracks[0]].Name,
			"Overlap": words.MM(-f.Value),
		}
	},
}
