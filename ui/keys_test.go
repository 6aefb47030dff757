package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Every shortcut of the menus is in the list, no two are alike, and none is a
// key that the menus do not have.
func TestTheListOfKeysIsThatOfTheMenus(t *testing.T) {
	w := opened(t, withStops(0))
	shortcuts := 0
	var count func(items []*fyne.MenuItem)
	count = func(items []*fyne.MenuItem) {
		for _, i := range items {
			if i.Shortcut != nil {
				shortcuts++
			}
			if i.ChildMenu != nil {
				count(i.ChildMenu.Items)
			}
		}
	}
	for _, m := range w.win.MainMenu().Items {
		count(m.Items)
	}
	listed := map[string]string{}
	for _, r := range w.menuKeys() {
		if r.keys != "" {
			assert.NotContains(t, listed, r.keys, "%s and %s have the same key", r.does, listed[r.keys])
			listed[r.keys] = r.does
		}
	}
	assert.Len(t, listed, shortcuts)
	assert.Equal(t, w.words.Text("menu.save"), listed["Ctrl+S"])
	assert.Equal(t, w.words.Text("menu.saveas"), listed["Ctrl+Shift+S"])
	assert.Equal(t, w.words.Text("menu.keys"), listed["Ctrl+F1"])
	for keys, does := range listed {
		assert.Regexp(t, "^(Ctrl|Alt)", keys, "the toolkit never sees a shortcut without a modifier: %s", does)
	}
}

func TestKeysAreShown(t *testing.T) {
	w := opened(t, withStops(0))
	w.choose(t, "menu.help", "menu.keys")
	shown := w.asked(t)
	for _, want := range []string{"Ctrl+Shift+S", "Page Up  Page Down", "keys.plate.zoom", "keys.field.sizes", "menu.units.next"} {
		if w.words.Has(want) {
			want = w.words.Text(want)
		}
		assert.Contains(t, shown, want)
	}
	assert.NotContains(t, shown, "[", "every key has its words")
	scroll := find[*textScroll](w.overlay())[0]
	w.press(fyne.KeyUp)
	assert.Zero(t, scroll.Offset.Y, "at the top already")
	w.press(fyne.KeyPageDown)
	page := scroll.Offset.Y
	assert.Positive(t, page)
	w.press(fyne.KeyUp)
	assert.Less(t, scroll.Offset.Y, page)
	w.press(fyne.KeyEnd)
	end := scroll.Offset.Y
	w.press(fyne.KeyDown)
	assert.Equal(t, end, scroll.Offset.Y, "at the end")
	w.press(fyne.KeyHome)
	assert.Zero(t, scroll.Offset.Y)
	w.press(fyne.KeyEscape)
	assert.Nil(t, w.overlay())
}

// The plate obeys every key of its table, and no key stands in it twice.
func TestThePlateObeysItsKeys(t *testing.T) {
	seen := map[string]bool{}
	for _, k := range plateKeys {
		require.True(t, strings.HasPrefix(k.does, "keys.plate."))
		for _, name := range k.keys {
			assert.False(t, seen[string(name)], name)
			seen[string(name)] = true
		}
		for _, r := range k.runes {
			assert.False(t, seen[string(r)], string(r))
			seen[string(r)] = true
		}
	}
	w := opened(t, withStops(0, 10, 20))
	w.focus(w.plate)
	w.press(fyne.KeyDown)
	w.press(fyne.KeyDown)
	assert.Equal(t, 1, w.store.Selection().Lead)
	w.press(fyne.KeyRight)
	assert.Equal(t, []float64{0, 10.5, 20}, w.angles())
	w.press(fyne.KeyPageDown)
	assert.Equal(t, 10.5, w.store.Turn().Degrees())
	w.typeText(".")
	assert.Equal(t, 11.0, w.store.Turn().Degrees())
	w.press(fyne.KeyHome)
	assert.Zero(t, w.store.Turn())
	zoom := w.plate.zoom
	w.typeText("+")
	assert.Greater(t, w.plate.zoom, zoom)
	w.typeText("-")
	assert.InDelta(t, zoom, w.plate.zoom, 1e-9, "farther by as much")
	w.press(fyne.KeyDelete)
	assert.Equal(t, []float64{0, 20}, w.angles())
}

// Tab goes through the panes in the order in which a plan is made.
func TestTabGoesFromStopsToPlateToPartsToChecks(t *testing.T) {
	w := opened(t, withStops(0, 2))
	panes := []fyne.CanvasObject{w.stops.object, w.pages, w.parts.object, w.findings.object}
	paneOf := func(o fyne.CanvasObject) int {
		d := fyne.CurrentApp().Driver()
		at := d.AbsolutePositionForObject(o).AddXY(1, 1)
		for i, p := range panes {
			from := d.AbsolutePositionForObject(p)
			scrolled := p == w.parts.object // so some of it is out of sight
			if at.X >= from.X && at.X < from.X+p.Size().Width &&
				(scrolled || at.Y >= from.Y && at.Y < from.Y+p.Size().Height) {
				return i
			}
		}
		return -1
	}
	w.focus(w.stops.add)
	var order []int
	for range 200 {
		o, ok := w.win.Canvas().Focused().(fyne.CanvasObject)
		require.True(t, ok)
		if i := paneOf(o); len(order) == 0 || order[len(order)-1] != i {
			order = append(order, i)
		}
		w.win.Canvas().FocusNext()
		if w.win.Canvas().Focused() == fyne.Focusable(w.stops.add) {
			break
		}
	}
	assert.Equal(t, []int{0, 1, 2, 3}, order, "once round")
}
