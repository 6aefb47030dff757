package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// rowLayout sets three objects in a row: a name as wide as there is room, a
// field and a unit of fixed widths, so that the fields of a form line up.
type rowLayout struct{}

const (
	fieldWidth = 96
	unitWidth  = 36
)

func (rowLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	var h float32
	for _, o := range objects {
		h = max(h, o.MinSize().Height)
	}
	return fyne.NewSize(objects[0].MinSize().Width+fieldWidth+unitWidth+theme.Padding(), h)
}

func (rowLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	place := func(o fyne.CanvasObject, x, width float32) {
		o.Resize(fyne.NewSize(width, size.Height))
		o.Move(fyne.NewPos(x, 0))
	}
	field := size.Width - fieldWidth - unitWidth
	place(objects[0], 0, field-theme.Padding())
	place(objects[1], field, fieldWidth)
	place(objects[2], field+fieldWidth, unitWidth)
}
