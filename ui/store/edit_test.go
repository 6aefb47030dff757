package store_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/store"
)

func TestANewStoreHasNothingToUndoOrSave(t *testing.T) {
	s := store.New(withStops(0, 30))
	_, undo := s.CanUndo()
	_, redo := s.CanRedo()
	assert.False(t, undo)
	assert.False(t, redo)
	assert.False(t, s.Unsaved())
	assert.Empty(t, s.Path())
	assert.Equal(t, -1, s.Selection().Lead)
	assert.Len(t, s.Report().Plate.Seats, 2, "it is solved at once")
	s.Undo()
	s.Redo()
	assert.Equal(t, []float64{0, 30}, angles(s))
}

// Undo has no limit: it leads back through every edit, each under its name, and
// redo forward again.
func TestUndoLeadsAllTheWayBack(t *testing.T) {
	const edits = 1000
	s := store.New(plan.Default())
	for i := range edits {
		setTitle(t, s, fmt.Sprint(i))
	}
	for i := edits - 1; i >= 0; i-- {
		require.Equal(t, fmt.Sprint(i), s.Plan().Title)
		require.Equal(t, fmt.Sprintf("title %d", i), undoName(s))
		s.Undo()
	}
	require.Equal(t, plan.Default(), s.Plan())
	require.Empty(t, undoName(s))
	for i := range edits {
		name, ok := s.CanRedo()
		require.True(t, ok)
		require.Equal(t, fmt.Sprintf("title %d", i), name)
		s.Redo()
		require.Equal(t, fmt.Sprint(i), s.Plan().Title)
	}
	_, ok := s.CanRedo()
	require.False(t, ok)
}

func TestAnEditAfterUndoDropsWhatCouldBeRedone(t *testing.T) {
	s := store.New(plan.Default())
	setTitle(t, s, "a")
	setTitle(t, s, "b")
	s.Undo()
	setTitle(t, s, "c")
	_, ok := s.CanRedo()
	assert.False(t, ok)
	s.Undo()
	assert.Equal(t, "a", s.Plan().Title)
}

func TestARefusedEditChangesNothing(t *testing.T) {
	for why, change := range map[string]func(*plan.Plan){
		"out of range":              func(p *plan.Plan) { p.Stops[0].Angle = 400 },
		"no number":                 func(p *plan.Plan) { p.Turntable.Diameter = math.NaN() },
		"no catch left":             func(p *plan.Plan) { p.Catches = nil },
		"a stop on a missing catch": func(p *plan.Plan) { p.Stops[1].Catches = []string{"Z"} },
		"two at once":               func(p *plan.Plan) { p.Stops[0].Angle, p.FaceGap = 400, -70 },
	} {
		s := store.New(withStops(0, 30))
		setTitle(t, s, "before")
		s.SelectStop(1)
		before, report, selection := s.Plan().Clone(), s.Report(), s.Selection()
		told := heard(s)

		err := s.Edit("bad", change)
		var problems plan.Problems
		require.ErrorAs(t, err, &problems, why)
		assert.NotEmpty(t, problems, why)
		assert.Equal(t, before, s.Plan(), why)
		assert.Same(t, report.Plate, s.Report().Plate, why)
		assert.Equal(t, selection, s.Selection(), why)
		assert.Equal(t, "title before", undoName(s), why)
		assert.Empty(t, *told, why)
	}
}

func TestAnEditThatAltersNothingIsNotRecorded(t *testing.T) {
	s := store.New(withStops(0, 30))
	setTitle(t, s, "a")
	s.Undo()
	told := heard(s)
	require.NoError(t, s.Edit("nothing", func(*plan.Plan) {}))
	require.NoError(t, s.Replace("nothing", s.Plan()))
	require.NoError(t, s.ChangeStops("nothing", func(p *plan.Stop) { p.Angle = 90 }))
	require.NoError(t, s.ChangeStops("none there", func(p *plan.Stop) { p.Angle = 90 }, -1, 2, 100))
	assert.Empty(t, undoName(s))
	assert.Empty(t, *told)
	_, ok := s.CanRedo()
	assert.True(t, ok, "what was undone can still be redone")
}

// Readings are a log of what was measured, not decisions: undo and redo leave
// them as they are.
func TestUndoLeavesTheLogAlone(t *testing.T) {
	reading := plan.Reading{Angle: 30, Measured: 30.1, Date: "2026-11-20"}
	drilled := plan.AsDrilled{Angle: 30, X: 60, Y: 80}
	s := store.New(withStops(0, 30))
	setTitle(t, s, "a")
	require.NoError(t, s.Edit("reading", func(p *plan.Plan) {
		p.Readings, p.AsDrilled = []plan.Reading{reading}, []plan.AsDrilled{drilled}
	}))
	for _, step := range []func(){s.Undo, s.Undo, s.Redo, s.Redo} {
		step()
		assert.Equal(t, []plan.Reading{reading}, s.Plan().Readings)
		assert.Equal(t, []plan.AsDrilled{drilled}, s.Plan().AsDrilled)
	}
	assert.Equal(t, "a", s.Plan().Title)
}

func TestAGestureIsOneEdit(t *testing.T) {
	s := store.New(withStops(0, 30))
	setTitle(t, s, "before")
	s.BeginGesture()
	for a := 31.0; a <= 40; a++ {
		moveStop(t, s, 1, a)
	}
	s.Undo()
	assert.Equal(t, []float64{0, 40}, angles(s), "undo waits until a gesture has ended")
	s.EndGesture()

	s.Undo()
	assert.Equal(t, []float64{0, 30}, angles(s))
	assert.Equal(t, "title before", undoName(s))
	s.Redo()
	assert.Equal(t, []float64{0, 40}, angles(s))

	moveStop(t, s, 1, 50)
	moveStop(t, s, 1, 60)
	s.Undo()
	assert.Equal(t, []float64{0, 50}, angles(s), "edits after a gesture are apart again")
}

func TestAGestureThatCameBackLeavesNothingToUndo(t *testing.T) {
	s := store.New(withStops(0, 30))
	s.BeginGesture()
	s.EndGesture()
	assert.Empty(t, undoName(s), "nothing was done in it")

	s.BeginGesture()
	moveStop(t, s, 1, 31)
	assert.Equal(t, "move", undoName(s))
	moveStop(t, s, 1, 30)
	told := heard(s)
	s.EndGesture()
	assert.Empty(t, undoName(s))
	assert.Equal(t, []store.Change{store.FileChanged}, *told, "the menu names another edit to undo")
	assert.False(t, s.Unsaved())
}

func TestARefusedEditWithinAGestureKeepsTheLastGoodPlan(t *testing.T) {
	s := store.New(withStops(0, 350))
	s.BeginGesture()
	moveStop(t, s, 1, 355)
	require.Error(t, s.ChangeStops("move", func(p *plan.Stop) { p.Angle = 361 }, 1))
	s.EndGesture()
	assert.Equal(t, []float64{0, 355}, angles(s))
	s.Undo()
	assert.Equal(t, []float64{0, 350}, angles(s))
}

func TestUnsavedComparesWithTheFile(t *testing.T) {
	s := store.New(withStops(0, 30))
	moveStop(t, s, 1, 31)
	assert.True(t, s.Unsaved())
	moveStop(t, s, 1, 30)
	assert.False(t, s.Unsaved(), "the plan is again as the file holds it")
	moveStop(t, s, 1, 45)
	told := heard(s)
	s.Saved("/plates/a.stopwright")
	assert.Equal(t, []store.Change{store.FileChanged}, *told)
	assert.False(t, s.Unsaved())
	assert.Equal(t, "/plates/a.stopwright", s.Path())
	s.Undo()
	assert.True(t, s.Unsaved(), "an undone edit differs from the file")
	s.Redo()
	assert.False(t, s.Unsaved())
}

func TestLoadReplacesEverything(t *testing.T) {
	s := store.New(withStops(0, 30))
	setTitle(t, s, "a")
	setTitle(t, s, "b")
	s.Undo()
	s.SelectStop(1)
	s.SetTurn(12)
	s.BeginGesture()
	moveStop(t, s, 1, 31)
	told := heard(s)

	s.Load(withStops(5, 6, 7), "/plates/b.stopwright")
	assert.Equal(t, []store.Change{store.Everything}, *told)
	assert.Equal(t, []float64{5, 6, 7}, angles(s))
	assert.Len(t, s.Report().Plate.Stops, 3)
	assert.Equal(t, "/plates/b.stopwright", s.Path())
	assert.Empty(t, undoName(s))
	_, redo := s.CanRedo()
	assert.False(t, redo)
	assert.False(t, s.Unsaved())
	assert.Empty(t, s.Selection().Stops)
	assert.Zero(t, s.Turn())
	moveStop(t, s, 0, 5.5)
	moveStop(t, s, 0, 5.75)
	s.Undo()
	assert.Equal(t, []float64{5.5, 6, 7}, angles(s), "the gesture under way ended with its plan")
}
