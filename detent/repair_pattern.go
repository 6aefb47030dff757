package detent

import (
	"math"
	"slices"

	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// How far a pattern is moved in one step, and how much wider or narrower a ring
// is tried at most. Common practice, no source: a ring set out anew differs from
// the old one by what can be told apart.
const (
	turnStep  = geom.Angle(1)
	ringStep  = 0.5  // mm
	ringsMost = 20.0 // mm
)

// Clean moves the whole pattern to clean ground: the catches round to where
// their balls meet none of the old holes, by as little as will do; where the
// travel leaves no such arc, every ring is made wider or narrower. The old
// seats and pockets are tried as holes that stay. The table is zeroed anew.
func (r Report) Clean() Repair {
	var last Repair
	for turn := turnStep; turn <= 180; turn += turnStep {
		for _, by := range [2]geom.Angle{turn, -turn} {
			if r.clean(by) {
				if last = r.moved(by, 0); last.Fits {
					return last
				}
			}
		}
	}
	apart := math.Max(r.Plate.Plan.Seat.Mouth(), r.Plate.Pockets[0].Widest()) + r.Plate.Plan.Rules.Web
	for wider := math.Ceil(apart/ringStep) * ringStep; wider <= ringsMost; wider += ringStep {
		for _, by := range [2]float64{-wider, wider} {
			if last = r.moved(0, by); last.Fits {
				return last
			}
		}
	}
	return last
}

// clean reports whether balls moved round by an angle pass over no old seat.
func (r Report) clean(by geom.Angle) bool {
	half := r.Plate.Plan.Seat.Mouth() / 2
	for _, t := range r.Plate.Tracks {
		t.Path.From += by
		for _, s := range r.Plate.Seats {
			if math.Abs(s.Radius-t.Path.Radius) < half && t.Path.DistanceToPoint(s.Centre) < half {
				return false
			}
		}
	}
	return true
}

// moved tries the pattern somewhere else, among the holes it leaves behind.
func (r Report) moved(turn geom.Angle, wider float64) Repair {
	pl := r.Plate
	out := Repair{Kind: Pattern, Seat: -1, Turned: turn, Radius: wider}
	trial := pl.Plan.Clone()
	for i := range trial.Catches {
		c := &trial.Catches[i]
		c.Azimuth = (geom.Angle(c.Azimuth) + turn).Wrap().Degrees()
		c.Radius += wider
	}
	added := len(trial.Features)
	hole := func(part plan.Part, at geom.Point, diameter float64) {
		trial.Features = append(trial.Features, plan.Feature{Part: part, Kind: plan.Hole, X: at.X, Y: at.Y, Diameter: diameter})
	}
	for _, s := range pl.Seats {
		hole(pl.SeatsPart, s.Centre, pl.Plan.Seat.Mouth())
	}
	for _, k := range pl.Pockets {
		hole(pl.CatchPart, k.Centre, k.Widest())
	}
	if plan.Validate(trial) != nil { // a ring of no radius, too many features
		return out
	}
	out.Trial = Solve(trial)
	for _, f := range out.Trial.Findings {
		inTheWay := slices.ContainsFunc(f.Features, func(k int) bool {
			left := out.Trial.Plate.Features[k]
			return left.Own() && left.Index >= added
		})
		if f.Severity == check.Error && (inTheWay || count(out.Trial.Findings, f.ID) > count(r.Findings, f.ID)) {
			out.InTheWay = append(out.InTheWay, f)
		}
	}
	out.Fits = len(out.InTheWay) == 0
	return out
}

// count returns how many findings have an id.
func count(all []check.Finding, id string) int {
	n := 0
	for _, f := range all {
		if f.ID == id {
			n++
		}
	}
	return n
}

// Hole is one hole of a repair, as it is drilled.
type Hole struct {
	Key      string     // in the words, after repair.hole.
	At       geom.Point // as seen at the drill
	Radius   float64    // from the pivot
	Azimuth  geom.Angle // as seen at the drill
	Diameter float64
	Depth    float64 // 0: right through
}

// Holes lists what is bored for a repair, in the order it is done: the plug's or
// the bush's hole, then the new seat. A moved pattern has its chart in Trial.
func (x Repair) Holes(pl *plate.Plate) []Hole {
	if x.Seat < 0 {
		return nil
	}
	hole := func(key string, at geom.Point, diameter, depth float64) Hole {
		at = plate.AtDrill(pl.SeatsPart, at)
		return Hole{key, at, at.Norm(), at.Azimuth(), diameter, depth}
	}
	return []Hole{
		hole(string(x.Kind), x.Old, x.Diameter, x.Depth),
		hole("seat", x.New, pl.Plan.Seat.Diameter, pl.Plan.Seat.Depth),
	}
}
