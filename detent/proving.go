package detent

import (
	"math"

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
	for i, x := range p.Readings {
		stop := r.StopOf(x)
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
	for i, s := range r.Plate.Stops {
		if math.Abs(s.Angle.Degrees()-x.Angle) <= sameAngle {
			return i
		}
	}
	return -1
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
