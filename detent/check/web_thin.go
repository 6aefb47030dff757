package check

import "stopwright/detent/plate"

// webThin fires when some material is left between a seat and another seat or a
// feature, but less than rules.web: 0 < web < rules.web. Where nothing is left
// seats-overlap and feature-overlap speak instead.
var webThin = Check{
	ID:       "web-thin",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		rule := pl.Plan.Rules.Web
		thin := func(web float64) bool { return web > Slack && web < rule-Slack }
		found := make(pairs, len(pl.Seats))
		mouth := pl.Plan.Seat.Mouth()
		for i, s := range pl.Seats {
			if s.Web >= rule-Slack {
				continue
			}
			// The nearest may overlap and hide a thin web to the next.
			if n := pl.NearestBeyond(i, mouth+Slack); thin(n.Distance - mouth) {
				found.offer(i, pair{web: n.Distance - mouth, seat: n.Seat})
			}
		}
		besideFeatures(pl, rule, func(seat, feature int, web float64) {
			if thin(web) {
				found.offer(seat, pair{web: web, seat: -1, feature: feature})
			}
		})
		found.report(pl, rule, report)
	},
	say: sayPair,
	fix: widerRing,
}

// besideFeatures calls yield for every seat with less than reach mm of material
// to a feature of its own part.
func besideFeatures(pl *plate.Plate, reach float64, yield func(seat, feature int, web float64)) {
	for k, f := range pl.Features {
		if f.Part == pl.SeatsPart {
			pl.SeatsNear(f, reach, func(seat int, web float64) { yield(seat, k, web) })
		}
	}
}
