package check

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// fittingEdge fires when less than rules.edge is left between a fitting (an end
// stop, a clamp's slot, dust and fence slots, a screw for a carrier) and the
// edge of its part or its bore. A registration pin wholly in the waste is not
// flagged, and neither are the maker's own features: a slot may be open on
// purpose.
var fittingEdge = Check{
	ID:       "fitting-edge",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		rule := pl.Plan.Rules.Edge
		for k, f := range pl.Features {
			if f.Fitting == "" {
				continue
			}
			inside := insideOf(plate.OutlineOf(pl.Plan, f.Part), f.Core)
			if f.Fitting == plate.RegistrationPin && inside+f.Half <= Slack {
				continue
			}
			left := inside - f.Half
			if bore := plate.BoreOf(pl.Plan, f.Part); bore > 0 {
				left = min(left, f.Clear(geom.Point{}, bore/2))
			}
			if left < rule-Slack {
				report(Finding{Features: []int{k}, Value: left, Limit: rule, Unit: mm})
			}
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		args := numbers(pl, f)
		args["Feature"] = pl.Features[f.Features[0]]
		if f.Value <= 0 {
			args["Overlap"] = words.MM(-f.Value)
			return "broken", args
		}
		return "text", args
	},
}

// insideOf returns how far (mm) a centre line keeps inside an outline, which is
// convex: a straight one is nearest to it at an end.
func insideOf(o plate.Outline, c plate.Core) float64 {
	if a, curved := c.(geom.Arc); curved {
		return o.InsideArc(a)
	}
	s := c.(geom.Segment) // the only other kind there is
	return min(o.Inside(s.A), o.Inside(s.B))
}
