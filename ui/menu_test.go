package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
	"stopwright/detent/plan"
)

// everyItem calls visit for every item of the main menu and of those below it.
func everyItem(m *fyne.MainMenu, visit func(*fyne.MenuItem)) {
	var walk func([]*fyne.MenuItem)
	walk = func(items []*fyne.MenuItem) {
		for _, i := range items {
			if i.IsSeparator {
				continue
			}
			visit(i)
			if i.ChildMenu != nil {
				walk(i.ChildMenu.Items)
			}
		}
	}
	for _, menu := range m.Items {
		walk(menu.Items)
	}
}

// A key means one thing, and is one the toolkit passes on: with Ctrl or Alt.
func TestEveryMenuItemDoesSomething(t *testing.T) {
	w := opened(t, withStops(0))
	keys := map[string]string{}
	everyItem(w.win.MainMenu(), func(i *fyne.MenuItem) {
		assert.NotEmpty(t, i.Label)
		assert.True(t, i.Action != nil || i.ChildMenu != nil, i.Label)
		if i.Shortcut == nil {
			return
		}
		name := i.Shortcut.ShortcutName()
		assert.Empty(t, keys[name], "%s and %s have the same key", i.Label, keys[name])
		keys[name] = i.Label
		if s, ok := i.Shortcut.(*desktop.CustomShortcut); ok {
			assert.NotZero(t, s.Modifier&(fyne.KeyModifierControl|fyne.KeyModifierAlt|fyne.KeyModifierSuper),
				"%s: the toolkit takes no key without one of these for a menu", i.Label)
		}
	})
	assert.Greater(t, len(keys), 10)
}

func TestTheMenuNamesTheEdit(t *testing.T) {
	w := opened(t, withStops(0))
	require.NoError(t, w.addStops(plan.Stop{Angle: 36}))
	item := w.win.MainMenu().Items[1].Items[0]
	assert.Contains(t, item.Label, "36°")
	item.Action()
	assert.Equal(t, []float64{0}, w.angles())
	redo := w.win.MainMenu().Items[1].Items[1]
	assert.Contains(t, redo.Label, "36°")
	redo.Action()
	assert.Equal(t, []float64{0, 36}, w.angles())
}

func TestTheEditMenu(t *testing.T) {
	w := opened(t, withStops(40, 0, 20))
	w.choose(t, "menu.edit", "menu.all")
	assert.Len(t, w.store.Selection().Stops, 3)
	w.choose(t, "menu.edit", "menu.sort")
	assert.Equal(t, []float64{0, 20, 40}, w.angles())
	w.choose(t, "menu.edit", "menu.remove")
	assert.Empty(t, w.angles())
	w.undo()
	assert.Equal(t, []float64{0, 20, 40}, w.angles(), "all at once, as one edit")
	w.focus(w.plate)
	w.choose(t, "menu.edit", "menu.add")
	assert.Same(t, w.stops.add, w.win.Canvas().Focused())
}

// By the keys alone one comes to every pane.
func TestMenusGiveTheKeysToEachPane(t *testing.T) {
	w := opened(t, withStops(0, 1))
	w.choose(t, "menu.view", "menu.checks")
	assert.Same(t, w.findings.list, w.win.Canvas().Focused())
	w.choose(t, "menu.view", "menu.parts")
	assert.Same(t, w.parts.sections[0].choose.pick, w.win.Canvas().Focused())
	w.choose(t, "menu.view", "page.plate")
	assert.Same(t, w.plate, w.win.Canvas().Focused())
	w.wheel(fyne.NewPos(50, 50), 3)
	w.choose(t, "menu.view", "plate.fit")
	assert.Equal(t, 1.0, w.plate.zoom)
}

func TestExamplesOpen(t *testing.T) {
	w := opened(t, withStops(0))
	items := w.menuItem(t, "menu.file", "menu.examples").ChildMenu.Items
	require.Len(t, items, len(plans.List()))
	for _, i := range items {
		i.Action()
		require.Nil(t, w.overlay())
		assert.NotEmpty(t, w.angles(), i.Label)
		assert.False(t, w.store.Unsaved(), i.Label)
		w.win.Canvas().Capture()
	}
	_, err := Example("none")
	require.Error(t, err)
	assert.Contains(t, err.Error(), "sanding-table", "those there are, are named")
}

func TestHelpIsShown(t *testing.T) {
	for _, item := range []string{"menu.keys", "menu.cautions", "menu.about"} {
		w := opened(t, withStops(0))
		w.choose(t, "menu.help", item)
		assert.Greater(t, len(w.asked(t)), 50, item)
		w.win.Canvas().Capture()
		w.press(fyne.KeyEscape)
		assert.Nil(t, w.overlay(), item)
	}
}

// While a question lies over the window the menu's keys still come, and must
// neither pile up questions nor change the plan behind it.
func TestCommandsWaitWhileAQuestionIsOpen(t *testing.T) {
	w := opened(t, withStops(0, 36))
	require.NoError(t, w.addStops(plan.Stop{Angle: 50}))
	w.choose(t, "menu.file", "menu.saveas")
	before := w.store.Plan()
	w.typeText("x")
	everyItem(w.win.MainMenu(), func(i *fyne.MenuItem) {
		if _, layer := i.Shortcut.(*desktop.CustomShortcut); layer {
			i.Action()
		}
	})
	w.undo()
	w.redo()
	assert.Len(t, w.win.Canvas().Overlays().List(), 1)
	assert.Equal(t, before, w.store.Plan())
	assert.Zero(t, w.quits())

	w.press(fyne.KeyEscape)
	w.Quit()
	w.undo()
	assert.Equal(t, before, w.store.Plan(), "nor is it undone behind a question without a field")
}

func TestAButtonOfAQuestionIsPressedByEnter(t *testing.T) {
	w := opened(t, withStops(0))
	w.change(t)
	w.choose(t, "menu.file", "menu.new")
	for _, b := range find[*sheetButton](w.overlay()) {
		if b.Text == w.words.Text("ask.cancel") {
			w.focus(b)
		}
	}
	w.press(fyne.KeyReturn)
	assert.Nil(t, w.overlay())
	assert.Equal(t, []float64{0, 77}, w.angles())
	w.choose(t, "menu.file", "menu.new")
	w.typeText(" ") // the button with the keys is pressed by space too
}
