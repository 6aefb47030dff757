package plate_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// The choices grow, no size is there twice, and both the plan's own seat and the
// best one are among them. Among more than one drill holding is bought with what
// comes back: the hardest to hold does not give back most.
func TestSeatChoices(t *testing.T) {
	p := plan.Default()
	p.Seat.Diameter, p.Seat.Depth = 4.5, 6
	pl := plate.New(p)
	all := pl.SeatChoices([]int{0})
	require.Greater(t, len(all), 20, "most drills from 1 to 5.9 mm seat a 6 mm ball")
	best, ok := pl.BestSeat([]int{0}, nil)
	require.True(t, ok)
	own, among := 0, 0
	gives, holds := all[0], all[0]
	for i, c := range all {
		require.True(t, c.Seated)
		if i > 0 {
			require.Greater(t, c.Seat.Diameter, all[i-1].Seat.Diameter)
		}
		if c.Seat.Diameter == p.Seat.Diameter {
			own++
		}
		if c.Seat == best.Seat {
			among++
		}
		if c.Return() > gives.Return() {
			gives = c
		}
		if c.Holding > holds.Holding {
			holds = c
		}
	}
	assert.Equal(t, 1, own)
	assert.Equal(t, 1, among)
	assert.Less(t, gives.Holding, holds.Holding)
	assert.Less(t, holds.Return(), gives.Return())
}

// TestSeatChoicesEndWhereTheMouthMeetsTheRules: a drill is among the choices
// while its mouth, chamfer and all, keeps the rule for webs, and no longer.
func TestSeatChoicesEndWhereTheMouthMeetsTheRules(t *testing.T) {
	const (
		drill = 5.0  // mm, of the choices where there is room
		hair  = 1e-3 // mm, over the rounding of coordinates
	)
	for _, chamfer := range []float64{0, 0.2} {
		offered := func(room float64) bool {
			p := plan.Default()
			p.Seat = plan.Seat{Form: plan.Drilled, Diameter: 4, Depth: 6, DrillPoint: 180, Chamfer: chamfer, CountersinkAngle: 90}
			p.Stops = []plan.Stop{{Angle: 0}, {Angle: 5}}
			apart := 2 * p.Catches[0].Radius * math.Sin(2.5*math.Pi/180)
			p.Rules.Web = apart - (drill + 2*chamfer) - room
			return slices.ContainsFunc(plate.New(p).SeatChoices([]int{0}), func(c plate.SeatChoice) bool { return c.Seat.Diameter == drill })
		}
		assert.True(t, offered(hair), "chamfer %g: it leaves the web and a hair", chamfer)
		assert.False(t, offered(-hair), "chamfer %g: it leaves a hair less than the web", chamfer)
	}
}
