package plate_test

import (
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
