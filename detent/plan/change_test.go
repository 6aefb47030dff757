package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

func TestStopsKnowACatchByItsNewName(t *testing.T) {
	p := plan.Default()
	p.Catches = append(p.Catches, plan.NewPlacement(p))
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 10, Catches: []string{"A", "B"}}, {Angle: 20, Catches: []string{"B"}}}
	require.True(t, plan.ChangeField(&p, plan.Field{Path: "catches[1].name", Kind: plan.TextField, Text: "left"}))
	assert.Equal(t, "left", p.Catches[1].Name)
	assert.Empty(t, p.Stops[0].Catches)
	assert.Equal(t, []string{"A", "left"}, p.Stops[1].Catches)
	assert.Equal(t, []string{"left"}, p.Stops[2].Catches)
	assert.NoError(t, plan.Validate(p))

	require.True(t, plan.ChangeField(&p, plan.Field{Path: "catches[1].name", Kind: plan.TextField, Text: "A"}))
	assert.Error(t, plan.Validate(p), "a name that is taken is refused")
}

// A feature made another kind is one the plan accepts, at the same place and as
// wide, from wherever a plan may have it.
func TestAFeatureOfAnotherKindStaysWhereItIs(t *testing.T) {
	for _, c := range []struct {
		why      string
		from, to plan.Feature
	}{
		{
			why:  "a hole made a slot",
			from: plan.Feature{Kind: plan.Hole, X: 30, Y: -40, Diameter: 5},
			to:   plan.Feature{Kind: plan.Slot, X: 30, Y: -50, X2: 30, Y2: -30, Width: 5},
		},
		{
			why:  "a hole made a curved slot",
			from: plan.Feature{Kind: plan.Hole, X: 60, Y: 0, Diameter: 5},
			to:   plan.Feature{Kind: plan.ArcSlot, Radius: 60, From: 80, To: 100, Width: 5},
		},
		{
			why:  "a slot made a hole",
			from: plan.Feature{Kind: plan.Slot, X: 10, Y: 20, X2: 30, Y2: 60, Width: 8},
			to:   plan.Feature{Kind: plan.Hole, X: 20, Y: 40, Diameter: 8},
		},
		{
			why:  "a curved slot made a hole",
			from: plan.Feature{Kind: plan.ArcSlot, Radius: 70, From: 170, To: 190, Width: 8},
			to:   plan.Feature{Kind: plan.Hole, X: 0, Y: -70, Diameter: 8},
		},
		{
			why:  "a hole on the pivot, where there is no circle",
			from: plan.Feature{Kind: plan.Hole, Diameter: 5},
			to:   plan.Feature{Kind: plan.ArcSlot, Radius: 5, From: -10, To: 10, Width: 5},
		},
		{
			why:  "a hole in the farthest corner made a slot",
			from: plan.Feature{Kind: plan.Hole, X: 10000, Y: 10000, Diameter: 5},
			to:   plan.Feature{Kind: plan.Slot, X: 10000, Y: 9990, X2: 10000, Y2: 10000, Width: 5},
		},
		{
			why:  "a hole in the farthest corner made a curved slot",
			from: plan.Feature{Kind: plan.Hole, X: 10000, Y: 10000, Diameter: 5},
			to:   plan.Feature{Kind: plan.ArcSlot, Radius: 10000, From: 35, To: 55, Width: 5},
		},
	} {
		c.from.Part, c.to.Part = plan.PartTurntable, plan.PartTurntable
		c.from.Label, c.to.Label = "dust", "dust"
		p := plan.Default()
		p.Features = []plan.Feature{{Part: plan.PartBase, Kind: plan.Hole, Diameter: 3}, c.from}
		require.NoError(t, plan.Validate(p), c.why)
		require.True(t, plan.ChangeField(&p, plan.Field{
			Path: "features[1].kind", Kind: plan.ChoiceField, Text: string(c.to.Kind),
		}), c.why)
		const rounding = 1e-9 // mm and degrees: of a sine and its inverse
		got := p.Features[1]
		for _, pair := range [][2]*float64{
			{&got.X, &c.to.X},
			{&got.Y, &c.to.Y},
			{&got.X2, &c.to.X2},
			{&got.Y2, &c.to.Y2},
			{&got.Diameter, &c.to.Diameter},
			{&got.Width, &c.to.Width},
			{&got.Radius, &c.to.Radius},
			{&got.From, &c.to.From},
			{&got.To, &c.to.To},
		} {
			assert.InDelta(t, *pair[1], *pair[0], rounding, c.why)
			*pair[0] = *pair[1]
		}
		assert.Equal(t, c.to, got, c.why)
		assert.NoError(t, plan.Validate(p), c.why)
	}
}

func TestChangeFieldIsSetFieldOtherwise(t *testing.T) {
	p := plan.Default()
	assert.False(t, plan.ChangeField(&p, plan.Field{Path: "no.such", Number: 1}))
	assert.Equal(t, plan.Default(), p)
	assert.True(t, plan.ChangeField(&p, plan.Field{Path: "seat.depth", Number: 7}))
	want := plan.Default()
	want.Seat.Depth = 7
	assert.Equal(t, want, p)
}
