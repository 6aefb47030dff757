package plate_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/ball"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// torqueRounding is how far two ways of adding up torques (N·m) or forces (N) may
// differ.
const torqueRounding = 1e-12

const gravity = 9.80665

// Balls of 10 mm over seats of 8 mm, a triangle of 3, 4 and 5: at home the ball
// sinks 2 mm, and the contact angle's tangent is 4/3. Of 4 mm it stands out 0.2
// is the gap: riding, the spring of 8 to 20 N presses with 19.4 N, and at home
// with 13.4 N.
const (
	riding = 20 - 12*0.2/4
	atHome = 20 - 12*2.2/4
)

func triangle(edits ...func(*plan.Plan)) plan.Plan {
	p := plan.Default()
	p.Catch.BallDiameter, p.Catch.Protrusion = 10, 4
	p.Seat = plan.Seat{Form: plan.Drilled, Diameter: 8, Depth: 6, DrillPoint: 118, CountersinkAngle: 90}
	p.Catches = []plan.Placement{{Name: "A", Radius: 100}, {Name: "B", Azimuth: 90, Radius: 60}, {Name: "C", Azimuth: 180, Radius: 100}}
	p.Shop.Load, p.Shop.Friction, p.Shop.TableFriction = 20, 0.25, 0.3
	p.Turntable.BearingRadius = 80
	for _, edit := range edits {
		edit(&p)
	}
	return p
}

// TestDragOfSeveralCatches: what all balls lift is off the load, and those that
// do not drop rub on the face at their own radius.
func TestDragOfSeveralCatches(t *testing.T) {
	p := triangle()
	k := plate.New(p).Clicks
	load := 20 * gravity
	lift := atHome + 2*riding
	require.Len(t, k, 3)
	for i, others := range []float64{0.060 + 0.100, 0.100 + 0.100, 0.100 + 0.060} {
		assert.InDelta(t, 0.3*(load-lift)*0.080+0.25*riding*others, k[i].Drag, torqueRounding)
		assert.InDelta(t, riding, k[i].Riding, torqueRounding)
		assert.InDelta(t, atHome, k[i].Seated, torqueRounding)
	}

	t.Run("balls that lift more than the load leave only their own friction", func(t *testing.T) {
		k := plate.New(triangle(func(p *plan.Plan) { p.Shop.Load = lift / gravity * 0.99 })).Clicks
		assert.InDelta(t, 0.25*riding*0.160, k[0].Drag, torqueRounding)
	})
	t.Run("balls that do not reach neither lift nor rub", func(t *testing.T) {
		k := plate.New(triangle(func(p *plan.Plan) { p.FaceGap = 4 })).Clicks
		assert.InDelta(t, 0.3*load*0.080, k[0].Drag, torqueRounding)
		assert.Zero(t, k[0].Riding)
		assert.Zero(t, k[0].Seated)
	})
	t.Run("a ball that falls in lifts no more", func(t *testing.T) {
		k := plate.New(triangle(func(p *plan.Plan) { p.Seat.Diameter = 10 })).Clicks
		assert.InDelta(t, 0.3*(load-2*riding)*0.080+0.25*riding*0.160, k[0].Drag, torqueRounding)
	})
	t.Run("rubbing at two thirds of the table's radius where nothing else is said", func(t *testing.T) {
		k := plate.New(triangle(func(p *plan.Plan) {
			p.Turntable.BearingRadius, p.Turntable.Diameter = 0, 240
		})).Clicks
		assert.InDelta(t, 0.3*(load-lift)*0.080+0.25*riding*0.160, k[0].Drag, torqueRounding)
	})
}

func TestLiftAndLoad(t *testing.T) {
	p := triangle()
	assert.InDelta(t, 3*riding, plate.Lift(plate.New(p).Clicks), torqueRounding)
	assert.InDelta(t, 20*gravity, plate.Load(p), torqueRounding)
}

func TestMiss(t *testing.T) {
	errs := func(seat, catch float64) func(*plan.Plan) {
		return func(p *plan.Plan) { p.Shop.SeatError, p.Shop.CatchError = seat, catch }
	}
	for _, c := range []struct {
		why   string
		edits []func(*plan.Plan)
		want  float64
	}{
		{"1.96/2 of the root of the squares", []func(*plan.Plan){errs(0.3, 0.6), func(p *plan.Plan) { p.Turntable.RadialPlay = 0.6 }}, 0.98 * 0.9},
		{"half the collar's clearance where it guides", []func(*plan.Plan){errs(0.3, 0.6), func(p *plan.Plan) {
			p.Turntable.GuidedBy, p.Turntable.RadialPlay = plan.GuideCollar, 99
			p.Collar = &plan.Collar{Clearance: 1.2, OutsideDiameter: 310, Thickness: 18}
		}}, 0.98 * 0.9},
		{"a collar that is not there guides nothing", []func(*plan.Plan){errs(0.3, 0.6), func(p *plan.Plan) {
			p.Turntable.GuidedBy, p.Turntable.RadialPlay = plan.GuideCollar, 0.6
		}}, 0.98 * 0.9},
		{"a collar that binds gives no play", []func(*plan.Plan){errs(0.3, 0.4), func(p *plan.Plan) {
			p.Turntable.GuidedBy = plan.GuideCollar
			p.Collar = &plan.Collar{Clearance: -1, OutsideDiameter: 310, Thickness: 18}
		}}, 0.98 * 0.5},
		{"everything true", []func(*plan.Plan){errs(0, 0), func(p *plan.Plan) { p.Turntable.RadialPlay = 0 }}, 0},
	} {
		t.Run(c.why, func(t *testing.T) {
			k := plate.New(triangle(c.edits...)).Clicks[0]
			assert.InDelta(t, c.want, k.Miss, torqueRounding)
			dead, ok := k.DeadBand(c.want, k.Drag)
			assert.Equal(t, ok, k.HasDead)
			assert.InDelta(t, dead.Rests, k.Dead.Rests, 1e-6, "the dead band is that of this miss and drag")
		})
	}
}

// TestHolds: the catches that drop together pull together, against what the
// others rub.
func TestHolds(t *testing.T) {
	p := triangle(func(p *plan.Plan) {
		p.Stops = []plan.Stop{
			{Angle: 10},
			{Angle: 20, Catches: []string{"C", "A"}, BothSides: true},
			{Angle: 40, Catches: []string{"A"}},
			{Angle: 50, Catches: []string{"A", "C"}},
			{Angle: 60, Catches: []string{"A", "B", "C"}},
		}
	})
	h := plate.New(p).Holds
	require.Len(t, h, 3)
	assert.Equal(t, [][]int{{0}, {0, 2}, {0, 1, 2}}, [][]int{h[0].Catches, h[1].Catches, h[2].Catches})
	assert.Equal(t, [][]int{{0, 3}, {1, 2, 4}, {5}}, [][]int{h[0].Stops, h[1].Stops, h[2].Stops})

	// One ball pulls home with R·F·(4/3 - 1/4)/(1 + 4/3·1/4) = R·F·13/16.
	load := 20 * gravity
	for i, c := range []struct{ arms, lift, rub float64 }{
		{0.100, atHome + 2*riding, 0.160},
		{0.200, 2*atHome + riding, 0.060},
		{0.260, 3 * atHome, 0},
	} {
		assert.True(t, h[i].Clicks)
		assert.InDelta(t, c.arms*atHome*13/16, h[i].Centring, torqueRounding)
		drag := 0.3*(load-c.lift)*0.080 + 0.25*riding*c.rub
		assert.InDelta(t, drag, h[i].Drag, torqueRounding)
		assert.InDelta(t, (h[i].Holding+drag)/0.130, h[i].Push(p), 1e-9, "at the rim of 260 mm")
	}
	one, _ := plate.New(p).Clicks[0].Torques()
	assert.InDelta(t, one.Holding*2.6, h[2].Holding, 1e-9)

	// Each ball has its share of the drag to overcome, by its arm.
	k := plate.New(p).Clicks[1]
	share, _ := k.DeadBand(k.Miss, h[2].Drag*60/260)
	assert.InDelta(t, share.RestsAngle.Degrees(), h[2].Dead.Degrees(), 1e-9, "the inner ring's is the widest")
	assert.True(t, h[2].HasDead)
	half := plate.New(p).Clicks[0]
	require.Positive(t, h[1].Drag)
	share, _ = half.DeadBand(half.Miss, h[1].Drag*100/200)
	assert.InDelta(t, share.RestsAngle.Degrees(), h[1].Dead.Degrees(), 1e-9, "two on one ring have half each")
}

func TestHoldsThatMeanNothing(t *testing.T) {
	stop := func(p *plan.Plan) { p.Stops = []plan.Stop{{Angle: 10, Catches: []string{"A", "B"}}} }
	for why, edit := range map[string]func(*plan.Plan){
		"locked":         func(p *plan.Plan) { p.Shop.Friction = 0.75 },
		"fallen in":      func(p *plan.Plan) { p.Seat.Diameter = 10 },
		"does not reach": func(p *plan.Plan) { p.FaceGap = 4 },
	} {
		t.Run(why, func(t *testing.T) {
			h := plate.New(triangle(stop, edit)).Holds[0]
			assert.False(t, h.Clicks)
			assert.False(t, h.HasDead)
			assert.Zero(t, h.Holding)
			assert.Zero(t, h.Centring)
			assert.Zero(t, h.Dead)
			assert.Positive(t, h.Drag)
		})
	}
	t.Run("a track beside the mouth", func(t *testing.T) {
		h := plate.New(triangle(stop, func(p *plan.Plan) { p.Shop.SeatError = 5 })).Holds[0]
		assert.True(t, h.Clicks)
		assert.False(t, h.HasDead)
	})
	assert.Empty(t, plate.New(triangle()).Holds, "without a stop nothing is held")
}

// TestEveryPlanClicksOrSaysWhy: whatever the plan, each catch is worked out and
// every number is a plain one.
func TestEveryPlanClicksOrSaysWhy(t *testing.T) {
	plain := func(t *rapid.T, xs ...float64) {
		for _, x := range xs {
			require.False(t, math.IsNaN(x) || math.IsInf(x, 0))
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		p := drawClick(t, drawPlan(t))
		require.NoError(t, plan.Validate(p))
		pl := plate.New(p)
		require.Len(t, pl.Clicks, len(p.Catches))
		for i, k := range pl.Clicks {
			require.Equal(t, i, k.Catch)
			require.NotNil(t, k.Click)
			plain(t, k.Riding, k.Seated, k.Drag, k.Miss, k.Dead.Rests)
			require.GreaterOrEqual(t, k.Drag, 0.0)
			require.Equal(t, pl.Clicks[0].State(), k.State(), "all catches click alike")
		}
		for _, h := range pl.Holds {
			plain(t, h.Holding, h.Centring, h.Drag, h.Dead.Degrees(), h.Push(p))
			require.Equal(t, pl.Clicks[0].State() == ball.Clicks, h.Clicks)
		}
	})
}

// drawClick gives a plan a catch and a seat from everything they may be, more
// often one that works than not.
func drawClick(t *rapid.T, p plan.Plan) plan.Plan {
	pick := func(name string, usual, lo, hi float64) float64 {
		return rapid.OneOf(rapid.Float64Range(0.5*usual, 1.5*usual), rapid.SampledFrom([]float64{lo, hi, usual})).Draw(t, name)
	}
	p.Catch.BallDiameter = pick("ball", 6, 0.1, 100)
	p.Catch.Protrusion = pick("protrusion", 2, 0.1, 100)
	p.Catch.FreeForce, p.Catch.FlushForce = pick("free", 8, 0, 1000), pick("flush", 20, 0, 1000)
	p.FaceGap = pick("gap", 0.2, -5, 50)
	p.Seat.Form = rapid.SampledFrom([]plan.Form{plan.Drilled, plan.Countersunk}).Draw(t, "form")
	p.Seat.Diameter = pick("seat", 4, 0.1, 100)
	p.Seat.Depth = rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, 20)).Draw(t, "depth")
	p.Seat.DrillPoint = rapid.SampledFrom([]float64{60, 90, 118, 180}).Draw(t, "point")
	p.Seat.CountersinkAngle = pick("countersink", 90, 30, 150)
	p.Seat.ReliefDiameter = rapid.SampledFrom([]float64{0, 0.1, 2, 100}).Draw(t, "relief")
	p.Seat.Chamfer = rapid.SampledFrom([]float64{0, 0.25, 50}).Draw(t, "chamfer")
	p.Shop.Friction, p.Shop.TableFriction = pick("friction", 0.2, 0, 1.5), pick("table friction", 0.2, 0, 1.5)
	p.Shop.Load = pick("load", 6, 0, 1000)
	p.Shop.SeatError, p.Shop.CatchError = pick("seat error", 0.2, 0, 50), pick("catch error", 0.2, 0, 50)
	return p
}
