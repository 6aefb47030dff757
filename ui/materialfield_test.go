package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/stock"
)

func TestAMaterialIsTypedAsPeopleNameIt(t *testing.T) {
	for typed, c := range map[string]struct{ kept, shown, why string }{
		"white oak":       {"white-oak", "White oak", "in the window's language"},
		" RED OAK ":       {"red-oak", "Red oak", "capitals and spaces do not matter"},
		"birch-plywood":   {"birch-plywood", "Birch plywood", "as a plan writes it"},
		"aluminum":        {"aluminium", "Aluminium", "another name of it"},
		"Bog oak":         {"Bog oak", "Bog oak", "one of which nothing is known"},
		"":                {"", "", "none"},
		"mdf, two layers": {"mdf, two layers", "mdf, two layers", "a text that only begins with one"},
	} {
		w := opened(t, withStops(0))
		e := w.field(t, "turntable.material")
		w.typeInto(e, "beech")
		w.press(fyne.KeyReturn)
		e.TypedShortcut(&fyne.ShortcutSelectAll{})
		if typed == "" {
			w.press(fyne.KeyBackspace)
		}
		w.typeText(typed)
		w.press(fyne.KeyReturn)
		assert.Equal(t, c.kept, w.store.Plan().Turntable.Material, c.why)
		assert.Equal(t, c.shown, e.Text, c.why)
	}
}

func TestAMaterialIsShownInTheWindowsLanguage(t *testing.T) {
	w := opened(t, withStops(0))
	w.speak("de")
	e := w.field(t, "base.material")
	assert.Equal(t, "Birkensperrholz", e.Text)
	w.typeInto(e, "Buche")
	w.press(fyne.KeyReturn)
	assert.Equal(t, "beech", w.store.Plan().Base.Material)
}

// Of a material that is not known the field says what is left out.
func TestAnUnknownMaterialIsTold(t *testing.T) {
	w := opened(t, withStops(0))
	object := w.fieldObject(t, "turntable.material")
	w.typeInto(w.field(t, "turntable.material"), "oak")
	assert.Contains(t, texts(object), "“oak”")
	w.press(fyne.KeyReturn)
	w.focus(w.stops.add)
	assert.NotContains(t, texts(object), "“oak”", "not for ever")
	w.focus(w.field(t, "turntable.material"))
	assert.Contains(t, texts(object), "“oak”", "but whenever it is come to")
}

func TestAMaterialIsChosenFromTheList(t *testing.T) {
	w := opened(t, withStops(0))
	w.focus(w.field(t, "turntable.material"))
	w.press(fyne.KeyDown)
	_, ok := w.win.Canvas().Focused().(*widget.PopUpMenu)
	require.True(t, ok, "the list has the keys")
	w.press(fyne.KeyDown)
	w.press(fyne.KeyReturn)
	assert.Equal(t, stock.Materials()[0].ID, w.store.Plan().Turntable.Material)
	assert.Same(t, w.field(t, "turntable.material"), w.win.Canvas().Focused(), "the keys come back")
}
