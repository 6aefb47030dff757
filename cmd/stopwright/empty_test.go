package main

import (
	"fyne.io/fyne/v2/app"
	"fyne.io/fyne/v2/widget"
)

// emptyWindow is the value of [asProgram] that makes this test's own binary an
// empty window of the same toolkit, to compare with.
const emptyWindow = "empty"

// showEmptyWindow shows a window with a line of text until it is killed.
func showEmptyWindow() {
	a := app.NewWithID(appID + ".empty")
	w := a.NewWindow("Stopwright, empty")
	w.SetContent(widget.NewLabel("empty"))
	w.ShowAndRun()
}
