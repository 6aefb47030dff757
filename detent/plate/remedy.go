package plate

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/room"
	"stopwright/detent/stock"
)

// Remedy is a change that makes stops truer. What is 0 or nil stays as it is.
type Remedy struct {
	Factor float64       // all ring radii grow by
	Play   float64       // the pivot guides the table, with this much play, mm
	Method *stock.Method // holes are placed so
}

// Apply returns the plan so changed. It shares nothing it changes.
func (r Remedy) Apply(p plan.Plan) plan.Plan {
	if r.Factor != 0 {
		p.Catches = slices.Clone(p.Catches)
		for i := range p.Catches {
			p.Catches[i].Radius = room.RoundUp(p.Catches[i].Radius * r.Factor)
		}
	}
	if r.Play != 0 {
		p.Turntable.GuidedBy, p.Turntable.RadialPlay = plan.GuidePivot, r.Play
	}
	if r.Method != nil {
		p.Shop.Method = r.Method.ID
		p.Shop.SeatError = min(p.Shop.SeatError, r.Method.Spread.Typical)
		p.Shop.CatchError = min(p.Shop.CatchError, r.Method.Spread.Typical)
	}
	return p
}

// What closer work asks for, compared with the efforts of [stock.Method]: a
// larger ring costs a pencil line, a close pivot a bush or a reamer. Common
// practice, no source.
const (
	ringEffort  = 1
	pivotEffort = 2
	closestFit  = 0.02 // mm of play, of a reamed bore or a bush on a ground pin
	fitStep     = 0.01 // mm to which a play is proposed
)

// remedies proposes changes for the stops of one hold.
type remedies struct {
	*Plate
	trial  plan.Plan // the reference and one stop of the hold, and nothing else
	within geom.Angle
}

// remediesFor prepares to bring a stop within an angle. It is false where the
// stop has no error to speak of.
func (pl *Plate) remediesFor(stop int, within geom.Angle) (remedies, bool) {
	t := pl.Trueness
	if _, known := t.Zeroed(stop); !known || stop == t.Reference {
		return remedies{}, false
	}
	p := pl.Plan
	zero := pl.Stops[t.Reference].Angle.Degrees()
	p.Shop.Reference, p.AsDrilled, p.Features = &zero, nil, nil
	p.Stops = nil
	for _, i := range []int{t.Reference, stop} {
		names := make([]string, len(pl.Stops[i].Catches))
		for k, c := range pl.Stops[i].Catches {
			names[k] = p.Catches[c].Name
		}
		p.Stops = append(p.Stops, plan.Stop{Angle: pl.Stops[i].Angle.Degrees(), Catches: names})
	}
	return remedies{pl, p, within}, true
}

// reaches reports whether the stop is within the angle after a remedy.
func (r remedies) reaches(m Remedy) bool {
	p := m.Apply(r.trial)
	if plan.Validate(p) != nil {
		return false
	}
	e, ok := New(p).Trueness.Zeroed(1)
	return ok && e.Interval95 <= r.within
}

// widest returns the largest ring radius of the plan.
func (r remedies) widest() float64 {
	return slices.MaxFunc(r.Plan.Catches, func(a, b plan.Placement) int { return cmp.Compare(a.Radius, b.Radius) }).Radius
}

// ring adds to a remedy the least growth of the rings that reaches the angle, up
// to a widest ring radius (mm). It is false when none does.
func (r remedies) ring(m Remedy, most float64) (Remedy, bool) {
	now := r.widest()
	grow := func(radius float64) Remedy {
		m.Factor = radius / now
		return m
	}
	low, high := now, math.Floor((most+room.Slack)/room.RadiusStep)*room.RadiusStep
	if high <= low || !r.reaches(grow(high)) {
		return m, false
	}
	for high-low > room.RadiusStep {
		if mid := room.RoundUp((low + high) / 2); mid < high && r.reaches(grow(mid)) {
			high = mid
		} else if mid < high {
			low = mid
		} else {
			break
		}
	}
	return grow(high), true
}

// pivot adds to a remedy the most play of a pivot that reaches the angle. It is
// false when none does, when the plan has no pivot, or when it is as close
// already.
func (r remedies) pivot(m Remedy) (Remedy, bool) {
	table := r.Plan.Turntable
	loose := TableShift(r.Plan)
	m.Play = closestFit
	if table.PivotBore == 0 || loose <= closestFit || !r.reaches(m) {
		return m, false
	}
	low, high := 2, int(math.Ceil(loose/fitStep)) // in steps
	for high-low > 1 {
		mid := (low + high) / 2
		m.Play = float64(mid) * fitStep
		if r.reaches(m) {
			low = mid
		} else {
			high = mid
		}
	}
	m.Play = float64(low) * fitStep
	return m, true
}

// methods lists the ways to place holes that are closer than the plan's, the
// easiest first.
func (r remedies) methods() []stock.Method {
	worst := max(r.Plan.Shop.SeatError, r.Plan.Shop.CatchError)
	return slices.DeleteFunc(stock.Methods(), func(m stock.Method) bool { return m.Spread.Typical >= worst })
}

// Reach is what single changes would bring a stop within an angle.
type Reach struct {
	Ring     float64 // radius (mm) of the widest ring; 0: no ring up to 10 m does
	RingFits bool    // the parts have room for it
	Play     float64 // of the pivot, mm; 0: closer play alone does not do it
	Methods  []stock.Method
}

// ReachOf works out what single changes would bring a stop within an angle after
// zeroing. It is false where nothing needs changing, or nothing is known.
func (pl *Plate) ReachOf(stop int, within geom.Angle) (Reach, bool) {
	r, ok := pl.remediesFor(stop, within)
	if !ok || r.reaches(Remedy{}) {
		return Reach{}, false
	}
	var out Reach
	const anyRing = 10_000 // mm: what a plan may have
	if m, ok := r.ring(Remedy{}, anyRing); ok {
		out.Ring = room.RoundUp(r.widest() * m.Factor)
		out.RingFits = out.Ring <= pl.LargestRing()+room.Slack
	}
	if m, ok := r.pivot(Remedy{}); ok {
		out.Play = m.Play
	}
	for _, m := range r.methods() {
		if r.reaches(Remedy{Method: &m}) {
			out.Methods = append(out.Methods, m)
		}
	}
	return out, true
}

// Cheapest returns the change, or changes together, that ask for least and bring
// a stop within an angle after zeroing; rings grow only as far as the parts have
// room. It is false when nothing does.
func (pl *Plate) Cheapest(stop int, within geom.Angle) (Remedy, bool) {
	r, ok := pl.remediesFor(stop, within)
	if !ok {
		return Remedy{}, false
	}
	type offer struct {
		effort      int
		method      *stock.Method
		pivot, ring bool
	}
	offers := []offer{{}}
	for _, m := range r.methods() {
		offers = append(offers, offer{method: &m, effort: m.Effort})
	}
	for _, o := range slices.Clone(offers) {
		offers = append(offers, offer{o.effort + pivotEffort, o.method, true, false})
	}
	for _, o := range slices.Clone(offers) {
		offers = append(offers, offer{o.effort + ringEffort, o.method, o.pivot, true})
	}
	slices.SortStableFunc(offers, func(a, b offer) int { return a.effort - b.effort })
	for _, o := range offers[1:] {
		m, ok := Remedy{Method: o.method}, true
		switch {
		case o.ring && o.pivot:
			m.Play = closestFit
			if ok = pl.Plan.Turntable.PivotBore > 0 && TableShift(pl.Plan) > closestFit; ok {
				m, ok = r.ring(m, pl.LargestRing())
			}
		case o.ring:
			m, ok = r.ring(m, pl.LargestRing())
		case o.pivot:
			m, ok = r.pivot(m)
		default:
			ok = r.reaches(m)
		}
		if ok {
			return m, true
		}
	}
	return Remedy{}, false
}
