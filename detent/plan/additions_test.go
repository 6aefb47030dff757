package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

func TestNewCollarGoesRoundTheTable(t *testing.T) {
	for _, c := range []struct {
		why             string
		table           plan.Turntable
		outside, circle float64 // mm
	}{
		{"a table of ordinary size", plan.Turntable{Diameter: 260, Thickness: 18, Material: "birch-plywood"}, 310, 285},
		{"a small thin table of another material", plan.Turntable{Diameter: 80, Thickness: 6, Material: "acetal"}, 130, 105},
		{"a table as large as a plan can hold leaves no room round it", plan.Turntable{Diameter: 10000, Thickness: 18}, 10000, 10000},
	} {
		got := plan.NewCollar(c.table)
		assert.Equal(t, c.outside, got.OutsideDiameter, c.why)
		assert.Equal(t, c.circle, got.Screws.Circle, c.why)
		assert.Equal(t, c.table.Thickness, got.Thickness, c.why)
		assert.Equal(t, c.table.Material, got.Material, c.why)
		p := plan.Default()
		p.Turntable.Diameter, p.Collar = c.table.Diameter, &got
		assert.NoError(t, plan.Validate(p), c.why)
		assert.Greater(t, p.CollarBore(), p.TableDiameter(), "the table must turn inside it")
	}
}

// The most catches a plan may have, one added after another, have names of
// their own and places a plan accepts.
func TestNewPlacementUpToTheMost(t *testing.T) {
	p := plan.Default()
	p.Catches[0].Azimuth = 350
	for len(p.Catches) < plan.MaxCatches {
		p.Catches = append(p.Catches, plan.NewPlacement(p))
		require.NoError(t, plan.Validate(p), "catch %d", len(p.Catches))
	}
	assert.Equal(t, plan.Placement{Name: "B", Azimuth: 80, Radius: 105}, p.Catches[1])
	assert.Equal(t, "Z", p.Catches[25].Name)
	assert.Equal(t, "AA", p.Catches[26].Name)
	assert.Equal(t, "LLL", p.Catches[63].Name)
}

func TestNewPlacementTakesTheFirstFreeLetter(t *testing.T) {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "A", Radius: 90}, {Name: "left", Azimuth: -200, Radius: 60}, {Name: "C", Azimuth: -170, Radius: 60}}
	assert.Equal(t, plan.Placement{Name: "B", Azimuth: -80, Radius: 90}, plan.NewPlacement(p),
		"a quarter turn on from the last, on the ring of the first")
}

func TestNewFeatureIsAcceptedOnAnyRing(t *testing.T) {
	for _, radius := range []float64{0.1, 1, 105, 10000} {
		p := plan.Default()
		p.Catches[0].Radius = radius
		f := plan.NewFeature(p)
		p.Features = append(p.Features, f)
		require.NoError(t, plan.Validate(p), "ring of %v mm", radius)
		assert.LessOrEqual(t, -f.X, radius, "inside the ring of %v mm", radius)
	}
	assert.Equal(t, -53.0, plan.NewFeature(plan.Default()).X, "half of 105 mm, to the mm")
}

func TestNewPlanIsValid(t *testing.T) { require.NoError(t, plan.Validate(plan.NewPlan())) }
