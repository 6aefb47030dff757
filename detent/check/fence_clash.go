package check

import (
	"math"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// fenceClash fires when the fence and what turns under it or through it are in
// each other's way: its underside lies lower than the turntable or the collar
// where it passes over them, or the opening in it is narrower than what the tool
// sweeps over its stops. Turntable and collar are round, so that they meet the
// fence alike at every turn of either.
//
// A fence whose underside is not given counts as clear, and one without an
// opening is cut open by the tool itself. Neither is flagged.
var fenceClash = Check{
	ID:       "fence-clash",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		t := pl.Plan.Tool
		if t == nil {
			return
		}
		if t.FenceUnderside != nil {
			underTable(pl, *t, *t.FenceUnderside, report)
			underCollar(pl, *t, *t.FenceUnderside, report)
		}
		throughOpening(pl, *t, report)
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) { return f.Case, numbers(pl, f) },
	fix: clearFence,
}

// underTable reports a fence that the turntable runs into. Value is the height
// of the fence's underside, limit that of the turntable's top.
func underTable(pl *plate.Plate, t plan.Tool, underside float64, report func(Finding)) {
	near, top := plate.ToolLine(t).Nearest(plate.FenceBody(t)), plate.TableTop(pl.Plan)
	if near < pl.Plan.TableDiameter()/2-Slack && underside < top-Slack {
		report(Finding{Case: "turntable", Angles: allStops(pl), Value: underside, Limit: top, Unit: mm})
	}
}

// underCollar reports a fence that meets the collar, in the same numbers.
func underCollar(pl *plate.Plate, t plan.Tool, underside float64, report func(Finding)) {
	c := pl.Plan.Collar
	if c == nil {
		return
	}
	line, body := plate.ToolLine(t), plate.FenceBody(t)
	inner, outer := pl.Plan.CollarBore()/2, c.OutsideDiameter/2
	over := line.Nearest(body) < outer-Slack && line.Farthest(body) > inner+Slack
	if over && underside < c.Thickness-Slack {
		report(Finding{Case: "collar", Angles: allStops(pl), Value: underside, Limit: c.Thickness, Unit: mm})
	}
}

// throughOpening reports an opening that the tool cuts wider. Value is how wide
// it would have to be, limit how wide it is.
func throughOpening(pl *plate.Plate, t plan.Tool, report func(Finding)) {
	left, right, ok := plate.ToolLine(t).Slot(t.Kerf, t.FenceThickness, pl.Leans())
	if needed := 2 * math.Max(-left, right); t.FenceOpening > 0 && ok && needed > t.FenceOpening+Slack {
		report(Finding{Case: "opening", Angles: allStops(pl), Value: needed, Limit: t.FenceOpening, Unit: mm})
	}
}

// clearHeight returns the height (mm) at which the fence clears everything.
func clearHeight(pl *plate.Plate) float64 {
	top := plate.TableTop(pl.Plan)
	if c := pl.Plan.Collar; c != nil {
		top = math.Max(top, c.Thickness)
	}
	return top
}

// clearFence proposes the height, or the opening, that is just clear.
func clearFence(pl *plate.Plate, f Finding) *Fix {
	key, to := "fix.fence-underside", clearHeight(pl)
	if f.Case == "opening" {
		key, to = "fix.fence-opening", math.Ceil((f.Value-Slack)/openingStep)*openingStep
	}
	return &Fix{
		Key: key, Args: words.Args{"To": words.MM(to)},
		Apply: func(p plan.Plan) plan.Plan {
			t := *p.Tool
			t.Marks = slices.Clone(t.Marks)
			if f.Case == "opening" {
				t.FenceOpening = to
			} else {
				t.FenceUnderside = &to
			}
			p.Tool = &t
			return p
		},
	}
}

// openingStep is the step (mm) to which a proposed opening is rounded up: one
// that is sawn to a line.
const openingStep = 1.0
