package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// trackLeaves fires when the path of a ball runs off the seats' face, or into
// the pivot bore, within the travel. The ball would jump out and jam. A path
// along the very edge is not flagged here; edge-thin speaks of its seats.
var trackLeaves = Check{
	ID:       "track-leaves",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		for k := range pl.Tracks {
			if inside := min(insideEdge(pl, k), outsideBore(pl, k)); inside < -Slack {
				report(Finding{Tracks: []int{k}, Pockets: []int{k}, Value: inside, Unit: mm})
			}
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		t := pl.Tracks[f.Tracks[0]]
		key := "edge"
		if f.Value == outsideBore(pl, f.Tracks[0]) {
			key = "bore"
		}
		return key, words.Args{
			"Catch": t.Name, "Radius": words.MM(t.Path.Radius), "Overlap": words.MM(-f.Value),
		}
	},
}

// insideEdge returns how far (mm) a track keeps inside the face's outer edge.
func insideEdge(pl *plate.Plate, track int) float64 {
	return plate.OutlineOf(pl.Plan, pl.SeatsPart).InsideArc(pl.Tracks[track].Path)
}

// outsideBore returns how far (mm) a track keeps clear of the pivot bore.
func outsideBore(pl *plate.Plate, track int) float64 {
	bore := plate.BoreOf(pl.Plan, pl.SeatsPart)
	if bore == 0 {
		return inf
	}
	return pl.Tracks[track].Path.Radius - bore/2
}
