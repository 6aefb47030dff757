package plate_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

// worstAfter returns the widest zeroed interval of a plan.
func worstAfter(t require.TestingT, p plan.Plan) geom.Angle {
	require.NoError(t, plan.Validate(p))
	_, e, ok := plate.New(p).Trueness.WorstZeroed()
	require.True(t, ok)
	return e.Interval95
}

// steady is a plan in which only seats and pivot are off, so that errors go as
// one over the radius.
func steady(edits ...func(*plan.Plan)) plan.Plan {
	p := withStops(0, 20)
	p.Catches[0].Radius = 80
	p.Shop.Friction, p.Shop.TableFriction = 0, 0
	p.Shop.SeatError, p.Shop.CatchError, p.Turntable.RadialPlay = 0.3, 0.3, 0.1
	for _, edit := range edits {
		edit(&p)
	}
	return p
}

func TestReach(t *testing.T) {
	pl := plate.New(steady())
	now := worstAfter(t, pl.Plan)
	r, ok := pl.ReachOf(1, now*0.9)
	require.True(t, ok)
	assert.Equal(t, 89.0, r.Ring, "80/0.9 = 88.9, to the next half millimetre")
	assert.True(t, r.RingFits)
	require.NotEmpty(t, r.Methods)
	assert.Equal(t, plan.MethodPillarDrillGuided, r.Methods[0].ID)

	r, ok = pl.ReachOf(1, now*0.4)
	require.True(t, ok)
	assert.Equal(t, 200.0, r.Ring)
	assert.False(t, r.RingFits, "the table has no room for it")
	assert.Zero(t, r.Play, "no pivot makes up for the seats")

	_, ok = pl.ReachOf(1, now)
	assert.False(t, ok, "there already")
	_, ok = pl.ReachOf(0, 0.0001)
	assert.False(t, ok, "the reference is off by nothing")

	loose := plate.New(steady(func(p *plan.Plan) { p.Turntable.RadialPlay = 0.5 }))
	r, ok = loose.ReachOf(1, worstAfter(t, steady(func(p *plan.Plan) { p.Turntable.RadialPlay = 0.205 })))
	require.True(t, ok)
	assert.InDelta(t, 0.20, r.Play, 1e-9, "rounded down to a hundredth")
	r, ok = loose.ReachOf(1, worstAfter(t, steady(func(p *plan.Plan) { p.Turntable.RadialPlay = 0.025 })))
	require.True(t, ok)
	assert.InDelta(t, 0.02, r.Play, 1e-9, "the closest fit there is")
}

func TestCheapest(t *testing.T) {
	now := worstAfter(t, steady())
	for _, c := range []struct {
		why         string
		share       geom.Angle
		edit        func(*plan.Plan)
		ring, pivot bool
		method      string
		cannot      bool
	}{
		{why: "a larger ring costs a pencil line", share: 0.9, ring: true},
		{why: "no room: a closer pivot does too", share: 0.98, pivot: true, edit: func(p *plan.Plan) { p.Turntable.Diameter, p.Turntable.RadialPlay = 172, 0.11 }},
		{why: "ring and guide together", share: 0.55, ring: true, method: plan.MethodPillarDrillGuided},
		{why: "nothing there is", share: 0.01, cannot: true},
	} {
		t.Run(c.why, func(t *testing.T) {
			p := steady()
			if c.edit != nil {
				c.edit(&p)
			}
			pl := plate.New(p)
			m, ok := pl.Cheapest(1, now*c.share)
			require.Equal(t, !c.cannot, ok)
			if c.cannot {
				return
			}
			assert.Equal(t, c.ring, m.Factor != 0)
			assert.Equal(t, c.pivot, m.Play != 0)
			method := ""
			if m.Method != nil {
				method = m.Method.ID
			}
			assert.Equal(t, c.method, method)
			assert.LessOrEqual(t, worstAfter(t, m.Apply(p)), now*c.share)
		})
	}
}

// TestRemediesMend: whatever is proposed brings the stop within the target, and
// writes to nothing of the old plan.
func TestRemediesMend(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := shaky(func(p *plan.Plan) {
			p.Seat.Diameter, p.Seat.Depth = 4.5, 6
			p.Catch.BallDiameter, p.Catch.Protrusion = 6, 2
			p.Shop.Friction = rapid.Float64Range(0, 0.3).Draw(t, "friction")
			p.Shop.TableFriction = rapid.Float64Range(0, 0.3).Draw(t, "table friction")
			p.Shop.SeatError = rapid.Float64Range(0, 1).Draw(t, "seat error")
			p.Shop.CatchError = rapid.Float64Range(0, 1).Draw(t, "catch error")
			p.Turntable.RadialPlay = rapid.Float64Range(0, 1).Draw(t, "play")
		})
		target := geom.Angle(rapid.Float64Range(0.02, 0.5).Draw(t, "target"))
		before := p.Clone()
		pl := plate.New(p)
		stop, e, ok := pl.Trueness.WorstZeroed()
		if !ok || e.Interval95 <= target {
			return
		}
		m, ok := pl.Cheapest(stop, target)
		if !ok {
			return
		}
		after := plate.New(m.Apply(p))
		z, ok := after.Trueness.Zeroed(stop)
		require.True(t, ok)
		require.LessOrEqual(t, z.Interval95, target)
		require.Equal(t, before, p)
		for _, c := range after.Plan.Catches {
			require.LessOrEqual(t, c.Radius, max(pl.LargestRing(), 100)+room.RadiusStep)
		}
	})
}
