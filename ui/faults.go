package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/ui/crash"
)

// FaultFolder returns the folder in which faults of the program are written
// down, beside the recovery copies; "" if there is none.
func (w *Window) FaultFolder() string { return w.filing.folder }

// tellFaults says that the program has ended by a fault, where there is nothing
// to recover.
func (w *Window) tellFaults(reports []string) {
	w.ask(w.words.Text("fault.title"), w.faultText(reports), answer{text: w.words.Text("ask.ok"), main: true})
	crash.Told(reports)
}

// aboutFaults says the same above what is to be recovered; of no reports it is
// nothing to be seen.
func (w *Window) aboutFaults(reports []string) fyne.CanvasObject {
	label := widget.NewLabel("")
	label.Wrapping = fyne.TextWrapWord
	if len(reports) == 0 {
		label.Hide()
		return label
	}
	label.SetText(w.faultText(reports))
	return label
}

// faultText names the newest report by the path it has once it is told of.
func (w *Window) faultText(reports []string) string {
	newest := crash.Settled(reports[len(reports)-1])
	return w.words.Text("fault.text", words.Args{"File": newest})
}
