package plate

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/plan"
)

// SeatChoice is one drill for the seats, and what the click would be with it.
type SeatChoice struct {
	Seat     plan.Seat
	State    ball.State
	Drop     float64 // mm; 0 unless HasHome
	Play     float64 // to either side, degrees of the table's turn
	HasHome  bool
	Holding  float64 // N·m; 0 unless State is Clicks
	Centring float64 // N·m
	Drag     float64 // N·m
	Seated   bool    // it clicks, and rests on its rim or cone without play
}

// Margin returns how many times over the ball pulls the table home against its
// drag; 0 where it does not click.
func (c SeatChoice) Margin() float64 {
	if c.State != ball.Clicks {
		return 0
	}
	return c.Centring / math.Max(c.Drag, leastDrag)
}

// leastDrag (N·m) keeps the margin of a table without friction finite.
const leastDrag = 1e-6

// ChooseSeat works out the click of a plan's first catch over another seat. The
// depth follows where the floor would hold the ball up: see [deepEnough].
func ChooseSeat(p plan.Plan, diameter float64) SeatChoice {
	p.Seat.Diameter = diameter
	p.Seat.Depth = deepEnough(p)
	k := clicks(p)[0]
	c := SeatChoice{Seat: p.Seat, State: k.State(), Drag: k.Drag}
	if h, ok := k.Home(); ok {
		c.HasHome, c.Drop, c.Play = true, h.Drop, h.PlayAngle.Degrees()
		c.Seated = c.State == ball.Clicks && h.Short == 0 && h.Play == 0
	}
	if t, ok := k.Torques(); ok {
		c.Holding, c.Centring = t.Holding, t.Centring
	}
	return c
}

// depthStep is the step (mm) to which a depth is rounded up: what a depth stop
// can be set to.
const depthStep = 0.5

// deepEnough returns the plan's seat depth, or the least that keeps the floor
// off the ball if that is more.
func deepEnough(p plan.Plan) float64 {
	seat, err := ball.NewContour(p.Catch.BallDiameter, SeatShape(p.Seat))
	if err != nil {
		return p.Seat.Depth
	}
	clear, floor := seat.FloorClearance()
	if !floor || clear >= 0 {
		return p.Seat.Depth
	}
	return math.Ceil((p.Seat.Depth-clear)/depthStep) * depthStep
}

// The balance that [BestSeat] looks for: common practice, no source.
const (
	goodMargin = 3.0 // pulls home with three times the drag
	easyPush   = 30  // N at the rim to leave a stop
)

// BestSeat returns the seat, among drills of the given diameters (mm), that
// seats the ball fully with the best balance of pulling home and easy release,
// and false when none seats it. Of those that pull home with a good margin it
// is the easiest to leave, but not so easy that it is felt no more; without one
// it is that with the best margin.
func BestSeat(p plan.Plan, diameters []float64) (SeatChoice, bool) {
	var best SeatChoice
	found := false
	for _, d := range diameters {
		c := ChooseSeat(p, d)
		if !c.Seated || tooThick(p, c.Seat) {
			continue
		}
		if !found || better(p, c, best) {
			best, found = c, true
		}
	}
	return best, found
}

// better reports whether a is the better balance of the two.
func better(p plan.Plan, a, b SeatChoice) bool {
	goodA, goodB := a.Margin() >= goodMargin, b.Margin() >= goodMargin
	if goodA != goodB {
		return goodA
	}
	if !goodA {
		return a.Margin() > b.Margin()
	}
	return unease(p, a) < unease(p, b)
}

// unease is how far the push that leaves a stop is from an easy one, as a
// ratio either way.
func unease(p plan.Plan, c SeatChoice) float64 {
	push := (c.Holding + c.Drag) / (p.Turntable.Diameter / 2) * 1000
	return math.Abs(math.Log(push / easyPush))
}

// MetricDrills returns the diameters (mm) of the common metric drills: every
// tenth of a millimetre from 1 to 13 (the sizes of BS 328).
func MetricDrills() []float64 {
	var out []float64
	for tenths := 10; tenths <= 130; tenths++ {
		out = append(out, float64(tenths)/10)
	}
	return out
}

// tooThick reports whether a blind seat comes out of the other side.
func tooThick(p plan.Plan, s plan.Seat) bool {
	part := plan.PartBase
	if p.Arrangement.CatchIn == plan.PartBase {
		part = plan.PartTurntable
	}
	bottom, blind := SeatShape(s).Bottom()
	return blind && bottom > ThicknessOf(p, part)
}
