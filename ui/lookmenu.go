package ui

import "fyne.io/fyne/v2"

// lookMenu chooses the look of the window.
func (w *Window) lookMenu() *fyne.MenuItem {
	m := fyne.NewMenuItem(w.words.Text("menu.look"), nil)
	m.ChildMenu = fyne.NewMenu("")
	for _, l := range []struct {
		key  string
		look Look
	}{
		{"look.desktop", AsDesktop},
		{"look.light", LightLook},
		{"look.dark", DarkLook},
		{"look.black", BlackOnWhiteLook},
		{"look.white", WhiteOnBlackLook},
	} {
		item := w.command(w.words.Text(l.key), "", 0, func() { w.chooseLook(l.look) })
		item.Checked = w.theme.look == l.look
		m.ChildMenu.Items = append(m.ChildMenu.Items, item)
	}
	return m
}
