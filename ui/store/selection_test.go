package store_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// flawed is a plan of which seats 0 and 1 degree apart run into each other.
func flawed() *store.Store { return store.New(withStops(0, 1, 90)) }

func chosen(s *store.Store) []int { return s.Selection().Stops }

func TestSelectOneStop(t *testing.T) {
	s := store.New(withStops(0, 30, 60))
	told := heard(s)
	s.SelectStop(2)
	assert.Equal(t, store.Selection{Stops: []int{2}, Lead: 2, Finding: -1, Feature: -1}, s.Selection())
	s.SelectStop(2)
	assert.Equal(t, []store.Change{store.SelectionChanged}, *told, "the same again is no change")
	for _, none := range []int{-1, 3, -7} {
		s.SelectStop(1)
		s.SelectStop(none)
		assert.Equal(t, store.Selection{Lead: -1, Finding: -1, Feature: -1}, s.Selection(), "there is no stop %d", none)
	}
}

func TestToggleStops(t *testing.T) {
	s := store.New(withStops(0, 30, 60, 90))
	for _, c := range []struct {
		toggle int
		want   []int
		lead   int
	}{
		{2, []int{2}, 2},
		{0, []int{0, 2}, 0},
		{3, []int{0, 2, 3}, 3},
		{3, []int{0, 2}, 2},
		{-1, []int{0, 2}, 2},
		{4, []int{0, 2}, 2},
		{0, []int{2}, 2},
		{2, []int{}, -1},
	} {
		s.ToggleStop(c.toggle)
		assert.Equal(t, c.want, chosen(s), "toggled %d", c.toggle)
		assert.Equal(t, c.lead, s.Selection().Lead, "toggled %d", c.toggle)
	}
}

func TestSelectAllStops(t *testing.T) {
	s := store.New(withStops(0, 30, 60))
	s.SelectAllStops()
	assert.Equal(t, store.Selection{Stops: []int{0, 1, 2}, Lead: 2, Finding: -1, Feature: -1}, s.Selection())
	assert.True(t, s.Selection().Has(1))
	assert.False(t, s.Selection().Has(3))
	s.Load(plan.Default(), "")
	s.SelectAllStops()
	assert.Equal(t, -1, s.Selection().Lead, "of no stops none leads")
}

func TestAStopOrAFindingIsSelectedNeverBoth(t *testing.T) {
	s := flawed()
	require.NotEmpty(t, s.Report().Findings)
	s.SelectStop(2)
	s.SelectFinding(0)
	assert.Equal(t, store.Selection{Lead: -1, Finding: 0, Feature: -1}, s.Selection())
	s.SelectStop(1)
	assert.Equal(t, store.Selection{Stops: []int{1}, Lead: 1, Finding: -1, Feature: -1}, s.Selection())
	for _, none := range []int{-1, -9, len(s.Report().Findings)} {
		s.SelectFinding(0)
		s.SelectFinding(none)
		assert.Equal(t, -1, s.Selection().Finding, "there is no finding %d", none)
	}
}

// A selection is of places in lists, so it must stay inside them whatever an
// edit does to the lists.
func TestASelectionStaysWithinThePlan(t *testing.T) {
	s := flawed()
	s.SelectFinding(0)
	moveStop(t, s, 1, 45)
	assert.Equal(t, -1, s.Selection().Finding, "findings are made anew by every edit")

	s.SelectAllStops()
	require.NoError(t, s.Edit("fewer", func(p *plan.Plan) { p.Stops = p.Stops[:2] }))
	assert.Equal(t, store.Selection{Stops: []int{0, 1}, Lead: 1, Finding: -1, Feature: -1}, s.Selection())
	require.NoError(t, s.Edit("none", func(p *plan.Plan) { p.Stops = nil }))
	assert.Equal(t, -1, s.Selection().Lead)
	assert.Empty(t, chosen(s))
}

// A selection of places in a list would become one of other stops when undo
// brings another list back, and Delete would then take off the wrong one.
func TestUndoBringsTheSelectionBack(t *testing.T) {
	s := store.New(withStops(0, 30, 60))
	s.SelectStop(1)
	require.NoError(t, s.AddStops("add", plan.Stop{Angle: -20}))
	require.NoError(t, s.RemoveStops("remove", 2, 3))
	require.Equal(t, []float64{-20, 0}, angles(s))
	s.Undo()
	assert.Equal(t, -20.0, s.Plan().Stops[s.Selection().Lead].Angle)
	s.Undo()
	assert.Equal(t, 30.0, s.Plan().Stops[s.Selection().Lead].Angle)
	s.Redo()
	s.Redo()
	assert.Equal(t, []int{1}, chosen(s))
}

func TestSortingKeepsTheSelection(t *testing.T) {
	s := store.New(withStops(40, -5, 30, 0))
	s.ToggleStop(2)
	s.ToggleStop(0)
	require.NoError(t, s.SortStops("sort"))
	require.Equal(t, []float64{-5, 0, 30, 40}, angles(s))
	assert.Equal(t, store.Selection{Stops: []int{2, 3}, Lead: 3, Finding: -1, Feature: -1}, s.Selection())
}

func TestSortingAListInOrderLeavesTheFindingSelected(t *testing.T) {
	s := flawed()
	s.SelectFinding(0)
	require.NoError(t, s.SortStops("sort"))
	assert.Equal(t, 0, s.Selection().Finding)
}

func TestSelectionOfEarlierTimesIsNotWrittenTo(t *testing.T) {
	s := store.New(withStops(0, 30, 60))
	s.ToggleStop(0)
	s.ToggleStop(2)
	before := s.Selection()
	s.ToggleStop(1)
	require.NoError(t, s.RemoveStops("remove", 2))
	assert.Equal(t, []int{0, 2}, before.Stops)
}

func TestMarksShowWhatIsSelectedAndWhatIsAtFault(t *testing.T) {
	s := flawed()
	require.NoError(t, s.ChangeStops("both", func(p *plan.Stop) { p.BothSides = true }, 2))
	pl := s.Report().Plate
	at := map[float64]int{} // seat by its stop's angle
	for i, seat := range pl.Seats {
		at[seat.Angle.Degrees()] = i
	}
	m := s.Marks()
	assert.Equal(t, map[int]bool{at[0]: true, at[1]: true}, m.Faulty.Seats)
	assert.Empty(t, m.Selected.Seats)

	s.SelectStop(2)
	assert.Equal(t, map[int]bool{at[90]: true, at[-90]: true}, s.Marks().Selected.Seats, "the other side too")
	s.SelectFinding(0)
	m = s.Marks()
	assert.Equal(t, map[int]bool{at[0]: true, at[1]: true}, m.Selected.Seats)
}

func TestMarksNameFeaturesPocketsAndTracks(t *testing.T) {
	p := withStops(0)
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.Hole, X: -105, Diameter: 5}, // on the ball's track
		{Part: plan.PartTurntable, Kind: plan.Hole, Y: 105, Diameter: 5},
	}
	s := store.New(p)
	m := s.Marks()
	assert.Equal(t, map[int]bool{0: true, 1: true}, m.Faulty.Features)
	assert.Equal(t, map[int]bool{0: true}, m.Faulty.Tracks)
	assert.Equal(t, map[int]bool{0: true}, m.Faulty.Pockets, "the hole lies where the catch goes in")
}

func TestStopOfSeat(t *testing.T) {
	s := store.New(withStops(40, -20, 10))
	require.NoError(t, s.ChangeStops("both", func(p *plan.Stop) { p.BothSides = true }, 0))
	for i, seat := range s.Report().Plate.Seats {
		want := map[float64]int{40: 0, -40: 0, -20: 1, 10: 2}[seat.Angle.Degrees()]
		assert.Equal(t, want, s.StopOfSeat(i), "seat of %v", seat.Angle)
	}
}
