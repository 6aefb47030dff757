package router_test

import (
	"bytes"
	"errors"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/router"
)

// randomPlan returns a plan of sizes that a shop may have, and some that no
// program may be made for.
func randomPlan(t *rapid.T) plan.Plan {
	number := func(lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, "number") }
	whether := func() bool { return rapid.Bool().Draw(t, "whether") }
	p := mitres(rapid.SampledFrom(plantest.Arrangements).Draw(t, "arrangement"))
	p.Catches[0].Azimuth, p.Catches[0].Radius = number(-360, 360), number(60, 120)
	p.Stops[1].Angle = number(-180, 180)
	p.Turntable.PivotBore, p.Turntable.Thickness, p.Base.Thickness = number(4, 20), number(8, 40), number(8, 40)
	p.Catch.BodyDiameter, p.Catch.BodyLength, p.Catch.FlangeDiameter = number(3, 16), number(4, 30), number(17, 24)
	p.Seat.Diameter, p.Seat.Depth = number(2, 8), number(1, 12)
	p.Seat.DrillPoint = rapid.SampledFrom([]float64{90, 118, 180}).Draw(t, "point")
	p.Seat.ReliefDiameter = number(1, 1.9)
	if whether() {
		p.Seat.Form = plan.Countersunk
		p.Seat.Depth = 0
	}
	for i := range p.Features {
		f := &p.Features[i]
		f.X, f.Y, f.Diameter = number(-120, 120), number(-120, 120), number(1, 40)
	}
	if whether() {
		p = fitted(p)
	}
	r := p.Router
	r.Units = rapid.SampledFrom([]string{plan.UnitsMM, plan.UnitsInch}).Draw(t, "units")
	r.SafeHeight, r.Approach = number(2, 30), number(0.1, 2.5)
	r.DepthPerPass, r.Peck = number(0.3, 5), number(0.2, 10)
	r.Cutter, r.CutterLength, r.DrillTo = number(0.8, 9), number(15, 60), number(0.1, 13)
	r.Breakthrough, r.SpoilBoard = number(0, 2), number(0, 12)
	r.Canned, r.ToolChange = whether(), plan.ChangeM6
	return p
}

// Whatever the sizes: a program is refused, with at least one reason in words,
// or run by the rules it makes the holes of the report and no others.
func TestAnyProgramIsRefusedOrTrue(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		p := randomPlan(r)
		require.NoError(r, plan.Validate(p))
		pl := plate.New(p)
		for _, part := range []plan.Part{plan.PartBase, plan.PartTurntable} {
			program, err := router.New(pl, part, words.English())
			if err != nil {
				var refused *router.Refusal
				require.True(r, errors.As(err, &refused))
				require.NotEmpty(r, refused.Problems)
				require.NotContains(r, err.Error(), "[router")
				continue
			}
			var file bytes.Buffer
			require.NoError(r, router.Write(&file, program, drawing.Info{Words: words.English()}))
			m := &machine{at: vec{0, 0, 50}, backOff: 0.254}
			require.NoError(r, interpret(file.String(), m))
			assertRemoves(r, m, diameters(program), wantedIn(r, p, part))
		}
	})
}
