package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// comfortable is the push (N) that a hand gives at the table's rim without
// bracing for it: common practice, no source.
const comfortable = 60

// stopStiff fires when leaving a stop takes more than a hand comfortably gives:
// the torque of its catches and of the table's drag, as a force at the
// turntable's rim. One finding for all such stops, with the worst.
var stopStiff = Check{
	ID:       "stop-stiff",
	Severity: Warning,
	run: func(pl *plate.Plate, report func(Finding)) {
		f := Finding{Limit: comfortable, Unit: newton}
		rim := pl.Plan.Turntable.Diameter / 2
		for _, s := range pl.Stops {
			torque := 0.0 // N·m
			for i, c := range s.Catches {
				k := pl.Clicks[c]
				t, ok := k.Torques()
				if !ok {
					continue
				}
				torque += t.Holding
				if i == 0 {
					torque += k.Drag
				}
			}
			if push := torque / rim * 1000; push > comfortable+Slack {
				f.Angles = append(f.Angles, s.Angle)
				f.Value = max(f.Value, push)
			}
		}
		if len(f.Angles) > 0 {
			report(f)
		}
	},
	say: func(_ *plate.Plate, f Finding) (string, words.Args) {
		return "text", words.Args{
			"N": len(f.Angles), "Force": words.N(f.Value), "ForceLimit": words.N(f.Limit),
		}
	},
}
