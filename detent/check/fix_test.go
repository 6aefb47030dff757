package check

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

// TestFixesMend applies every fix that a fixture offers: the finding is gone,
// the old plan is as it was.
func TestFixesMend(t *testing.T) {
	offered := map[string]bool{}
	fired(func(pl *plate.Plate, f Finding) {
		fix := FixOf(pl, f)
		if fix == nil {
			return
		}
		offered[f.ID] = true
		before := pl.Plan.Clone()
		after := fix.Apply(pl.Plan)
		assert.Equal(t, before, pl.Plan, "%s: the old plan is not written to", f.ID)
		require.NoError(t, plan.Validate(after))
		for _, g := range only(Run(plate.New(after)), f.ID) {
			assert.NotEqual(t, f.Angles, g.Angles, "%s is mended", f.ID)
		}
		c := words.English()
		require.True(t, c.Has(fix.Key), fix.Key)
		text := c.Text(fix.Key, fix.Args)
		assert.NotContains(t, text, "<nil>")
		assert.NotContains(t, text, "{{")
	})
	assert.Equal(t, map[string]bool{
		"seats-overlap": true, "web-thin": true, "stop-outside-travel": true, "stop-repeated": true,
		"ball-falls-in": true, "ball-locks": true, "ball-short": true, "seat-bottoms": true, "drill-breaks-through": true,
		"will-not-centre": true, "dead-band-wide": true, "stop-stiff": true, "dust-trapped": true,
		"trueness-over-target": true, "season-binds": true,
		"fence-clash": true, "wander-over-target": true,
	}, offered)
}

func TestWiderRing(t *testing.T) {
	fix := func(p plan.Plan) *Fix {
		pl := plate.New(p)
		all := append(only(Run(pl), "web-thin"), only(Run(pl), "seats-overlap")...)
		if len(all) == 0 {
			return nil
		}
		return FixOf(pl, all[0])
	}
	radius := func(p plan.Plan) float64 {
		f := fix(p)
		if f == nil {
			return math.NaN()
		}
		return f.Apply(p).Catches[0].Radius
	}
	need := func(turn float64) float64 { return (mouth + web) / (2 * math.Sin(turn/2*math.Pi/180)) }

	t.Run("rounded up to half a millimetre", func(t *testing.T) {
		assert.InDelta(t, 124.2, need(3), 0.1)
		assert.Equal(t, 124.5, radius(build([]float64{0, 3})))
	})
	t.Run("the short way round", func(t *testing.T) {
		assert.Equal(t, 124.5, radius(build([]float64{-178.5, 178.5})))
	})
	t.Run("as far as the parts have room", func(t *testing.T) {
		// The pocket is wider than a seat, so its part is the narrower one.
		room := 124.5 + pocket/2 + edge
		sized := func(d float64) func(*plan.Plan) { return func(p *plan.Plan) { p.Turntable.Diameter = d } }
		assert.Equal(t, 124.5, radius(build([]float64{0, 3}, sized(2*room))))
		assert.Nil(t, fix(build([]float64{0, 3}, sized(2*room-hair))))
		room = 124.5 + mouth/2 + edge
		assert.Equal(t, 124.5, radius(build([]float64{0, 3}, rectangle(500, 2*room))))
		assert.Nil(t, fix(build([]float64{0, 3}, rectangle(500, 2*room-hair))))
	})
	t.Run("not for two rings", func(t *testing.T) {
		p := build(nil,
			catches(plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Radius: ring + 4}),
			stop(plan.Stop{Angle: 10, Catches: []string{"A", "B"}}))
		require.NotEmpty(t, only(Run(plate.New(p)), "seats-overlap"))
		assert.Nil(t, fix(p))
	})
	t.Run("not for a feature", func(t *testing.T) {
		p := build([]float64{0}, baseHole(ring+mouth/2+2.5+1, 0, 5, ""))
		require.NotEmpty(t, only(Run(plate.New(p)), "web-thin"))
		assert.Nil(t, fix(p))
	})
	t.Run("every catch of the ring moves, and no other", func(t *testing.T) {
		p := build([]float64{0, 3}, catches(
			plan.Placement{Name: "A", Radius: ring}, plan.Placement{Name: "B", Azimuth: 90, Radius: ring}, plan.Placement{Name: "C", Radius: 60},
		))
		after := fix(p).Apply(p).Catches
		assert.Equal(t, []float64{124.5, 124.5, 60}, []float64{after[0].Radius, after[1].Radius, after[2].Radius})
		assert.Equal(t, ring, p.Catches[0].Radius, "the old plan's list is not written to")
	})
	t.Run("right across, where the web falls short by twice what the radius does", func(t *testing.T) {
		// 3.25 mm are needed and a multiple of the step: the least shortfall
		// that is told must not be given away again.
		p := build([]float64{0, 180}, onRing((mouth+web)/2-0.75*Slack), func(p *plan.Plan) { p.Turntable.PivotBore = 0 })
		r := radius(p)
		assert.Equal(t, 3.5, r)
	})
	t.Run("under a web rule of 0 something is left all the same", func(t *testing.T) {
		// At 4.5 mm, a multiple of the step, two seats 60 degrees apart would touch.
		touching := mouth / (2 * math.Sin(math.Pi/6))
		p := build([]float64{0, 60}, onRing(touching-1), func(p *plan.Plan) { p.Turntable.PivotBore, p.Rules.Web = 0, 0 })
		assert.Equal(t, touching+room.RadiusStep, radius(p))
	})
}

func TestListOnce(t *testing.T) {
	type stops = []plan.Stop
	for _, c := range []struct {
		why      string
		in, want stops
	}{
		{"the first of equals stays", stops{{Angle: 5, Label: "a"}, {Angle: 7}, {Angle: 5, Label: "b"}, {Angle: 5}}, stops{{Angle: 5, Label: "a"}, {Angle: 7}}},
		{"one on both sides says more", stops{{Angle: -5}, {Angle: 5, BothSides: true}, {Angle: 5}}, stops{{Angle: 5, BothSides: true}}},
		{"two on both sides, one of them from the other side", stops{{Angle: 5, BothSides: true}, {Angle: -5, BothSides: true}}, stops{{Angle: 5, BothSides: true}}},
		{"two angles of one seat", stops{{Angle: 180}, {Angle: -180}, {Angle: 180}, {Angle: -180}}, stops{{Angle: 180}, {Angle: -180}}},
		{
			"as a chain, each angle as near as equal to the next, the far ends are one angle too",
			stops{{Angle: 0.1 * Slack, BothSides: true}, {Angle: 0}, {Angle: 0.95 * Slack, BothSides: true}},
			stops{{Angle: 0.1 * Slack, BothSides: true}},
		},
		{"a stop barely off 0 is not lost with its own other side", stops{{Angle: within / 2, BothSides: true}, {Angle: 0}}, stops{{Angle: within / 2, BothSides: true}}},
	} {
		t.Run(c.why, func(t *testing.T) {
			p := build(nil)
			p.Stops = c.in
			old := slices.Clone(c.in)
			for range 2 { // the angles of both sides are two findings
				if all := only(Run(plate.New(p)), "stop-repeated"); len(all) > 0 {
					p = FixOf(plate.New(p), all[0]).Apply(p)
				}
			}
			assert.Equal(t, c.want, p.Stops)
			assert.Empty(t, only(Run(plate.New(p)), "stop-repeated"))
			assert.Equal(t, old, c.in, "the old list is not written to")
		})
	}
}

// TestAWiderRingJustFits: 200.2/2 - 3.2 - 4.8/2 is 94.5 but for rounding, which
// must not take the last ring that keeps the edge rule away.
func TestAWiderRingJustFits(t *testing.T) {
	p := plan.NewPlan()
	p.Base = plan.Base{Shape: plan.Disc, Diameter: 200.2, Thickness: 18, Material: "birch-plywood"}
	p.Rules = plan.Rules{Web: 2, Edge: 3.2}
	p.Seat.Diameter = 4.8
	p.Catches[0].Radius = 90
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 360 / math.Pi * math.Asin(6.8/2/94.3)}} // 94.3 would do
	pl := plate.New(p)
	assert.InDelta(t, 94.5, pl.LargestRing(), 1e-9)
	for _, f := range Run(pl) {
		if f.ID == "web-thin" {
			fix := FixOf(pl, f)
			require.NotNil(t, fix)
			assert.Equal(t, 94.5, fix.Apply(p).Catches[0].Radius)
			return
		}
	}
	require.Fail(t, "the web is not thin")
}
