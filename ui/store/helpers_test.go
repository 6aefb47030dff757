package store_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// angleSlack is how far, in degrees, an angle may be off by the rounding of a
// sine and its inverse.
const angleSlack = 1e-9

// withStops returns the default plan with stops at the angles given.
func withStops(angles ...float64) plan.Plan {
	p := plan.Default()
	for _, a := range angles {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	return p
}

// angles returns the angles of the store's stops, in the plan's order.
func angles(s *store.Store) []float64 {
	out := []float64{}
	for _, stop := range s.Plan().Stops {
		out = append(out, stop.Angle)
	}
	return out
}

// heard returns a list that gathers what the store tells from now on.
func heard(s *store.Store) *[]store.Change {
	var told []store.Change
	s.OnChange(func(c store.Change) { told = append(told, c) })
	return &told
}

// setTitle is the plainest edit.
func setTitle(t testing.TB, s *store.Store, title string) {
	t.Helper()
	require.NoError(t, s.Edit("title "+title, func(p *plan.Plan) { p.Title = title }))
}

// moveStop moves one stop.
func moveStop(t testing.TB, s *store.Store, stop int, angle float64) {
	t.Helper()
	require.NoError(t, s.ChangeStops("move", func(p *plan.Stop) { p.Angle = angle }, stop))
}

// undoName is the name of the edit that undo would take back; "": none.
func undoName(s *store.Store) string {
	name, _ := s.CanUndo()
	return name
}

// edited is what the store tells of an edit.
const edited = store.PlanChanged | store.SelectionChanged | store.FileChanged
