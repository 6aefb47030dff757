package plate

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Click is one catch over a seat, as the report tells it: dropping alone, every
// other ball on the face. What catches do that drop together is a [Hold]'s.
type Click struct {
	Catch int // into the plan's catches
	Setup ball.Setup
	*ball.Click

	Riding  float64 // force of the spring with the ball on the face, N; 0 when it cannot reach
	Seated  float64 // force of the spring at home, N; 0 when it cannot reach or falls in
	Drag    float64 // torque (N·m) with which the table resists this ball at its stop
	Miss    float64 // how far (mm) seat and track may miss each other sideways, 95 % of the time
	Dead    ball.DeadBand
	HasDead bool // Dead means something
}

// clicks works out every catch of the plan.
func clicks(p plan.Plan) []Click {
	out := make([]Click, len(p.Catches))
	for i := range out {
		out[i] = newClick(p, i)
	}
	for i := range out {
		k := &out[i]
		k.Drag = dragOf(p, out, []int{i})
		k.Dead, k.HasDead = k.DeadBand(k.Miss, k.Drag)
	}
	return out
}

// newClick works out one catch of the plan, without what the table does to it.
func newClick(p plan.Plan, catch int) Click {
	k := Click{Catch: catch, Setup: setup(p, p.Catches[catch].Radius), Miss: miss(p)}
	k.Click, _ = ball.NewClick(k.Setup) // a valid plan is within its wider ranges
	if r, ok := k.Click.Riding(); ok {
		k.Riding = r.Force
	}
	if h, ok := k.Home(); ok {
		k.Seated = h.Force
	}
	return k
}

// setup returns a catch of the plan over one of its seats.
func setup(p plan.Plan, radius float64) ball.Setup {
	return ball.Setup{
		BallDiameter: p.Catch.BallDiameter,
		Seat:         SeatShape(p.Seat),
		Spring:       ball.Spring{Free: p.Catch.FreeForce, Flush: p.Catch.FlushForce, Travel: p.Catch.Protrusion},
		FaceGap:      p.FaceGap,
		RingRadius:   radius,
		Friction:     p.Shop.Friction,
	}
}

// SeatShape returns the plan's seat as the ball sees it.
func SeatShape(s plan.Seat) ball.Seat {
	b := ball.Seat{
		Form: ball.Drilled, Diameter: s.Diameter, Chamfer: s.Chamfer, Depth: s.Depth,
		DrillPoint: geom.Angle(s.DrillPoint), Countersink: geom.Angle(s.CountersinkAngle), Relief: s.ReliefDiameter,
	}
	if s.Form == plan.Countersunk {
		b.Form = ball.Countersunk
	}
	return b
}

// TableShift returns how far (mm) the turntable can lie off the pivot, as a
// radius: the play of what guides it.
func TableShift(p plan.Plan) float64 {
	if p.Turntable.GuidedBy == plan.GuideCollar && p.Collar != nil {
		return math.Max(0, p.Collar.Clearance/2)
	}
	return p.Turntable.RadialPlay
}

// miss returns how far (mm) seat and track miss each other sideways at most 95
// times in 100: 1.96·√(e_s² + e_c² + c²)/2, for centres that land evenly in
// discs of the radii given, half of which is the standard deviation along any
// line.
func miss(p plan.Plan) float64 {
	const normal95 = 1.96
	return normal95 * math.Hypot(math.Hypot(p.Shop.SeatError, p.Shop.CatchError), TableShift(p)) / 2
}
