package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// seasonBinds fires when the turntable, as it swells and shrinks with the year's
// dry and damp air, fills its collar. Value is the clearance left then, in mm;
// none left at all is flagged. A table without a collar is not, nor one of a
// material whose movement no source gives.
var seasonBinds = Check{
	ID:       "season-binds",
	Severity: Warning,
	run: func(pl *plate.Plate, report func(Finding)) {
		s := plate.NewSeason(pl.Plan)
		if left := s.Least(); s.HasCollar && left <= Slack {
			report(Finding{Angles: allStops(pl), Value: left, Unit: mm})
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		s, air := plate.NewSeason(pl.Plan), pl.Plan.Shop.Humidity
		args := words.Args{"Short": words.MM(-f.Value), "Cut": words.MM(pl.Plan.Collar.Clearance), "Humidity": int(air.High + 0.5)}
		if s.Dry.Clearance < s.Wet.Clearance {
			args["Humidity"] = int(air.Low + 0.5)
			return "dry", args
		}
		return "wet", args
	},
	fix: wideClearance,
}

// wideClearance proposes the least clearance with which the table turns all year,
// if the plan may have it.
func wideClearance(pl *plate.Plate, _ Finding) *Fix {
	choose := plate.NewSeason(pl.Plan).Choose
	apply := func(p plan.Plan) plan.Plan {
		collar := *p.Collar
		collar.Clearance = choose
		p.Collar = &collar
		return p
	}
	if plan.Validate(apply(pl.Plan)) != nil {
		return nil
	}
	return &Fix{Key: "fix.clearance", Args: words.Args{"Clearance": words.MM(choose)}, Apply: apply}
}
