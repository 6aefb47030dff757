package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/stock"
	"stopwright/ui/units"
)

// browsing opens the page of stock and searches for a text.
func browsing(t *testing.T, text string) (*Window, *stockView) {
	t.Helper()
	w := opened(t, withHole())
	w.choose(t, "menu.view", "page.stock")
	require.Same(t, w.stock.search, w.win.Canvas().Focused(), "it is ready to be searched")
	w.typeText(text)
	return w, w.stock
}

// found returns the names of what is listed.
func (v *stockView) names() []string {
	var out []string
	for _, i := range v.found {
		out = append(out, i.name)
	}
	return out
}

// button returns a button of what is selected, nil if there is none.
func (v *stockView) button(text string) *widget.Button {
	for _, b := range find[*widget.Button](v.uses) {
		if b.Text == text {
			return b
		}
	}
	return nil
}

func TestStockIsSearched(t *testing.T) {
	w, v := browsing(t, "")
	for _, c := range []struct {
		text    string
		first   string
		nearest string // part of what is said of drills; "": nothing is
		why     string
	}{
		{"beech", "Beech", "", "by name"},
		{"BIRCH ply", "Birch plywood", "", "by words in any order, capitals or not"},
		{"M5", "M5", "", "a thread"},
		{"4.8", "4.8 mm", `number #12 (within 0.005 mm)`, "a size: the drill of that name first"},
		{"3/16", `3/16"`, `4.8 mm (+0.04 mm), 3/16" exactly`, "a fraction is of an inch, whatever the window shows"},
		{"#12", "number #12", "number #12 exactly", "a number drill"},
		{"0.19 in", "wood screw #10", `3/16" (−0.06 mm)`, "a size nobody sells: the nearest"},
		{"5,31 mm", "", "5.3 mm (−0.01 mm)", "a decimal comma"},
		{"wood steel wet", "wood – steel, wet", "", "a pair that rubs"},
		{"music", "music wire", "", "a wire"},
	} {
		w.press(fyne.KeyEscape)
		w.typeText(c.text)
		require.NotEmpty(t, v.found, c.text)
		if c.first != "" {
			assert.Equal(t, c.first, v.names()[0], "%s: %s", c.text, c.why)
		}
		assert.Contains(t, v.nearest.Text, c.nearest, "%s: %s", c.text, c.why)
		assert.Equal(t, c.nearest == "", v.nearest.Hidden, c.text)
	}
	v.search.SetText("no such thing")
	assert.Empty(t, v.found)
	assert.Equal(t, "0 found", v.title.Text)
}

func TestStockIsListedByKind(t *testing.T) {
	_, v := browsing(t, "")
	assert.Len(t, v.found, len(v.all), "nothing asks for everything")
	listed := 0
	for i, k := range stockKinds {
		v.kind.SetSelectedIndex(i + 1)
		assert.NotEmpty(t, v.found, k)
		listed += len(v.found)
		for _, item := range v.found {
			assert.Equal(t, k, item.kind)
		}
	}
	assert.Equal(t, len(v.all), listed)
}

// What is chosen says where its figures are from and sets a field, as one edit.
func TestStockSetsTheFieldsOfThePlan(t *testing.T) {
	w, v := browsing(t, "3/16 drill")
	w.press(fyne.KeyDown)
	require.Equal(t, 0, v.list.at, "Down goes to what was found")
	assert.Contains(t, v.facts.Text, "sixty-fourths of an inch; exact")
	assert.Nil(t, v.button("Selected hole"), "none is selected")
	tap(v.button("Seats"))
	assert.InDelta(t, 4.7625, w.store.Plan().Seat.Diameter, 1e-12)
	assert.Contains(t, w.status.Text, `Seats: 3/16"`)
	w.store.Undo()
	assert.InDelta(t, plan.Default().Seat.Diameter, w.store.Plan().Seat.Diameter, 1e-12)

	w.store.SelectFeature(0)
	v.show()
	tap(v.button("Selected hole"))
	assert.InDelta(t, 4.7625, w.store.Plan().Features[0].Diameter, 1e-12)

	for _, c := range []struct {
		search, use string
		got         func(p plan.Plan) any
		want        any
	}{
		{`1/4" ball`, "Ball", func(p plan.Plan) any { return p.Catch.BallDiameter }, 6.35},
		{"mdf", "Base", func(p plan.Plan) any { return p.Base.Material }, "mdf"},
		{"mdf", "Turntable", func(p plan.Plan) any { return p.Turntable.Material }, "mdf"},
		{"countersink metric", "Seats' cone", func(p plan.Plan) any { return p.Seat.CountersinkAngle }, 90.0},
		{"split", "Seat drill's point", func(p plan.Plan) any { return p.Seat.DrillPoint }, 135.0},
		{"wood steel wet", "Ball in the seat", func(p plan.Plan) any { return p.Shop.Friction }, 0.15},
	} {
		v.search.SetText(c.search)
		v.list.Select(0)
		require.NotNil(t, v.button(c.use), "%s: %s", c.search, c.use)
		tap(v.button(c.use))
		assert.Equal(t, c.want, c.got(w.store.Plan()), c.search)
	}
}

// A plan without a collar has no collar to set.
func TestStockOffersOnlyFieldsThereAre(t *testing.T) {
	w, v := browsing(t, "beech")
	v.list.Select(0)
	has := w.store.Plan().Collar != nil
	assert.Equal(t, has, v.button("Collar") != nil)
	require.NoError(t, w.store.Edit("collar", func(p *plan.Plan) {
		if p.Collar = nil; !has {
			c := plan.NewCollar(p.Turntable)
			p.Collar = &c
		}
	}))
	assert.Equal(t, !has, v.button("Collar") != nil)
}

// Every item has words for all it says, in every language and in inches.
func TestStockHasWordsForEverything(t *testing.T) {
	w, _ := browsing(t, "")
	for _, language := range words.Languages() {
		w.speak(language)
		v := w.stock
		w.setUnits(units.Style{Lengths: units.Inches})
		v.refresh()
		for _, i := range v.all {
			require.NotEmpty(t, i.facts, i.name)
			for _, f := range i.facts {
				text := i.name + i.says + f.name + f.value + w.source(f.Source) + w.words.Text("stock.certainty."+f.Certainty.String())
				assert.NotRegexp(t, `\[[a-z]+\.`, text, language)
				if language == "de" {
					assert.NotContains(t, w.source(f.Source), "common practice")
				}
			}
			for _, u := range i.uses {
				assert.True(t, w.words.Has("stock.use."+u.field), u.field)
			}
		}
		assert.Len(t, v.all, len(stock.Drills())+len(stock.Balls())+len(stock.Clearances())+len(stock.WoodScrews())+
			len(stock.DrillPoints())+len(stock.Countersinks())+len(stock.Materials())+len(stock.Frictions())+len(stock.Wires()))
	}
}

// Escape begins a search anew.
func TestEscapeClearsTheSearch(t *testing.T) {
	w, v := browsing(t, "beech")
	w.press(fyne.KeyEscape)
	assert.Empty(t, v.search.Text)
	assert.Len(t, v.found, len(v.all))
}
