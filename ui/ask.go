package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
)

// answer is a button of a question.
type answer struct {
	text string
	then func()
	main bool // what most people want: it has the focus
}

// ask puts a question over the window. Every answer closes it.
func (w *Window) ask(title, text string, answers ...answer) {
	label := widget.NewLabel(text)
	label.Wrapping = fyne.TextWrapWord
	w.sheet(title, label, answers...)
}

// sheet shows content over the window with its answers below, and returns what
// closes it.
func (w *Window) sheet(title string, content fyne.CanvasObject, answers ...answer) (shut func()) {
	row := container.NewHBox(layout.NewSpacer())
	var first *widget.Button
	var d *dialog.CustomDialog
	for _, a := range answers {
		b := widget.NewButton(a.text, func() {
			d.Hide()
			if a.then != nil {
				a.then()
			}
		})
		if a.main {
			b.Importance = widget.HighImportance
			first = b
		}
		row.Add(b)
	}
	d = dialog.NewCustomWithoutButtons(title, container.NewBorder(nil, row, nil, nil, content), w.win)
	d.Resize(fyne.NewSize(520, 0))
	d.Show()
	if first != nil {
		w.focus(first)
	}
	return d.Hide
}

// tellError shows that something could not be done.
func (w *Window) tellError(err error) {
	w.ask(w.words.Text("ask.failed"), err.Error(), answer{text: w.words.Text("ask.ok"), main: true})
}
