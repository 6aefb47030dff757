package ui

import (
	"fyne.io/fyne/v2"

	"stopwright/ui/units"
)

// lengthsMenu chooses how lengths are shown and what a bare number means.
func (w *Window) lengthsMenu() *fyne.MenuItem {
	keys := []string{"units.mm", "units.inch", "units.fraction"}
	return w.styleMenu("menu.lengths", keys, int(w.units().Lengths), func(s units.Style, i int) units.Style {
		s.Lengths = units.Lengths(i)
		return s
	})
}

// anglesMenu chooses how angles are shown.
func (w *Window) anglesMenu() *fyne.MenuItem {
	keys := []string{"units.degrees", "units.minutes"}
	return w.styleMenu("menu.angles", keys, int(w.units().Angles), func(s units.Style, i int) units.Style {
		s.Angles = units.Angles(i)
		return s
	})
}

// styleMenu makes a menu of one side of the style, with a tick at the present
// one.
func (w *Window) styleMenu(name string, keys []string, now int, with func(units.Style, int) units.Style) *fyne.MenuItem {
	m := fyne.NewMenuItem(w.words.Text(name), nil)
	m.ChildMenu = fyne.NewMenu("")
	for i, key := range keys {
		item := w.command(w.words.Text(key), "", 0, func() { w.setUnits(with(w.units(), i)) })
		item.Checked = i == now
		m.ChildMenu.Items = append(m.ChildMenu.Items, item)
	}
	return m
}

// nextUnits goes from millimetres to inches, to fractions of an inch and round
// again.
func (w *Window) nextUnits() {
	s := w.units()
	s.Lengths = (s.Lengths + 1) % (units.Fractions + 1)
	w.setUnits(s)
}
