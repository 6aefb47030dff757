package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/units"
)

var (
	inInches    = units.Style{Lengths: units.Inches}
	inFractions = units.Style{Lengths: units.Fractions}
	inMinutes   = units.Style{Angles: units.Minutes}
)

// styleItem returns the item of a style in the submenu of the View menu.
func (w *Window) styleItem(t testing.TB, menu, key string) *fyne.MenuItem {
	t.Helper()
	for _, i := range w.menuItem(t, "menu.view", menu).ChildMenu.Items {
		if i.Label == w.words.Text(key) {
			return i
		}
	}
	require.Fail(t, "no item "+key)
	return nil
}

func TestEverythingFollowsTheUnitsAtOnce(t *testing.T) {
	p := withStops(0, 2) // two seats that run into each other, so that there is a finding
	w := opened(t, p)
	radius := w.field(t, "catches[0].radius")
	w.store.SelectFinding(0)
	require.Contains(t, texts(w.findings.object), "mm")

	w.styleItem(t, "menu.lengths", "units.inch").Action()
	assert.Equal(t, "4.133858", radius.Text)
	assert.Contains(t, texts(w.fieldObject(t, "catches[0].radius")), "in")
	assert.Contains(t, texts(w.findings.object), " in", "findings")
	assert.NotContains(t, texts(w.findings.object), "mm")
	w.plate.MouseMoved(mouse(fyne.NewPos(5, 5), 0, 0))
	assert.Contains(t, w.status.Text, " in", "what the pointer is on")
	assert.True(t, w.styleItem(t, "menu.lengths", "units.inch").Checked, "the menu is ticked")

	w.styleItem(t, "menu.lengths", "units.fraction").Action()
	assert.Equal(t, "4.133858", radius.Text, "no field holds what is only near")
	assert.Contains(t, texts(w.findings.object), `"`)

	w.styleItem(t, "menu.angles", "units.minutes").Action()
	require.NoError(t, w.store.Edit("", func(p *plan.Plan) { p.Stops[1].Angle = 22.5 }))
	assert.Equal(t, "22°30′", w.row(t, 1).angle.Text)
	assert.Contains(t, w.tools.snap.Options, "0°30′", "the steps of a click")
	assert.Equal(t, plan.Default().Catches, w.store.Plan().Catches, "the plan is what it was")
}

func TestSheetsStayInMillimetres(t *testing.T) {
	w := opened(t, withStops(0, 30))
	w.setUnits(units.Style{Lengths: units.Fractions, Angles: units.Minutes})
	assert.Equal(t, "4.5 mm", w.sheetWords.Length(4.5))
	assert.Equal(t, "22.5°", w.sheetWords.Angle(22.5))
	assert.Equal(t, `≈ 11/64"`, w.words.Length(4.5))
}

func TestABareNumberIsInTheUnitShown(t *testing.T) {
	w := opened(t, withStops(0))
	w.setUnits(inInches)
	for typed, want := range map[string]float64{"4": 101.6, "4 1/8": 104.775, "100 mm": 100, "10cm": 100} {
		w.focus(w.stops.add) // from elsewhere, so that what is there is typed over
		w.typeInto(w.field(t, "catches[0].radius"), typed)
		w.press(fyne.KeyReturn)
		assert.InDelta(t, want, w.store.Plan().Catches[0].Radius, 1e-9, typed)
	}
}

// What is being typed when the units change was meant in the old ones.
func TestWhatIsTypedIsHandedInBeforeTheUnitsChange(t *testing.T) {
	w := opened(t, withStops(0))
	e := w.field(t, "catches[0].radius")
	w.typeInto(e, "100")
	w.choose(t, "menu.view", "menu.units.next")
	assert.Equal(t, 100.0, w.store.Plan().Catches[0].Radius)
	assert.Same(t, e, w.win.Canvas().Focused(), "the keys stay")
}

// Coming to a field and leaving it changes nothing, however it is rounded.
func TestLookingIsNotChanging(t *testing.T) {
	p := withStops(0, 180.0/7)
	p.Catches[0].Radius = 100.0 / 3
	w := opened(t, p)
	for _, s := range []units.Style{{}, inInches, inFractions, inMinutes} {
		w.setUnits(s)
		for _, f := range w.fieldOrder {
			if _, ok := w.fields[f.Path]; ok && (f.Unit == millimetres || f.Unit == degrees) {
				w.focus(w.field(t, f.Path))
				w.press(fyne.KeyReturn)
			}
		}
		w.focus(w.row(t, 1).angle)
		w.press(fyne.KeyReturn)
		assert.True(t, plan.Equal(p, w.store.Plan()))
		assert.Empty(t, w.undoName())
	}
}

func TestAFieldSaysWhatItUnderstood(t *testing.T) {
	w := opened(t, withStops(0))
	below := func(path string) string { return texts(w.fieldObject(t, path)) }
	for _, c := range []struct{ path, typed, said, why string }{
		{"seat.diameter", `3/16"`, "= 4.7625 mm", "another unit"},
		{"seat.diameter", "7/32 in", "= 5.55625 mm", "another unit in words"},
		{"travel.to", "180/7", "≈ 25.714286°", "a division, rounded"},
		{"travel.to", "31°30'", "= 31.5°", "minutes"},
	} {
		w.focus(w.stops.add) // from elsewhere, so that what is there is typed over
		w.typeInto(w.field(t, c.path), c.typed)
		assert.Contains(t, below(c.path), c.said, c.why)
		w.press(fyne.KeyEscape)
		assert.NotContains(t, below(c.path), c.said, "taken away with what was typed")
	}
	w.typeInto(w.field(t, "seat.diameter"), "4,25")
	assert.NotContains(t, below("seat.diameter"), "=", "a plain number says it itself")
	w.press(fyne.KeyEscape)

	w.typeInto(w.stops.add, "180/7; 22.5")
	assert.Equal(t, "≈ 25.714°, 22.5°", w.stops.note.Text)
	assert.True(t, w.stops.note.Visible())
	w.press(fyne.KeyReturn)
	assert.False(t, w.stops.note.Visible())
}

func TestAFieldTellsThatItRounds(t *testing.T) {
	p := withStops(0, 180.0/7)
	w := opened(t, p)
	w.setUnits(inInches)
	e := w.field(t, "seat.diameter")
	w.focus(e)
	assert.Contains(t, texts(w.fieldObject(t, "seat.diameter")), w.words.Text("field.kept", map[string]any{"Value": "4.5 mm"}))
	w.focus(w.row(t, 1).angle)
	assert.Contains(t, w.status.Text, "25.714285714285715°")
}

func TestRangesAreToldInTheUnitShown(t *testing.T) {
	w := opened(t, withStops(0))
	w.setUnits(inInches)
	e := w.field(t, "seat.relief_diameter")
	w.typeInto(e, "5")
	assert.Contains(t, texts(w.fieldObject(t, "seat.relief_diameter")), "5 in will not do: it must be 0, or 0.003937 in to 3.937008 in")
}

func TestSettingsAreKept(t *testing.T) {
	a := test.NewTempApp(t)
	w := NewWindow(a, withStops(0))
	w.Show()
	w.setUnits(units.Style{Lengths: units.Fractions, Angles: units.Minutes})
	w.chooseLook(BlackOnWhiteLook)
	w.choose(t, "menu.view", "menu.explain")
	again := NewWindow(a, withStops(0))
	assert.Equal(t, units.Style{Lengths: units.Fractions, Angles: units.Minutes}, again.units())
	assert.Equal(t, BlackOnWhiteLook, again.theme.look)
	assert.False(t, again.parts.explain.on)
}

func TestUnitsGoRound(t *testing.T) {
	w := opened(t, withStops(0))
	var seen []units.Lengths
	for range 3 {
		w.choose(t, "menu.view", "menu.units.next")
		seen = append(seen, w.units().Lengths)
	}
	assert.Equal(t, []units.Lengths{units.Inches, units.Fractions, units.Millimetres}, seen)
}

func TestStandardSizes(t *testing.T) {
	w := opened(t, withStops(0))
	e := w.field(t, "seat.diameter")
	w.focus(e)
	w.press(fyne.KeyDown)
	items := find[*widget.PopUpMenu](w.overlay())
	require.Len(t, items, 1, "Down shows them")
	items[0].Dismiss()

	choose := func(path, want string) {
		t.Helper()
		e := w.field(t, path)
		f := w.fields[path]
		for _, i := range w.sizeItems(e, near(sizesOf[f.Generic](w), f.Number), f.Number) {
			if i.Label == want {
				i.Action()
				return
			}
		}
		require.Fail(t, want+" is not offered for "+path)
	}
	choose("seat.diameter", "4.8 mm")
	assert.Equal(t, 4.8, w.store.Plan().Seat.Diameter)
	choose("catch.ball_diameter", `7/32", 5.55625 mm`)
	assert.Equal(t, 5.55625, w.store.Plan().Catch.BallDiameter)
	choose("turntable.pivot_bore", "8.4 mm: M8, close fit")
	assert.Equal(t, 8.4, w.store.Plan().Turntable.PivotBore)
	w.setUnits(inFractions)
	choose("seat.diameter", `3/16", 3/16 in`)
	assert.Equal(t, 4.7625, w.store.Plan().Seat.Diameter, "exactly")
	assert.Equal(t, "3/16", w.field(t, "seat.diameter").Text)
	assert.Nil(t, w.field(t, "seat.depth").sizes, "a depth is sold by nobody")
}

// The size there is stands among those offered, ticked, with some to either
// side as far as there are any.
func TestSizesNearTheOneThereIs(t *testing.T) {
	var sizes []standardSize
	for i := range 40 {
		sizes = append(sizes, standardSize{mm: float64(i)})
	}
	for mm, want := range map[float64][2]float64{0: {0, 14}, -3: {0, 14}, 20: {13, 27}, 20.5: {14, 28}, 39: {26, 39}, 99: {26, 39}} {
		got := near(sizes, mm)
		assert.Equal(t, want, [2]float64{got[0].mm, got[len(got)-1].mm}, "about %v", mm)
	}
	assert.Len(t, near(sizes[:3], 1), 3, "a short list in full")
}

// The list keeps to the head, whatever lines come and go in it.
func TestTheListOfStopsKeepsToItsHead(t *testing.T) {
	w := opened(t, withStops(0))
	top := w.stops.list.Position().Y
	w.typeInto(w.stops.add, "180/7")
	assert.Greater(t, w.stops.list.Position().Y, top, "what is understood needs a line")
	w.typeText("x")
	assert.Greater(t, w.stops.list.Position().Y, top, "so does what is wrong")
	w.stops.add.SetText("")
	assert.Equal(t, top, w.stops.list.Position().Y, "and no gap is left")
}

// The list of steps has room for each of them, however angles are shown.
func TestStepsAreNotCutOff(t *testing.T) {
	w := opened(t, withStops(0))
	for _, s := range []units.Style{{}, inMinutes} {
		w.setUnits(s)
		for _, name := range w.tools.snap.Options {
			room := w.tools.snap.Size().Width - fyne.MeasureText(name, theme.TextSize(), fyne.TextStyle{}).Width
			assert.Greater(t, room, theme.IconInlineSize(), name)
		}
	}
}
