package store_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/store"
)

func TestEachChangeIsToldAsWhatItIs(t *testing.T) {
	s := store.New(withStops(0, 1))
	for _, c := range []struct {
		why  string
		do   func()
		want []store.Change
	}{
		{"an edit", func() { setTitle(t, s, "a") }, []store.Change{edited}},
		{"undo", s.Undo, []store.Change{edited}},
		{"redo", s.Redo, []store.Change{edited}},
		{"redo with nothing left", s.Redo, nil},
		{"a stop selected", func() { s.SelectStop(1) }, []store.Change{store.SelectionChanged}},
		{"a finding selected", func() { s.SelectFinding(0) }, []store.Change{store.SelectionChanged}},
		{"another view", func() { s.SetView(store.View{Snap: 1}) }, []store.Change{store.ViewChanged}},
		{"the same view", func() { s.SetView(store.View{Snap: 1}) }, nil},
		{"the table turned", func() { s.SetTurn(3) }, []store.Change{store.TurnChanged}},
		{"saved", func() { s.Saved("a.stopwright") }, []store.Change{store.FileChanged}},
		{"a stop added and selected", func() {
			require.NoError(t, s.AddStops("add", plan.Stop{Angle: 50}))
		}, []store.Change{edited, store.SelectionChanged}},
		{"loaded", func() { s.Load(plan.Default(), "") }, []store.Change{store.Everything}},
	} {
		told := heard(s)
		c.do()
		assert.Equal(t, c.want, *told, c.why)
	}
}

func TestListenersAreToldInTheirOrderAndSeeTheNewState(t *testing.T) {
	s := store.New(withStops(0))
	var order []string
	for _, name := range []string{"first", "second"} {
		s.OnChange(func(store.Change) {
			order = append(order, name)
			assert.Equal(t, "new", s.Plan().Title)
			assert.Equal(t, "new", s.Report().Plate.Plan.Title)
		})
	}
	setTitle(t, s, "new")
	assert.Equal(t, []string{"first", "second"}, order)
}

func TestLayersAreHiddenAndShownAgain(t *testing.T) {
	s := store.New(plan.Default())
	assert.Zero(t, s.View().Layers, "at first all is shown")
	s.ToggleLayer(store.Angles)
	s.ToggleLayer(store.CollarPart)
	assert.True(t, s.View().Layers.Hides(store.Angles))
	assert.True(t, s.View().Layers.Hides(store.CollarPart))
	assert.False(t, s.View().Layers.Hides(store.BasePart))
	s.ToggleLayer(store.Angles)
	assert.False(t, s.View().Layers.Hides(store.Angles))
	assert.True(t, s.View().Layers.Hides(store.CollarPart), "each by itself")
}

func TestEachPartHasALayerOfItsOwn(t *testing.T) {
	seen := map[store.Layers]bool{}
	for _, part := range []plan.Part{plan.PartBase, plan.PartTurntable, plan.PartCollar} {
		seen[store.PartLayer(part)] = true
	}
	assert.Len(t, seen, 3)
	assert.False(t, seen[store.Angles] || seen[store.Dimensions] || seen[store.Construction])
}

func TestAPartThatIsGoneIsNotLookedAt(t *testing.T) {
	p := withStops(0)
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	s := store.New(p)
	s.SetView(store.View{Part: plan.PartCollar, Snap: 2})
	require.NoError(t, s.Edit("off", func(p *plan.Plan) { p.Collar = nil }))
	assert.Equal(t, store.View{Snap: 2}, s.View(), "the whole plate is")
	s.SetView(store.View{Part: plan.PartBase})
	s.Undo()
	assert.Equal(t, plan.PartBase, s.View().Part)
}
