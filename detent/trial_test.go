package detent_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
)

// Seven stops a few degrees apart pass; at half size the seats are as wide as
// ever, and what is left between them is not.
func TestHalfSizeTrialTellsOfItsThinWebs(t *testing.T) {
	p := plan.NewPlan()
	for a := -15.0; a <= 15; a += 5 {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	for _, f := range detent.Solve(p).Findings {
		require.NotEqual(t, "web-thin", f.ID)
	}
	half, err := plan.Trial(p, 0.5)
	require.NoError(t, err)
	var thin int
	for _, f := range detent.Solve(half).Findings {
		if f.ID == "web-thin" || f.ID == "seats-overlap" {
			thin++
		}
	}
	assert.Positive(t, thin)
	// 105 mm · 2 sin 2.5° = 9.16 mm between centres, 4.58 mm at half size.
	const thousandth = 0.001
	assert.InDelta(t, 9.160-4.5, detent.Solve(p).Plate.Seats[0].Web, thousandth)
	assert.InDelta(t, 4.580-4.5, detent.Solve(half).Plate.Seats[0].Web, thousandth)
}
