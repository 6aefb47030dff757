package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// rowLayout sets objects in a row: a name as wide as there is room, and the rest
// in fixed widths, so that the fields of a form line up.
type rowLayout []float32

// The two kinds of row: a field with its unit, and a choice as wide as both.
var (
	valueLayout  = rowLayout{fieldWidth, unitWidth}
	choiceLayout = rowLayout{fieldWidth + unitWidth}
)

const (
	fieldWidth = 96
	unitWidth  = 36
)

// MinSize leaves the name what it needs.
func (l rowLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	width, height := theme.Padding(), float32(0)
	for _, w := range l {
		width += w
	}
	for _, o := range objects {
		height = max(height, o.MinSize().Height)
	}
	return fyne.NewSize(objects[0].MinSize().Width+width, height)
}

// Layout places the objects from the right.
func (l rowLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	right := size.Width
	for i := len(l) - 1; i >= 0; i-- {
		right -= l[i]
		objects[i+1].Resize(fyne.NewSize(l[i], size.Height))
		objects[i+1].Move(fyne.NewPos(right, 0))
	}
	objects[0].Resize(fyne.NewSize(right-theme.Padding(), size.Height))
	objects[0].Move(fyne.NewPos(0, 0))
}
