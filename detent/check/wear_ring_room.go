package check

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// wearRingRoom fires when a wear ring leaves less than rules.web beside the
// seats, less than rules.edge to its part's edge or the pivot bore, or when its
// recess goes through. One finding: the first of these.
var wearRingRoom = Check{
	ID:       "wear-ring-room",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		if f, _ := wearRingFault(pl); f.Unit != "" {
			report(f)
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		_, key := wearRingFault(pl)
		return key, numbers(pl, f)
	},
}

// wearRingFault returns what is wrong with the wear ring, with its key; the zero
// Finding where nothing is, or there is none.
func wearRingFault(pl *plate.Plate) (f Finding, key string) {
	p := pl.Plan
	inner, outer := plate.WearRing(p)
	if outer == 0 {
		return Finding{}, ""
	}
	thick, of := p.Making.WearRing.Thickness, plate.ThicknessOf(p, pl.SeatsPart)
	beside := (p.Making.WearRing.Width - p.Seat.Mouth()) / 2
	rim := plate.OutlineOf(p, pl.SeatsPart).InsideArc(geom.Arc{Radius: outer / 2, Sweep: geom.FullTurn})
	if bore := plate.BoreOf(p, pl.SeatsPart); bore > 0 && inner > 0 {
		rim = min(rim, (inner-bore)/2)
	}
	switch {
	case beside < p.Rules.Web-Slack:
		return Finding{Value: beside, Limit: p.Rules.Web, Unit: mm}, "narrow"
	case rim < p.Rules.Edge-Slack:
		return Finding{Value: rim, Limit: p.Rules.Edge, Unit: mm}, "edge"
	case thick > of-Slack:
		return Finding{Value: thick, Limit: of, Unit: mm}, "deep"
	}
	return Finding{}, ""
}
