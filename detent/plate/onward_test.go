package plate_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// workGrain is the share of the peak work that summing torques at workSteps
// points may lose: the step over the width of one click, about.
const (
	workSteps = 200000
	workGrain = 2e-3
)

// Turned right through its travel a frictionless, unloaded table gives back at
// each seat what it gets: the work of leaving cancels that of dropping in.
func TestOnwardGivesBackWhatItTookWithoutFriction(t *testing.T) {
	for _, in := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		p := plan.Default()
		p.Arrangement.CatchIn = in
		p.Shop.Friction, p.Shop.Load = 0, 0
		p.Travel = plan.Span{From: -40, To: 40}
		p.Stops = []plan.Stop{{Angle: -20}, {Angle: 5}, {Angle: 25}}
		pl := plate.New(p)
		work, least := 0.0, 0.0
		for i := range workSteps {
			turn := geom.Angle(-40 + 80*(float64(i)+0.5)/workSteps)
			work += pl.Onward(turn)
			least = min(least, work)
		}
		require.Negative(t, least, "a ball that drops in turns the table on")
		assert.InDelta(t, 0, work/least, workGrain, "%s", in)
	}
}

// Between stops only friction resists: the table's drag and the balls' own.
func TestOnwardBetweenStops(t *testing.T) {
	p := plan.Default()
	p.Stops = []plan.Stop{{Angle: 0}}
	pl := plate.New(p)
	ride, ok := pl.Clicks[0].Click.Riding()
	require.True(t, ok)
	// Ball flat on the face at gap 0.2 of protrusion 2: 20 + (8-20)*0.1 N.
	const force = 18.8
	assert.InDelta(t, force, ride.Force, 1e-12)
	drag := 0.2 * (6*9.80665 - force) * 0.26 / 3 // friction, load, two thirds of the radius
	rub := 0.2 * force * 0.105
	want := drag + rub
	if p.Turntable.BearingRadius != 0 {
		want = 0.2*(6*9.80665-force)*p.Turntable.BearingRadius/1000 + rub
	}
	assert.InDelta(t, want, pl.Onward(30), 1e-9)
}

func TestWhatIf(t *testing.T) {
	p := plan.Default()
	was := p.Clone()
	assert.True(t, plate.WhatIf{}.None())
	assert.True(t, plan.Equal(p, plate.WhatIf{}.Apply(p)))
	w := plate.WhatIf{Oversize: 0.3, Worn: 0.1, Weaker: 0.25}
	assert.False(t, w.None())
	q := w.Apply(p)
	assert.InDelta(t, 4.8, q.Seat.Diameter, 1e-12)
	assert.InDelta(t, 5.0, q.Seat.Mouth(), 1e-12, "the rim is worn away all round")
	assert.InDelta(t, 6, q.Catch.FreeForce, 1e-12)
	assert.InDelta(t, 15, q.Catch.FlushForce, 1e-12)
	assert.True(t, plan.Equal(was, p), "the plan itself stays as it is")
	assert.Len(t, plate.ClicksOf(q), len(p.Catches))
}
