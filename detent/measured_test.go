package detent_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/proving"
)

func TestMeasured(t *testing.T) {
	gap := 100 * math.Tan(0.4*math.Pi/180) // 0.4 degrees over 100 mm
	for _, c := range []struct {
		why     string
		turn    plan.Sense
		turning plan.Turning
		m       detent.Measurement
		want    float64
	}{
		{"read as it is", plan.Clockwise, plan.ToolTurns, detent.Measurement{proving.Typed, 36, 36.12, 0, 0}, 36.12},
		{"a pair that is sharper than square has mitres too large", plan.Clockwise, plan.ToolTurns, detent.Measurement{proving.Square, 45, gap, 100, 0}, 45.2},
		{"and so it has on the other side", plan.Clockwise, plan.ToolTurns, detent.Measurement{proving.Square, -45, gap, 100, 0}, -45.2},
		{"the sense of turning is nothing to a mitre", plan.Counterclockwise, plan.FenceTurns, detent.Measurement{proving.Square, 45, gap, 100, 0}, 45.2},
		{"a frame open outside has mitres too small", plan.Clockwise, plan.ToolTurns, detent.Measurement{proving.Ring, 45, -2 * 50 * math.Sin(0.4*math.Pi/180), 50, 0}, 45 - 0.1},
		{"a strip wider at the near end leans clockwise", plan.Clockwise, plan.ToolTurns, detent.Measurement{proving.FiveCut, 0, 20 + gap, 20, 100}, 0.1},
		{"which is backwards for a table that counts the other way", plan.Counterclockwise, plan.ToolTurns, detent.Measurement{proving.FiveCut, 0, 20 + gap, 20, 100}, -0.1},
		{"a fence that turns leans the tool the other way", plan.Clockwise, plan.FenceTurns, detent.Measurement{proving.FiveCut, 0, 20 + gap, 20, 100}, -0.1},
		{"half of what turning over shows", plan.Clockwise, plan.ToolTurns, detent.Measurement{proving.Flip, 0, 2 * 100 * math.Sin(0.2*math.Pi/180), 100, 0}, 0.2},
	} {
		p := plan.NewPlan()
		p.Arrangement.PositiveTurn = c.turn
		tool := plan.NewTool()
		tool.Turning = c.turning
		p.Tool = &tool
		got, ok := detent.Solve(p).Measured(c.m)
		require.True(t, ok, c.why)
		assert.InDelta(t, c.want, got.Degrees(), 1e-9, c.why)
	}
	r := detent.Solve(plan.NewPlan())
	for why, m := range map[string]detent.Measurement{
		"no leg":                           {proving.Square, 45, 1, 0, 0},
		"no distance":                      {proving.FiveCut, 0, 1, 1, 0},
		"a method that the stop suits not": {proving.FiveCut, 45, 1, 1, 1},
		"not a number":                     {proving.Flip, 0, 1, math.NaN(), 0},
	} {
		_, ok := r.Measured(m)
		assert.False(t, ok, why)
	}
}
