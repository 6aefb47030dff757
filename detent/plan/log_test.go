package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
)

func TestWithLogOf(t *testing.T) {
	marks := []plan.Mark{{Angle: 30, X: 100}}
	readings := []plan.Reading{{Angle: 30, Measured: 30.1}}
	withTool := func(offset float64, marks []plan.Mark) plan.Plan {
		p := plan.NewPlan()
		tool := plan.NewTool()
		tool.Offset, tool.Marks = offset, marks
		p.Tool, p.Readings = &tool, readings
		return p
	}
	decided, measured := withTool(1, nil), withTool(2, marks)

	got := decided.WithLogOf(measured)
	assert.Equal(t, 1.0, got.Tool.Offset, "where the tool lies was decided")
	assert.Equal(t, marks, got.Tool.Marks, "what the board shows was measured")
	assert.Equal(t, readings, got.Readings)
	assert.Empty(t, decided.Tool.Marks, "the old plan is as it was")

	bare := plan.NewPlan()
	got = bare.WithLogOf(measured)
	assert.Equal(t, marks, got.Tool.Marks, "marks are kept without the decision to have a tool")
	assert.Zero(t, got.Tool.Offset, "but not where it was thought to lie")
	assert.Nil(t, bare.WithLogOf(decided).Tool, "a tool without marks is a decision")
	assert.Equal(t, decided.Tool, decided.WithLogOf(bare).Tool)
}
