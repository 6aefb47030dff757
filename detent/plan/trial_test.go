package plan_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/plan"
)

func TestTrial(t *testing.T) {
	p := fullPlan(t)
	before := p.Clone()
	half, err := plan.Trial(p, 0.5)
	require.NoError(t, err)
	assert.Equal(t, before, p, "the plan itself stays")
	assert.True(t, half.IsTrial())
	assert.Equal(t, 0.5, half.Scale)
	for what, pair := range map[string][2]float64{
		"turntable": {p.Turntable.Diameter, half.Turntable.Diameter},
		"bearing":   {p.Turntable.BearingRadius, half.Turntable.BearingRadius},
		"base":      {p.Base.Width, half.Base.Width},
		"ring":      {p.Catches[0].Radius, half.Catches[0].Radius},
		"collar":    {p.Collar.OutsideDiameter, half.Collar.OutsideDiameter},
		"screws":    {p.Collar.Screws.Circle, half.Collar.Screws.Circle},
		"feature":   {p.Features[0].X, half.Features[0].X},
	} {
		assert.InDelta(t, pair[0]/2, pair[1], 0.0005, "%s, to a thousandth", what)
	}
	// What is bought, drilled or only so exact stays.
	assert.Equal(t, p.Catch, half.Catch)
	assert.Equal(t, p.Seat, half.Seat)
	assert.Equal(t, p.Shop, half.Shop)
	assert.Equal(t, p.Rules, half.Rules)
	assert.Equal(t, p.Stops, half.Stops)
	assert.Equal(t, p.Features[0].Diameter, half.Features[0].Diameter)
	assert.Equal(t, p.Collar.Clearance, half.Collar.Clearance)
	assert.Equal(t, p.Turntable.Thickness, half.Turntable.Thickness, "seat and catch go as deep as ever")
	assert.Equal(t, p.Turntable.PivotBore, half.Turntable.PivotBore)
	// What is known of the plate itself does not hold for it.
	assert.Nil(t, half.Tool)
	assert.Empty(t, half.Readings)
	assert.Empty(t, half.AsDrilled)

	again, err := plan.Trial(half, 2)
	require.NoError(t, err)
	assert.False(t, again.IsTrial(), "twice half is the plate itself")
	_, err = plan.Trial(p, 0.01)
	assert.ErrorContains(t, err, "scale is 0.01")
}

func TestTrialInTheFile(t *testing.T) {
	p := plan.Default()
	assert.NotContains(t, encoded(t, p), `"scale"`, "the plate itself says nothing of scale")
	half, err := plan.Trial(p, 0.5)
	require.NoError(t, err)
	assert.Contains(t, encoded(t, half), `"scale": 0.5,`)
	back, err := plan.Decode(strings.NewReader(encoded(t, half)))
	require.NoError(t, err)
	assert.True(t, plan.Equal(half, back))
	for _, wrong := range []string{"0.049", "20.1", "0", "-1", `"half"`} {
		_, err := plan.Decode(strings.NewReader(strings.Replace(encoded(t, half), `"scale": 0.5`, `"scale": `+wrong, 1)))
		assert.ErrorContains(t, err, "scale", wrong)
	}
}

// TestTrialsAreValid: at any scale a trial is a whole plan, or what is wrong is
// said.
func TestTrialsAreValid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plan.Default()
		p.Catches[0].Radius = rapid.Float64Range(0.1, 10_000).Draw(t, "radius")
		p.Turntable.Diameter = rapid.Float64Range(0.1, 10_000).Draw(t, "diameter")
		trial, err := plan.Trial(p, rapid.Float64Range(0.05, 20).Draw(t, "factor"))
		require.Equal(t, plan.Validate(trial), err)
	})
}
