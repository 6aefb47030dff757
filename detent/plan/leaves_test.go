package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// An allowance may not take a hole down to nothing: what is left to be cut is
// at least the smallest size of its kind.
func TestAllowancesLeaveAHole(t *testing.T) {
	for _, c := range []struct {
		why    string
		change func(*plan.Plan)
		want   string // "" accepted
	}{
		{"a bore of exactly 0.1 mm", func(p *plan.Plan) { p.Catch.BodyDiameter, p.Catch.BodyAllowance = 0.6, -0.5 }, ""},
		{
			"a bore of nothing", func(p *plan.Plan) { p.Catch.BodyDiameter, p.Catch.BodyAllowance = 0.5, -0.5 },
			"catch.body_allowance is -0.5, must be at least -0.4 mm, so that with catch.body_diameter 0.1 mm is left",
		},
		{"a collar a little tighter than the table", func(p *plan.Plan) { tight(p, 5, -1) }, ""},
		{
			"a collar with no bore", func(p *plan.Plan) { tight(p, 4, -5) },
			"collar.clearance is -5, must be at least -3.9 mm, so that with turntable.diameter 0.1 mm is left",
		},
		{"a table from which the clearance leaves a little", func(p *plan.Plan) { tight(p, 5, 4); p.Making.ClearanceFrom = plan.FromTurntable }, ""},
		{
			"a table from which the clearance leaves nothing",
			func(p *plan.Plan) { tight(p, 5, 5); p.Making.ClearanceFrom = plan.FromTurntable },
			"collar.clearance is 5, must be so little that turntable and collar's bore are left 0.1 mm",
		},
		{"half of it leaves enough", func(p *plan.Plan) { tight(p, 5, 5); p.Making.ClearanceFrom = plan.FromBoth }, ""},
		{"a press fit on the pivot", func(p *plan.Plan) { p.Making.Pivot.Base = -0.1 }, ""},
		{
			"a pivot bore fitted down to nothing", func(p *plan.Plan) { p.Turntable.PivotBore, p.Making.Pivot.Base = 5, -5 },
			"making.pivot.base is -5, must be at least -4.9 mm, so that with turntable.pivot_bore 0.1 mm is left",
		},
		{"no pivot bore needs no fit", func(p *plan.Plan) { p.Turntable.PivotBore, p.Making.Pivot.Base = 0, -5 }, ""},
		{"a flange that stands off the face needs no recess", func(p *plan.Plan) { p.Catch.RecessAllowance = -5 }, ""},
	} {
		p := plan.Default()
		c.change(&p)
		err := plan.Validate(p)
		if c.want == "" {
			assert.NoError(t, err, c.why)
			continue
		}
		require.Error(t, err, c.why)
		assert.Equal(t, c.want, err.Error(), c.why)
	}
}

func tight(p *plan.Plan, diameter, clearance float64) {
	c := plan.NewCollar(p.Turntable)
	c.Clearance = clearance
	p.Turntable.Diameter, p.Collar = diameter, &c
}
