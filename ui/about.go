package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/fonts"
	"stopwright/assets/licences"
	"stopwright/assets/version"
	"stopwright/assets/words"
)

// The sheet about the program, px of layout: wide enough for a licence's lines
// of 80 letters.
const (
	aboutWidth  = 640
	aboutHeight = 260
)

// showAbout says which version this is, and shows the licences of all that goes
// into it.
func (w *Window) showAbout() {
	t := w.words.Text
	about := widget.NewLabel(t("about.text", words.Args{"Version": version.Built()}))
	about.Wrapping = fyne.TextWrapWord

	all := append([]licences.Licence{{Module: t("about.lettering"), Text: fonts.Licence}}, licences.All()...)
	licence := widget.NewLabel("")
	licence.Wrapping = fyne.TextWrapWord
	scroll := newTextScroll(licence, aboutHeight)
	names := make([]string, len(all))
	for i, l := range all {
		names[i] = l.Module
	}
	choice := widget.NewSelect(names, func(name string) {
		for _, l := range all {
			if l.Module == name {
				licence.SetText(l.Text)
				scroll.ScrollToTop()
			}
		}
	})
	choice.SetSelectedIndex(0)

	s := w.newSheet(t("menu.about"), container.NewVBox(about, widget.NewLabel(t("about.licences")), choice, scroll),
		answer{text: t("ask.ok"), main: true})
	scroll.sheet = s
	s.dialog.Resize(fyne.NewSize(aboutWidth, 0))
	s.dialog.Show()
	w.focus(s.main)
}
