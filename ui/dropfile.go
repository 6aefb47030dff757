package ui

import (
	"fyne.io/fyne/v2"

	"stopwright/assets/words"
)

// dropped opens the first of the files that were dropped on the window.
func (w *Window) dropped(_ fyne.Position, items []fyne.URI) {
	t := w.words.Text
	if w.win.Canvas().Overlays().Top() != nil {
		w.say(t("drop.busy"))
		return
	}
	var files []string
	for _, u := range items {
		if u.Scheme() == "file" {
			files = append(files, u.Path())
		}
	}
	switch len(files) {
	case 0:
		w.say(t("drop.none"))
	case 1:
		w.OpenFile(files[0])
	default:
		w.openThen(files[0], func() { w.say(t("drop.first", words.Args{"N": len(files)})) })
	}
}
