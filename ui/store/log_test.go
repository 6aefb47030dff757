package store_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/ui/store"
)

func TestTheLogMakesNoStep(t *testing.T) {
	reading := plan.Reading{Angle: 30, Measured: 30.1, Date: "2026-11-20"}
	s := store.New(withStops(0, 30))
	setTitle(t, s, "a")
	told := heard(s)
	require.NoError(t, s.Log(func(p *plan.Plan) {
		p.Readings = append(p.Readings, reading)
		p.Title = "not by the log"
	}))
	assert.Equal(t, []store.Change{store.PlanChanged | store.FileChanged}, *told)
	assert.Equal(t, []plan.Reading{reading}, s.Plan().Readings)
	assert.Equal(t, "a", s.Plan().Title, "the log changes nothing else")
	assert.Equal(t, "title a", undoName(s))
	assert.True(t, s.Unsaved(), "a reading is to be saved too")

	s.Undo()
	s.Redo()
	assert.Equal(t, []plan.Reading{reading}, s.Plan().Readings)
	require.NoError(t, s.Log(func(p *plan.Plan) { p.Readings = nil }))
	s.Undo()
	assert.Empty(t, s.Plan().Readings, "undo does not bring back what was struck off the log")
}

// A tick is kept when the decisions it was made under are taken back.
func TestUndoLeavesTicks(t *testing.T) {
	s := store.New(withStops(0, 30))
	setTitle(t, s, "a")
	tick := func() {
		require.NoError(t, s.Log(func(p *plan.Plan) { p.Ticks = append(p.Ticks, "final base 0.00,105.00") }))
	}
	tick()
	s.Undo()
	assert.Len(t, s.Plan().Ticks, 1)
	s.Redo()
	tick()
	s.Undo()
	assert.Len(t, s.Plan().Ticks, 2)
}

func TestARefusedLogChangesNothing(t *testing.T) {
	s := store.New(withStops(0, 30))
	told := heard(s)
	var problems plan.Problems
	require.ErrorAs(t, s.Log(func(p *plan.Plan) { p.Readings = []plan.Reading{{Angle: 400}} }), &problems)
	require.NoError(t, s.Log(func(*plan.Plan) {}), "nothing to log is no fault")
	assert.Empty(t, s.Plan().Readings)
	assert.Empty(t, *told)
}

func TestAStudyHoldsForOnePlanOnly(t *testing.T) {
	s := store.New(withStops(0, 30))
	_, done := s.Studied()
	require.False(t, done)
	studied, err := detent.Study(context.Background(), s.Report())
	require.NoError(t, err)

	told := heard(s)
	s.SetStudied(studied)
	assert.Equal(t, []store.Change{store.StudyChanged}, *told)
	got, done := s.Studied()
	require.True(t, done)
	assert.Same(t, s.Report().Plate, got.Plate)

	setTitle(t, s, "another plan")
	_, done = s.Studied()
	assert.False(t, done, "it was the study of the plan before")
	*told = nil
	s.SetStudied(studied)
	_, done = s.Studied()
	assert.False(t, done, "a study that comes too late is dropped")
	assert.Empty(t, *told)
}

// To take the tool out takes its marks as well, and so does to take it out again;
// undo brings both back.
func TestToTakeTheToolOutAgainIsToTakeItOut(t *testing.T) {
	p := withStops(0, 30)
	tool := plan.NewTool()
	tool.Offset, tool.Fence = 1.5, 12
	p.Tool = &tool
	s := store.New(p)
	mark := func(x float64) {
		require.NoError(t, s.Log(func(p *plan.Plan) { p.Tool.Marks = append(p.Tool.Marks, plan.Mark{Angle: 30, X: x}) }))
	}
	mark(100)
	with := s.Plan()
	require.NoError(t, s.Edit("take the tool out", func(p *plan.Plan) { p.Tool = nil }))
	setTitle(t, s, "without a tool")
	without := s.Plan()
	require.Nil(t, without.Tool)
	for range 2 {
		s.Undo()
		s.Undo()
		assert.Equal(t, with, s.Plan())
		s.Redo()
		assert.Nil(t, s.Plan().Tool)
		s.Redo()
		assert.Equal(t, without, s.Plan())
	}
	s.Undo()
	s.Undo()
	mark(120)
	s.Redo()
	assert.Nil(t, s.Plan().Tool, "marks logged meanwhile go too")
	s.Undo()
	assert.Len(t, s.Plan().Tool.Marks, 2, "and come back")
}

// Marks logged for a tool that undo takes out again are kept, with a tool to keep
// them with, however often.
func TestMarksOutliveTheToolThatUndoTakesOut(t *testing.T) {
	s := store.New(withStops(0, 30))
	require.NoError(t, s.Edit("give it a tool", func(p *plan.Plan) {
		tool := plan.NewTool()
		tool.Offset = 1.5
		p.Tool = &tool
	}))
	s.Undo()
	s.Redo()
	require.NoError(t, s.Log(func(p *plan.Plan) { p.Tool.Marks = []plan.Mark{{Angle: 30, X: 100}} }))
	given := s.Plan()
	for range 2 {
		s.Undo()
		require.NotNil(t, s.Plan().Tool)
		assert.Len(t, s.Plan().Tool.Marks, 1)
		s.Redo()
		assert.Equal(t, given, s.Plan())
	}
}
