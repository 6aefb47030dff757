package main

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"fyne.io/fyne/v2/widget"
)

// emptyWindow and emptyLarge are the values of [asProgram] that make this test's
// own binary an empty window of the same toolkit, to compare with: as large as
// its line of text, and as large as ours at the first start.
const (
	emptyWindow = "empty"
	emptyLarge  = "empty-large"
)

// showEmptyWindow shows a window with a line of text until it is killed.
func showEmptyWindow(large bool) {
	a := app.NewWithID(appID + ".empty")
	w := a.NewWindow("Stopwright, empty")
	w.SetContent(widget.NewLabel("empty"))
	if large {
		w.Resize(fyne.NewSize(1180, 780))
	}
	w.ShowAndRun()
}
