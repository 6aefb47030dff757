package plate_test

import (
	"bytes"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/assets/plans"
	"stopwright/detent/ball"
	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/plate"
	"stopwright/detent/stock"
)

// depthRounding is how far (mm) a depth may be off through rounding.
const depthRounding = 1e-8

// cut is the plan with other seats.
func cut(p plan.Plan, s plan.Seat) plan.Plan {
	p.Seat = s
	return p
}

// TestSeatDepth: what is found lets the ball down and stays in the part; it is
// the plan's own if that does, else a setting of a depth stop. Where nothing is
// found, no setting lets the ball down and leaves half a millimetre under the
// tip.
func TestSeatDepth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawClick(t, plan.Default())
		p.Base.Thickness = rapid.Float64Range(0.1, 25).Draw(t, "thickness")
		contour := func(depth float64) (c *ball.Contour, bottom float64, blind bool) {
			s := p.Seat
			s.Depth = depth
			bottom, blind = plate.SeatShape(s).Bottom()
			c, err := ball.NewContour(p.Catch.BallDiameter, plate.SeatShape(s))
			require.NoError(t, err)
			return c, bottom, blind
		}
		does := func(depth, slack, skin float64) bool {
			c, bottom, blind := contour(depth)
			clear, floor := c.FloorClearance()
			return (!floor || clear >= -slack) && (!blind || bottom <= p.Base.Thickness-skin+slack)
		}
		// A shallow countersink may swallow the ball to its floor: no rim or
		// cone is there to let it down to.
		onFloor := func(depth float64) bool {
			c, _, _ := contour(depth)
			home, ok := c.At(0)
			return ok && (home.Rest == ball.Floor || home.Rest == ball.Relief)
		}
		own := p.Seat.Depth
		depth, ok := plate.SeatDepth(p, p.Seat)
		switch {
		case !ok && own > 0:
			for step := 1; step < 200; step++ {
				d := 0.5 * float64(step)
				require.False(t, does(d, -depthRounding, 0.5) && !onFloor(d), "%g mm would do", d)
			}
		case ok:
			require.True(t, does(depth, depthRounding, 0), "%g mm", depth)
			if depth != own {
				require.InDelta(t, math.Round(2*depth), 2*depth, depthRounding, "a setting of a depth stop")
				require.False(t, does(own, -depthRounding, 0), "the plan's own would do")
			}
		}
	})
}

// TestWidestMouth: seats widened so far keep every rule they kept, and no
// further.
func TestWidestMouth(t *testing.T) {
	const step = 1e-3 // mm, over the rounding of coordinates
	broken := func(p plan.Plan) int {
		n := 0
		for _, f := range check.Run(plate.New(p)) {
			switch f.ID {
			case "seats-overlap", "web-thin", "edge-thin":
				n++
			case "feature-overlap":
				n += len(f.Seats)
			}
		}
		return n
	}
	wider := func(p plan.Plan, mouth float64) plan.Plan {
		p.Seat.Diameter = mouth - 2*p.Seat.Chamfer
		return p
	}
	tried := 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		p.Seat.Diameter = rapid.Float64Range(0.1, 3).Draw(t, "small seats")
		p.Catch.BallDiameter = 20
		now, widest := p.Seat.Mouth(), plate.New(p).WidestMouth()
		require.GreaterOrEqual(t, widest, now)
		if broken(p) > 0 {
			require.Equal(t, now, widest, "a rule is broken already")
			return
		}
		if room := math.Min(widest, p.Catch.BallDiameter); room > now+step {
			tried++
			require.Zero(t, broken(wider(p, room-step)))
		}
		if widest < p.Catch.BallDiameter-step {
			require.NotZero(t, broken(wider(p, widest+step)))
		}
	})
	assert.NotZero(t, tried)

	alone := plan.Default()
	assert.Equal(t, math.Inf(1), plate.New(alone).WidestMouth(), "no seat, nothing in its way")
}

func TestInnermost(t *testing.T) {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "A", Radius: 105}, {Name: "B", Radius: 60}, {Name: "C", Radius: 60}}
	assert.Equal(t, 1, plate.New(p).Innermost())
}

// TestSeatWith: it is what the plan would give if its seats were cut so.
func TestSeatWith(t *testing.T) {
	p := triangle(func(p *plan.Plan) { p.Stops = []plan.Stop{{Angle: 10, Catches: []string{"A", "B"}}} })
	c := plate.New(p).SeatWith([]int{0, 1}, 6)
	// r 5, a 3: the centre stands 4 mm over the face.
	assert.True(t, c.HasHome && c.Seated && c.Clicks)
	assert.InDelta(t, 1, c.Drop, torqueRounding)
	assert.Zero(t, c.Play)
	want := plate.New(cut(p, c.Seat)).Holds[0]
	want.Stops = nil
	assert.Equal(t, want, c.Hold)
	assert.InDelta(t, c.Centring/c.Drag, c.Margin(), torqueRounding)
	assert.InDelta(t, (c.Centring-c.Drag)/(c.Holding+c.Drag), c.Return(), torqueRounding)

	for _, x := range []struct {
		why      string
		diameter float64
		state    ball.State
		seated   bool
		hasHome  bool
	}{
		{"as wide as the ball", 10, ball.FallsIn, false, false},
		{"so steep that it locks", 9.9, ball.Locks, false, true},
	} {
		t.Run(x.why, func(t *testing.T) {
			c := plate.New(p).SeatWith([]int{0}, x.diameter)
			assert.Equal(t, x.state, c.State)
			assert.Equal(t, x.seated, c.Seated)
			assert.Equal(t, x.hasHome, c.HasHome)
			if x.state != ball.Clicks {
				assert.Zero(t, c.Margin())
				assert.Zero(t, c.Return())
			}
		})
	}

	short := p
	short.FaceGap = 3
	c = plate.New(short).SeatWith([]int{0}, 8)
	assert.False(t, c.Seated, "the housing lets the ball sink 1 mm and no further")
	assert.True(t, c.Clicks)

	p.Seat.ReliefDiameter = 5
	assert.Equal(t, 5.0, plate.New(p).SeatWith([]int{0}, 5.1).Seat.ReliefDiameter)
	assert.Zero(t, plate.New(p).SeatWith([]int{0}, 5).Seat.ReliefDiameter, "no smaller than the seat")
	p.Seat.ReliefDiameter, p.Seat.Depth, p.Seat.DrillPoint = 0, 0.5, 180
	assert.Equal(t, 1.0, plate.New(p).SeatWith([]int{0}, 6).Seat.Depth, "1 mm lets the ball down")
}

// marks are what a seat is judged by, reckoned from a whole plate with it.
type marks struct {
	good, easy   bool
	margin, push float64
	share, hold  float64
}

// judged returns the marks of a seat for the plan's first hold, and whether it
// can be proposed at all: it clicks without a finding about ball, floor or web,
// also cut a tenth larger and rubbing twice as much, and its drill stays inside.
func judged(p plan.Plan, s plan.Seat) (marks, bool) {
	larger, rough := s, cut(p, s)
	larger.Diameter += 0.1
	rough.Shop.Friction *= 2
	for _, q := range []plan.Plan{cut(p, s), cut(p, larger), rough} {
		for _, f := range check.Run(plate.New(q)) {
			switch f.ID {
			case "ball-falls-in", "ball-locks", "ball-cannot-reach", "ball-short", "seat-bottoms":
				return marks{}, false
			}
		}
	}
	pl := plate.New(cut(p, s))
	for _, f := range check.Run(pl) {
		switch f.ID {
		case "drill-breaks-through", "seats-overlap", "web-thin", "edge-thin":
			return marks{}, false
		}
	}
	h := pl.Holds[0]
	m := marks{
		margin: h.Centring / h.Drag, push: (h.Holding + h.Drag) / (p.Turntable.Diameter / 2000),
		share: (h.Centring - h.Drag) / (h.Holding + h.Drag), hold: h.Holding,
	}
	m.good, m.easy = m.margin >= 3, m.push <= 60
	return m, true
}

// beats reports whether a is the better balance: a good pull home first, then a
// push that is comfortable, then the share that comes back.
func (a marks) beats(b marks) bool {
	over := func(x, y float64) bool { return x-y > 1e-6*(1+math.Abs(y)) }
	switch {
	case !a.good || !b.good:
		return over(a.margin, b.margin)
	case !a.easy || !b.easy:
		return over(b.push, a.push)
	}
	return over(a.share, b.share)
}

// TestALargerSeatHoldsAndPullsHarder: the remedies for a stop that does not come
// home (a larger seat) and for one that is stiff (a smaller one) rest on it. The
// contact angle asin(a/r) grows with the mouth, and with it both tan(α-φ) and
// tan(α+φ), faster than the spring's force falls as the ball sinks in.
func TestALargerSeatHoldsAndPullsHarder(t *testing.T) {
	pl := plate.New(plan.NewPlan())
	last := pl.SeatWith([]int{0}, 2.9)
	for _, mm := range []float64{3, 3.5, 4, 4.5, 5, 5.2} { // under a ball of 6 mm
		c := pl.SeatWith([]int{0}, mm)
		require.True(t, c.Seated, "%g mm", mm)
		assert.Greater(t, c.Centring, last.Centring, "%g mm", mm)
		assert.Greater(t, c.Push(pl.Plan), last.Push(pl.Plan), "%g mm", mm)
		last = c
	}
}

// TestBestSeatAgainstEveryDrill tries every standard drill by itself.
func TestBestSeatAgainstEveryDrill(t *testing.T) {
	found := 0
	rapid.Check(t, func(t *rapid.T) {
		p := plan.Default()
		p.Arrangement = rapid.SampledFrom(plantest.Arrangements).Draw(t, "arrangement")
		p.Catch.BallDiameter = rapid.Float64Range(3, 10).Draw(t, "ball")
		p.Catch.Protrusion = rapid.Float64Range(0.2, 5).Draw(t, "protrusion")
		p.Catch.FreeForce, p.Catch.FlushForce = rapid.Float64Range(1, 40).Draw(t, "free"), rapid.Float64Range(5, 80).Draw(t, "flush")
		p.FaceGap = rapid.Float64Range(0, 1).Draw(t, "gap")
		p.Shop.Friction = rapid.Float64Range(0.05, 0.5).Draw(t, "friction")
		p.Shop.Load = rapid.Float64Range(1, 20).Draw(t, "load")
		p.Base.Thickness, p.Turntable.Thickness, p.Turntable.Diameter = 9, 9, 400
		p.Seat.Form = rapid.SampledFrom([]plan.Form{plan.Drilled, plan.Countersunk}).Draw(t, "form")
		p.Seat.Diameter = rapid.SampledFrom([]float64{4.5, 3.175, 5.5}).Draw(t, "seat")
		p.Seat.DrillPoint = rapid.SampledFrom([]float64{90, 118, 180}).Draw(t, "point")
		p.Seat.Depth = rapid.SampledFrom([]float64{0, 3, 6}).Draw(t, "depth")
		p.Base.Width, p.Base.Depth = 400, 400
		p.Stops = []plan.Stop{{Angle: 0}, {Angle: rapid.Float64Range(3.6, 10).Draw(t, "next")}} // room for 5.5 and a web
		p.Catches = []plan.Placement{{Name: "A", Radius: rapid.SampledFrom([]float64{120, 150}).Draw(t, "ring")}}
		p.Rules.Web = 0.5
		before := p.Clone()
		best, ok := plate.New(p).BestSeat([]int{0}, nil)
		require.Equal(t, before, p)
		var mine marks
		if ok {
			found++
			var can bool
			mine, can = judged(p, best.Seat)
			require.True(t, can, "%+v can be proposed", best.Seat)
			require.True(t, best.Seated)
		}
		sizes := []float64{p.Seat.Diameter}
		for _, d := range stock.Drills() {
			if d.MM >= 1 && d.System == stock.Metric || d.System == stock.Fraction && p.Seat.Diameter == 3.175 && d.MM >= 1 {
				sizes = append(sizes, d.MM)
			}
		}
		for _, d := range sizes {
			s := p.Seat
			s.Diameter = d
			if depth, fits := plate.SeatDepth(p, s); fits {
				s.Depth = depth
			}
			if other, can := judged(p, s); can {
				require.True(t, ok, "%g mm would do", d)
				require.False(t, other.beats(mine), "%g mm is better than %g mm", d, best.Seat.Diameter)
			}
		}
	})
	assert.NotZero(t, found)
}

func TestBestSeatAmongThoseThatSuit(t *testing.T) {
	p := triangle(func(p *plan.Plan) { p.Stops = []plan.Stop{{Angle: 10}} })
	pl := plate.New(p)
	best, ok := pl.BestSeat([]int{0}, func(c plate.SeatChoice) bool { return c.Seat.Diameter < 3 })
	require.True(t, ok)
	assert.Equal(t, 2.9, best.Seat.Diameter, "the steepest of them")
	_, ok = pl.BestSeat([]int{0}, func(plate.SeatChoice) bool { return false })
	assert.False(t, ok)
}

// TestBestSeatOfDemonstrations: their makers chose well, so that what is proposed
// is near it and no worse.
func TestBestSeatOfDemonstrations(t *testing.T) {
	for _, d := range plans.List() {
		t.Run(d.Name, func(t *testing.T) {
			file, err := plans.Open(d.Name)
			require.NoError(t, err)
			p, err := plan.Decode(bytes.NewReader(file))
			require.NoError(t, err)
			pl := plate.New(p)
			best, ok := pl.BestSeat([]int{0}, nil)
			require.True(t, ok)
			own := pl.SeatWith([]int{0}, p.Seat.Diameter)
			assert.GreaterOrEqual(t, best.Return(), own.Return())
			assert.InDelta(t, p.Seat.Diameter, best.Seat.Diameter, 0.5)
			assert.Equal(t, p.Seat.Depth, best.Seat.Depth)
			// A catch of common proportions holds best on some 45°.
			share := best.Seat.Diameter / p.Catch.BallDiameter
			assert.True(t, share > 0.65 && share < 0.8, "%g of the ball", share)
		})
	}
}
