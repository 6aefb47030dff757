package ui

import (
	"fyne.io/fyne/v2"

	"stopwright/ui/units"
)

// angleCell gives the angle of a stop the same width in every row, and more of
// it where there are minutes and seconds to show.
type angleCell struct{ w *Window }

const (
	decimalsWidth = 78
	minutesWidth  = 112
)

// MinSize returns the cell's width.
func (c angleCell) MinSize(objects []fyne.CanvasObject) fyne.Size {
	width := float32(decimalsWidth)
	if c.w.units().Angles == units.Minutes {
		width = minutesWidth
	}
	return fyne.NewSize(width, objects[0].MinSize().Height)
}

// Layout fills the cell.
func (angleCell) Layout(objects []fyne.CanvasObject, size fyne.Size) { objects[0].Resize(size) }
