package detent_test

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
)

// Seats of 4.5 mm on a ring of 100 mm, 1.6 degrees apart, lie 2.8 mm from centre
// to centre: 30 and 31.6 degrees run into each other, on both sides. Holes placed
// to half a millimetre are too coarse for the target besides, wherever they lie.
func TestRoomTellsHowManyFindingsItClears(t *testing.T) {
	p := crowded(withTravel(-60, 60), func(p *plan.Plan) { p.Shop.SeatError, p.Shop.CatchError = 0.5, 0.5 })
	wrong := map[string]int{}
	for _, f := range detent.Solve(p).Findings {
		if f.Wrong() {
			wrong[f.ID]++
		}
	}
	require.Equal(t, map[string]int{"seats-overlap": 2, "dead-band-wide": 1, "trueness-over-target": 1}, wrong)
	r, err := detent.Study(t.Context(), detent.Solve(p))
	require.NoError(t, err)
	var out struct {
		Room []struct {
			Fits   bool
			Clears int
		}
	}
	require.NoError(t, json.Unmarshal(encoded(t, r), &out))
	fit := 0
	for i, room := range r.Rooms {
		assert.Equal(t, room.Clears, out.Room[i].Clears)
		if !room.Fits {
			assert.Zero(t, room.Clears, "it is not to be had")
			continue
		}
		fit++
		assert.Equal(t, 4, room.Wrong)
		assert.Equal(t, 2, room.Clears, "%s: the seats no longer overlap; the rest stays", room.Kind)
	}
	assert.Positive(t, fit)

	// What is of no other place is never cleared, and what is right not counted.
	good := crowded(withTravel(-60, 60), func(p *plan.Plan) {
		p.Stops = []plan.Stop{{Angle: 0}, {Angle: 45}}
		p.Shop.SeatError, p.Shop.CatchError, p.Shop.Target = 0.05, 0.05, 1
	})
	for _, room := range makeRoom(t, good) {
		assert.Zero(t, room.Wrong)
		assert.Zero(t, room.Clears)
	}
}
