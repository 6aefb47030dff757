package detent_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent"
	"stopwright/detent/plan"
)

// The first stops a maker adds to a new plan click, centre and hold.
func TestANewPlanHasNothingToMend(t *testing.T) {
	p := plan.NewPlan()
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 36, BothSides: true}}
	for _, f := range detent.Solve(p).Findings {
		assert.False(t, f.Wrong(), f.ID)
	}
}
