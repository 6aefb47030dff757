package check

import (
	"slices"

	"stopwright/detent/plate"
)

// truenessOverTarget fires when, of 100 plates set to zero at the reference stop,
// more than five would be farther off at a stop than the maker's target: one
// finding for every set of catches that drop together, about its stops that are,
// the worst first. Value is the worst's interval, to either side. The reference
// stop itself is not flagged, nor are stops where no ball clicks.
var truenessOverTarget = Check{
	ID:       "trueness-over-target",
	Severity: Warning,
	run: func(pl *plate.Plate, report func(Finding)) {
		for _, h := range pl.Holds {
			f := Finding{Limit: pl.Plan.Shop.Target, Unit: deg, Pockets: h.Catches}
			for _, stop := range h.Stops {
				e, ok := pl.Trueness.Zeroed(stop)
				if off := e.Interval95.Degrees(); ok && off > f.Limit+Slack {
					f.Angles = append(f.Angles, pl.Stops[stop].Angle)
					if off > f.Value {
						f.Value = off
						last := len(f.Angles) - 1
						f.Angles[0], f.Angles[last] = f.Angles[last], f.Angles[0]
					}
				}
			}
			if len(f.Angles) > 0 {
				report(f)
			}
		}
	},
	say:      say("text"),
	fix:      truer,
	cautious: true,
}

// worstOf returns the stop that a finding of [truenessOverTarget] is about first.
func worstOf(pl *plate.Plate, f Finding) int {
	for _, h := range pl.Holds {
		if !slices.Equal(h.Catches, f.Pockets) {
			continue
		}
		for _, stop := range h.Stops {
			if e, ok := pl.Trueness.Zeroed(stop); ok && pl.Stops[stop].Angle == f.Angles[0] && e.Interval95.Degrees() == f.Value {
				return stop
			}
		}
	}
	return -1
}
