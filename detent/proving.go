package detent

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/cutline"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/proving"
)

// Proving is what the measured stops of a plate say.
type Proving struct {
	proving.Diagnosis
	Stops []geom.Angle // the plate's, which the diagnosis counts in
	Lost  []int        // readings, into the plan's, whose stop is gone
	Old   []int        // readings that no longer count, their stop there
	// FenceTurn is how far clockwise, seen from above, the fence must be turned
	// where it stands so that the common error is gone.
	FenceTurn geom.Angle
	FenceEnd  float64 // mm that its right end then moves towards the operator, turned about its left screw
	HasFence  bool    // FenceEnd means something
}

// sameAngle is how near (degrees) a reading's angle must be to a stop's to be
// its own: both are typed, and short.
const sameAngle = 1e-6

// Proving returns what the plan's readings say; false where none counts.
func (r Report) Proving() (Proving, bool) {
	p := r.Plate.Plan
	var out Proving
	var readings []proving.Reading
	stopOf := r.stopFinder()
	for i, x := range p.Readings {
		stop := stopOf(x)
		switch {
		case stop < 0:
			out.Lost = append(out.Lost, i)
		case !Counts(p, x):
			out.Old = append(out.Old, i)
		default:
			readings = append(readings, proving.Reading{Stop: stop, Residual: Residual(x), Way: wayOf(p, x)})
		}
	}
	for _, s := range r.Plate.Stops {
		out.Stops = append(out.Stops, s.Angle)
	}
	var ok bool
	out.Diagnosis, ok = proving.Diagnose(provedPlate(r.Plate), readings)
	if !ok {
		return out, false
	}
	out.FenceTurn = plate.Clockwise(p, geom.Angle(out.Common.Is))
	if t := p.Tool; t != nil {
		if t.Turning == plan.FenceTurns {
			out.FenceTurn = -out.FenceTurn + 0
		}
		out.FenceEnd, out.HasFence = cutline.EndMove(math.Max(0, t.FenceLength-t.FenceInset), out.FenceTurn), true
	}
	return out, true
}

// Residual returns measured less wanted of a reading, the short way round,
// degrees.
func Residual(x plan.Reading) float64 { return geom.Angle(x.Measured - x.Angle).Wrap().Degrees() }

// Counts reports whether a reading is recent enough for the plan's diagnosis.
// One without a date is not where the plan asks for a date.
func Counts(p plan.Plan, x plan.Reading) bool { return x.Date >= p.ReadingsSince } // ISO 8601: as text, so in time

// StopOf returns the stop that a reading is of, into the plate's; -1 where the
// plate has it no longer.
func (r Report) StopOf(x plan.Reading) int {
	return slices.IndexFunc(r.Plate.Stops, func(s plate.Stop) bool { return ofStop(x, s.Angle) })
}

// ofStop reports whether a reading is of the stop at an angle.
func ofStop(x plan.Reading, angle geom.Angle) bool {
	return math.Abs(angle.Degrees()-x.Angle) <= sameAngle
}

// stopFinder returns what [Report.StopOf] does, for a log of many readings.
func (r Report) stopFinder() func(plan.Reading) int {
	order := make([]int, len(r.Plate.Stops))
	for i := range order {
		order[i] = i
	}
	angle := func(i int) float64 { return r.Plate.Stops[i].Angle.Degrees() }
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(angle(a), angle(b)) })
	return func(x plan.Reading) int {
		k, _ := slices.BinarySearchFunc(order, x.Angle-sameAngle, func(i int, least float64) int { return cmp.Compare(angle(i), least) })
		if k < len(order) && ofStop(x, r.Plate.Stops[order[k]].Angle) {
			return order[k]
		}
		return -1
	}
}

func wayOf(p plan.Plan, x plan.Reading) proving.Way {
	switch x.Approach {
	case "":
		return proving.Unknown
	case string(p.Arrangement.PositiveTurn):
		return proving.Onwards
	}
	return proving.Backwards
}

// provedPlate returns the seats that hold each stop.
func provedPlate(pl *plate.Plate) proving.Plate {
	out := proving.Plate{Sigma: pl.Sigma.Degrees(), Stops: make([]proving.Stop, len(pl.Stops))}
	for i, s := range pl.Stops {
		for _, k := range s.Catches {
			c := pl.Plan.Catches[k]
			out.Stops[i].Arms = append(out.Stops[i].Arms, proving.Arm{
				Azimuth: geom.Angle(c.Azimuth) + pl.Sigma*s.Angle, Radius: c.Radius,
			})
		}
	}
	return out
}
