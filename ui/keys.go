package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// keyRow is one line of the list of keys.
type keyRow struct {
	keys string // "": the row is a heading
	does string
}

// menuKeys lists the keys of the menus, menu by menu. It reads them off the
// menus themselves, so that no key is missing and none is out of date.
func (w *Window) menuKeys() []keyRow {
	var rows []keyRow
	for _, m := range w.mainMenu().Items {
		rows = append(rows, keyRow{does: m.Label})
		for _, item := range m.Items {
			rows = w.appendKeys(rows, item)
		}
	}
	return rows
}

// appendKeys adds the row of a menu item, or those of the menu it opens.
func (w *Window) appendKeys(rows []keyRow, item *fyne.MenuItem) []keyRow {
	if s, ok := item.Shortcut.(fyne.KeyboardShortcut); ok {
		rows = append(rows, keyRow{w.keyText(s), strings.TrimSpace(item.Label)})
	}
	if item.ChildMenu != nil {
		for _, child := range item.ChildMenu.Items {
			rows = w.appendKeys(rows, child)
		}
	}
	return rows
}

// keyText writes a shortcut as it is pressed: Ctrl+Shift+S.
func (w *Window) keyText(s fyne.KeyboardShortcut) string {
	text := ""
	for _, m := range []struct {
		modifier fyne.KeyModifier
		name     string
	}{
		{fyne.KeyModifierControl, "control"},
		{fyne.KeyModifierAlt, "alt"},
		{fyne.KeyModifierSuper, "command"},
		{fyne.KeyModifierShift, "shift"},
	} {
		if s.Mod()&m.modifier != 0 {
			text += w.words.Text("key."+m.name) + "+"
		}
	}
	return text + w.keyName(s.Key())
}

// keyName returns what stands on a key.
func (w *Window) keyName(k fyne.KeyName) string {
	if name := "key." + string(k); w.words.Has(name) {
		return w.words.Text(name)
	}
	return string(k)
}

// plateRows lists the keys of the plate.
func (w *Window) plateRows() []keyRow {
	rows := []keyRow{{does: w.words.Text("keys.plate")}}
	for _, p := range plateKeys {
		var names []string
		for _, k := range p.keys {
			names = append(names, w.keyName(k))
		}
		for _, r := range p.runes {
			names = append(names, string(r))
		}
		rows = append(rows, keyRow{strings.Join(names, "  "), w.words.Text(p.does)})
	}
	shift := w.words.Text("key.shift") + "+"
	return append(
		rows,
		keyRow{shift + w.words.Text("key.click"), w.words.Text("keys.plate.besides")},
		keyRow{shift + w.words.Text("key.drag"), w.words.Text("keys.plate.fine")},
	)
}

// fieldRows lists the keys of a field that is typed into.
func (w *Window) fieldRows() []keyRow {
	return []keyRow{
		{does: w.words.Text("keys.field")},
		{w.keyName(fyne.KeyTab), w.words.Text("keys.field.next")},
		{w.keyName(fyne.KeyReturn), w.words.Text("keys.field.enter")},
		{w.keyName(fyne.KeyEscape), w.words.Text("keys.field.back")},
		{w.keyName(fyne.KeyDown), w.words.Text("keys.field.sizes")},
	}
}

// showKeys shows every key there is.
func (w *Window) showKeys() {
	table := container.NewVBox()
	for _, r := range slices.Concat(w.plateRows(), w.fieldRows(), w.menuKeys()) {
		if r.keys == "" {
			table.Add(heading(r.does))
			continue
		}
		does := widget.NewLabel(r.does)
		does.Wrapping = fyne.TextWrapWord
		table.Add(container.New(keyLayout, does, widget.NewLabel(r.keys)))
	}
	const most, margins = 420, 160 // px of layout
	scroll := newTextScroll(table, min(most, w.win.Canvas().Size().Height-margins))
	scroll.sheet = w.newSheet(w.words.Text("menu.keys"), scroll, answer{text: w.words.Text("ask.ok"), main: true})
	scroll.sheet.dialog.Show()
	w.focus(scroll)
}

// keyLayout sets what a key does beside the key.
var keyLayout = rowLayout{190}
