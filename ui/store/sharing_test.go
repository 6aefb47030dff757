package store_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// scribble writes to everything an edit may write to.
func scribble(p *plan.Plan) {
	for i := range p.Stops {
		p.Stops[i].Angle++
		p.Stops[i].Label += "!"
		for k := range p.Stops[i].Catches {
			p.Stops[i].Catches[k] = "B"
		}
	}
	for i := range p.Catches {
		p.Catches[i].Azimuth++
	}
	for i := range p.Features {
		p.Features[i].X++
	}
	p.Collar.Clearance += 0.1
	*p.Shop.Reference++
	p.Tool.Offset++
	p.Tool.Marks[0].X++
}

// sharingPlan has one of everything that a plan holds by reference.
func sharingPlan() plan.Plan {
	p := withStops(0, 30)
	p.Stops[1].Catches = []string{"A"}
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 90, Radius: 90})
	p.Features = []plan.Feature{plan.NewFeature(p)}
	collar, reference := plan.NewCollar(p.Turntable), 0.0
	p.Collar, p.Shop.Reference = &collar, &reference
	tool := plan.NewTool()
	tool.Marks = []plan.Mark{{Angle: 30, X: 100}}
	p.Tool = &tool
	return p
}

// Every plan of the undo list stays as it was whatever later edits write, and
// so does the plan a report was made of.
func TestPlansOfTheUndoListShareNothing(t *testing.T) {
	edits := []func(s *store.Store) error{
		func(s *store.Store) error { return s.Edit("scribble", scribble) },
		func(s *store.Store) error { return s.AddStops("add", plan.Stop{Angle: 15}, plan.Stop{Angle: -4}) },
		func(s *store.Store) error { return s.RemoveStops("remove", 0, 2) },
		func(s *store.Store) error {
			return s.ChangeStops("change", func(p *plan.Stop) { p.Angle, p.Catches = 77, nil }, 0)
		},
		func(s *store.Store) error { return s.AddStops("add", plan.Stop{Angle: -100}) },
		func(s *store.Store) error { return s.SortStops("sort") },
		func(s *store.Store) error { return s.Edit("scribble", scribble) },
	}
	s := store.New(sharingPlan())
	var plans, copies []plan.Plan
	for _, edit := range edits {
		plans, copies = append(plans, s.Plan()), append(copies, s.Plan().Clone())
		require.NoError(t, edit(s))
	}
	plans, copies = append(plans, s.Plan()), append(copies, s.Plan().Clone())
	for i := range plans {
		require.Equal(t, copies[i], plans[i], "plan %d", i)
		if i > 0 {
			require.NotEqual(t, copies[i-1], copies[i], "edit %d does something", i)
		}
	}
	for i := len(edits) - 1; i >= 0; i-- {
		s.Undo()
		want := copies[i].WithLogOf(s.Plan()) // marks are a log: they stay as they were last written
		require.Equal(t, want, s.Plan())
		require.Equal(t, want, s.Report().Plate.Plan, "the report is that of the plan")
	}
	require.NoError(t, s.Edit("scribble", scribble))
	for i := range plans {
		require.Equal(t, copies[i], plans[i], "plan %d after undo", i)
	}
	// No two of them have memory in common: not even a writer that kept to no
	// rule could reach from one into another.
	for i := range plans {
		scribble(&plans[i])
		for k := i + 1; k < len(plans); k++ {
			require.Equal(t, copies[k], plans[k], "plan %d, after writing to plan %d", k, i)
		}
	}
}
