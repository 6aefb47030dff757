package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/ui/preset"
)

// presetButton makes a button that offers typical sizes of the plan's seats or
// catches. They are the maker's to measure, and the menu says so.
func (w *Window) presetButton(offered func() []preset.Preset) *widget.Button {
	b := widget.NewButtonWithIcon(w.words.Text("preset.choose"), theme.MenuDropDownIcon(), nil)
	b.IconPlacement = widget.ButtonIconTrailingText
	b.OnTapped = func() {
		w.popUp(b, w.presetItems(offered()))
	}
	return b
}

// presetItems makes a menu of presets.
func (w *Window) presetItems(offered []preset.Preset) []*fyne.MenuItem {
	said := fyne.NewMenuItem(w.words.Text("preset.measure"), nil)
	said.Disabled = true
	items := []*fyne.MenuItem{said, fyne.NewMenuItemSeparator()}
	for _, s := range offered {
		name := w.words.Text("preset."+s.Key, s.Args)
		items = append(items, fyne.NewMenuItem(name, func() {
			w.report(w.store.Edit(name, s.Apply))
			w.say(name + ": " + w.words.Text("preset.measure"))
		}))
	}
	return items
}

// popUp shows a menu under an object, which takes the keys: Down and Up lead
// through it, Enter chooses, Escape leaves.
func (w *Window) popUp(under fyne.CanvasObject, items []*fyne.MenuItem) *widget.PopUpMenu {
	m := widget.NewPopUpMenu(fyne.NewMenu("", items...), w.win.Canvas())
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(under)
	m.ShowAtPosition(at.AddXY(0, under.Size().Height))
	return m
}

// seatPresets and catchPresets are the presets for the plan as it is.
func (w *Window) seatPresets() []preset.Preset {
	return preset.Seats(w.store.Plan().Catch.BallDiameter)
}

func (w *Window) catchPresets() []preset.Preset { return preset.Catches() }
