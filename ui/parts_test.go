package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// The panel shows every decision of the plan but the stops and the log.
func TestEveryPartOfThePlanHasAField(t *testing.T) {
	p := plan.Default()
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	p.Features = []plan.Feature{plan.NewFeature(p)}
	w := opened(t, p)
	shown := map[string]int{}
	for i, s := range w.parts.sections {
		w.parts.accordion.Open(i)
		for _, path := range s.made {
			shown[path]++
		}
	}
	for _, f := range plan.Fields(p) {
		want := 1
		for _, elsewhere := range []string{"format", "version", "readings_since"} {
			if strings.HasPrefix(f.Path, elsewhere) {
				want = 0
			}
		}
		assert.Equal(t, want, shown[f.Path], f.Path)
	}
}

func TestAFieldTakesWhatPeopleType(t *testing.T) {
	for _, c := range []struct {
		path, typed string
		want        float64
		why         string
	}{
		{"turntable.diameter", "262,5", 262.5, "a decimal comma"},
		{"turntable.diameter", "10 in", 254, "inches"},
		{"seat.diameter", `3/16"`, 4.7625, "fractions of an inch"},
		{"travel.to", "31°30'", 31.5, "degrees and minutes"},
		{"travel.to", "180/8", 22.5, "a division"},
		{"catch.free_force", "9,5", 9.5, "a plain number"},
		{"face_gap", "-0.5", -0.5, "below zero where that has a meaning"},
	} {
		w := opened(t, withStops(0))
		w.typeInto(w.field(t, c.path), c.typed)
		w.press(fyne.KeyReturn)
		assert.InDelta(t, c.want, w.fields[c.path].Number, 1e-9, c.why)
		assert.NotContains(t, w.undoName(), "{{", "the edit has a name")
		assert.NotEmpty(t, w.undoName())
	}
}

func TestAFieldKeepsItsLastGoodValue(t *testing.T) {
	for typed, why := range map[string]string{
		"wide": "no number", "-5": "out of range", "20000": "out of range", "1,234.5": "two ways to read it",
		"1/0": "no number", "": "nothing", "NaN": "no number",
	} {
		w := opened(t, withStops(0))
		w.typeInto(w.field(t, "turntable.diameter"), "250")
		w.press(fyne.KeyReturn)
		e := w.field(t, "turntable.diameter")
		w.focus(w.stops.add)
		w.focus(e)
		w.press(fyne.KeyBackspace) // takes off what was there, all of it selected
		w.typeText(typed)
		row := w.fieldObject(t, "turntable.diameter")
		assert.NotEmpty(t, problemIn(row), "%q is explained while it is typed", typed)
		w.press(fyne.KeyReturn)
		w.focus(w.stops.add)
		assert.Equal(t, 250.0, w.store.Plan().Turntable.Diameter, why)
		assert.Equal(t, typed, e.Text, "what was typed can be put right")
		assert.NotEmpty(t, problemIn(row), why)

		w.focus(e)
		w.press(fyne.KeyEscape)
		assert.Equal(t, "250", e.Text, why)
		assert.Empty(t, problemIn(row), why)
	}
}

// problemIn returns what a row says is wrong.
func problemIn(row fyne.CanvasObject) string {
	for _, l := range find[*widget.Label](row) {
		if l.Importance == widget.DangerImportance {
			return l.Text
		}
	}
	return ""
}

func TestAFieldFollowsThePlan(t *testing.T) {
	w := opened(t, withStops(0))
	e := w.field(t, "catches[0].radius")
	require.NoError(t, w.store.Edit("ring", func(p *plan.Plan) { p.Catches[0].Radius = 99.123456 }))
	assert.Equal(t, "99.123456", e.Text)
	w.focus(e)
	w.focus(w.stops.add)
	assert.Equal(t, 99.123456, w.store.Plan().Catches[0].Radius, "looking at a field does not round it")
	w.store.Undo()
	assert.Equal(t, "105", e.Text)
}

func TestUndoTakesBackTypingFirst(t *testing.T) {
	w := opened(t, withStops(0))
	require.NoError(t, w.addStops(plan.Stop{Angle: 10}))
	e := w.field(t, "catches[0].radius")
	w.typeInto(e, "9")
	w.undo()
	assert.Equal(t, []float64{0, 10}, w.angles(), "the text is undone, not the plan")
	w.press(fyne.KeyEscape)
	w.undo()
	assert.Equal(t, []float64{0}, w.angles())
	w.redo()
	assert.Equal(t, []float64{0, 10}, w.angles())
}

// Every choice of every field can be made, from a plan that holds one of each
// list, and undone again.
func TestEveryChoiceCanBeMade(t *testing.T) {
	p := withStops(0, 36)
	p.Features = []plan.Feature{plan.NewFeature(p)}
	w := opened(t, p)
	made := 0
	for _, f := range plan.Fields(w.store.Plan()) {
		if f.Kind != plan.ChoiceField || strings.HasPrefix(f.Path, "shop.") || f.Path == "format" {
			continue
		}
		for _, choice := range f.Choices {
			s := w.choice(t, f.Path)
			s.SetSelected(w.words.Text("choice." + choice))
			assert.Equal(t, choice, w.fields[f.Path].Text, "%s %s: %s", f.Path, choice, w.status.Text)
			assert.Equal(t, w.words.Text("choice."+choice), w.choice(t, f.Path).Selected, f.Path)
			w.win.Canvas().Capture()
			made++
		}
		for range f.Choices {
			w.store.Undo()
		}
		w.store.Load(p, "")
	}
	assert.GreaterOrEqual(t, made, 5*2+2*3, "five with two choices, a feature's two with three")
}

func TestEveryKindOfFeatureHasSizesToBeginWith(t *testing.T) {
	for _, kind := range []plan.Kind{plan.Slot, plan.ArcSlot, plan.Hole} {
		p := withStops(0)
		p.Features = []plan.Feature{plan.NewFeature(p)}
		w := opened(t, p)
		w.choice(t, "features[0].kind").SetSelected(w.words.Text("choice." + string(kind)))
		f := w.store.Plan().Features[0]
		require.Equal(t, kind, f.Kind, w.status.Text)
		assert.NoError(t, plan.Validate(w.store.Plan()))
	}
}

// A closed section costs nothing until it is opened, and then shows the plan as
// it is by then: its fields, its choice of item, the box in its head.
func TestAClosedSectionIsFilledWhenItIsOpened(t *testing.T) {
	w := opened(t, withStops(0))
	closed := func(key string) *section {
		for i, s := range w.parts.sections {
			if s.key == key {
				w.parts.accordion.Close(i)
				return s
			}
		}
		require.Fail(t, "there is no section "+key)
		return nil
	}
	collar, features, turntable := closed("group.collar"), closed("group.features"), closed("group.turntable")
	assert.Empty(t, turntable.rows, "nobody has looked")
	require.NoError(t, w.store.Edit("all", func(p *plan.Plan) {
		c := plan.NewCollar(p.Turntable)
		p.Collar = &c
		p.Features = append(p.Features, plan.NewFeature(*p))
		p.Turntable.Diameter = 301
	}))
	assert.Equal(t, "301", w.field(t, "turntable.diameter").Text)
	w.section(t, "group.collar")
	assert.True(t, find[*widget.Check](collar.head)[0].Checked)
	assert.NotEmpty(t, collar.rows)
	w.section(t, "group.features")
	assert.Len(t, features.choose.pick.Options, 1)
	assert.NotEmpty(t, features.rows)

	closed("group.collar")
	closed("group.features")
	closed("group.turntable")
	w.store.Undo()
	w.section(t, "group.collar")
	assert.False(t, find[*widget.Check](collar.head)[0].Checked)
	assert.Empty(t, collar.rows)
	w.section(t, "group.features")
	assert.Empty(t, features.rows)
	assert.NotEqual(t, "301", w.field(t, "turntable.diameter").Text)
}

func TestTheCollarComesAndGoes(t *testing.T) {
	w := opened(t, withStops(0))
	s := w.section(t, "group.collar")
	checks := find[*widget.Check](s.head)
	require.Len(t, checks, 1)
	assert.Empty(t, s.rows)
	tap(checks[0])
	require.NotNil(t, w.store.Plan().Collar)
	assert.NotEmpty(t, s.rows)
	assert.Len(t, w.tools.parts, 4, "it can be shown at the drill")
	w.typeInto(w.field(t, "collar.screws.count"), "6")
	w.press(fyne.KeyReturn)
	assert.Equal(t, 6, w.store.Plan().Collar.Screws.Count)
	w.focus(w.stops.add)
	w.typeInto(w.field(t, "collar.screws.count"), "6.5")
	assert.NotEmpty(t, problemIn(w.fieldObject(t, "collar.screws.count")), "half a screw")
	w.press(fyne.KeyEscape)

	tap(checks[0])
	assert.Nil(t, w.store.Plan().Collar)
	assert.Empty(t, s.rows)
	w.store.Undo()
	assert.Equal(t, 6, w.store.Plan().Collar.Screws.Count, "with all its sizes")
	assert.True(t, checks[0].Checked)
}

func TestACollarOfATableThatLeavesItNoBoreIsRefused(t *testing.T) {
	p := withStops(0)
	p.Turntable.Diameter = 10000
	w := opened(t, p)
	tap(find[*widget.Check](w.section(t, "group.collar").head)[0])
	assert.NoError(t, plan.Validate(w.store.Plan()))
	assert.Equal(t, w.store.Plan().Collar != nil, find[*widget.Check](w.section(t, "group.collar").head)[0].Checked)
}

// buttons returns the button that adds to a list and the one that removes.
func (s *section) buttons() (add, remove *widget.Button) {
	b := find[*widget.Button](s.head)
	return b[len(b)-2], b[len(b)-1]
}

func TestCatchesAreAddedAndRemoved(t *testing.T) {
	p := withStops(0, 36, 54)
	w := opened(t, p)
	s := w.section(t, "group.ring")
	add, remove := s.buttons()
	assert.True(t, remove.Disabled(), "the last one stays")
	tap(add)
	tap(add)
	require.Len(t, w.store.Plan().Catches, 3)
	assert.Equal(t, "catches[2].name", s.made[0], "the new one is shown")
	require.NoError(t, w.store.Edit("use", func(p *plan.Plan) {
		p.Stops[0].Catches = []string{"A", "C"}
		p.Stops[1].Catches = []string{"C"}
		p.Stops[2].Catches = []string{"B"}
	}))
	s.choose.pick.SetSelectedIndex(2)
	tap(remove)
	require.Len(t, w.store.Plan().Catches, 2)
	require.Len(t, w.store.Plan().Stops, 3, "no stop goes with it")
	assert.Equal(t, []string{"A"}, w.store.Plan().Stops[0].Catches)
	assert.Empty(t, w.store.Plan().Stops[1].Catches, "it falls to the first catch")
	assert.Equal(t, []string{"B"}, w.store.Plan().Stops[2].Catches)
	w.store.Undo()
	assert.Equal(t, []string{"C"}, w.store.Plan().Stops[1].Catches)
}

func TestACatchCanBeRenamed(t *testing.T) {
	p := withStops(0, 36)
	p.Catches = append(p.Catches, plan.NewPlacement(p))
	p.Stops[1].Catches = []string{"A", "B"}
	w := opened(t, p)
	w.typeInto(w.field(t, "catches[0].name"), "Front")
	w.press(fyne.KeyReturn)
	assert.Equal(t, "Front", w.store.Plan().Catches[0].Name)
	assert.Equal(t, []string{"Front", "B"}, w.store.Plan().Stops[1].Catches, "the stops it serves know it by its new name")

	for why, name := range map[string]string{"another has it": "B", "blank": "  "} {
		w.focus(w.stops.add)
		w.typeInto(w.field(t, "catches[0].name"), name)
		assert.NotEmpty(t, problemIn(w.fieldObject(t, "catches[0].name")), why)
		w.press(fyne.KeyReturn)
		assert.Equal(t, "Front", w.store.Plan().Catches[0].Name, why)
		assert.Equal(t, []string{"Front", "B"}, w.store.Plan().Stops[1].Catches, why)
		w.press(fyne.KeyEscape)
	}
}

func TestAsManyCatchesAsAPlanMayHave(t *testing.T) {
	w := opened(t, withStops(0))
	s := w.section(t, "group.ring")
	add, remove := s.buttons()
	for range plan.MaxCatches + 1 {
		tap(add)
	}
	assert.Len(t, w.store.Plan().Catches, plan.MaxCatches)
	assert.NotEmpty(t, w.status.Text, "it is told why there is no more")
	w.win.Canvas().Capture()
	for range plan.MaxCatches + 1 {
		if !remove.Disabled() {
			tap(remove)
		}
	}
	assert.Len(t, w.store.Plan().Catches, 1)
	assert.True(t, remove.Disabled())
}

func TestFeaturesAreAddedAndRemoved(t *testing.T) {
	w := opened(t, withStops(0))
	s := w.section(t, "group.features")
	add, remove := s.buttons()
	assert.True(t, remove.Disabled())
	assert.Empty(t, s.rows)
	tap(add)
	require.Len(t, w.store.Plan().Features, 1)
	w.typeInto(w.field(t, "features[0].label"), "foot screw")
	w.press(fyne.KeyReturn)
	assert.Contains(t, s.choose.pick.Options[0], "foot screw")
	tap(add)
	w.typeInto(w.field(t, "features[1].x"), "40")
	w.press(fyne.KeyReturn)
	assert.Equal(t, 40.0, w.store.Plan().Features[1].X)
	s.choose.pick.SetSelectedIndex(0)
	tap(remove)
	require.Len(t, w.store.Plan().Features, 1)
	assert.Equal(t, 40.0, w.store.Plan().Features[0].X)
	assert.Equal(t, "40", w.field(t, "features[0].x").Text, "the fields are now those of the one left")
	tap(remove)
	assert.Empty(t, w.store.Plan().Features)
	assert.True(t, remove.Disabled())
	assert.Empty(t, s.choose.pick.Selected)
}

func TestNotesMayHaveSeveralLines(t *testing.T) {
	w := opened(t, withStops(0))
	w.typeInto(w.field(t, "notes"), "first")
	w.press(fyne.KeyReturn)
	w.typeText("second")
	w.focus(w.stops.add)
	assert.Equal(t, "first\nsecond", w.store.Plan().Notes)
}

// A yes or no of the plan is a box to tick, and follows undo.
func TestAYesOrNoIsTicked(t *testing.T) {
	p := withStops(0)
	r := plan.DefaultRouter()
	p.Router = &r
	w := opened(t, p)
	f, ok := w.fields["router.canned"]
	require.True(t, ok)
	row := w.newFieldRow(f)
	box := row.object.(*widget.Check)
	was := box.Checked
	box.SetChecked(!was)
	assert.Equal(t, !was, w.store.Plan().Router.Canned)
	w.store.Undo()
	row.refresh()
	assert.Equal(t, was, box.Checked)
}
