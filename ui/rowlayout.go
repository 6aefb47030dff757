package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"stopwright/detent/plan"
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

// A router's feeds have longer units, and its choices longer words.
var (
	routerValueLayout  = rowLayout{fieldWidth, routerUnitWidth}
	routerChoiceLayout = rowLayout{fieldWidth + routerUnitWidth}
)

const routerUnitWidth = 66

// valueLayoutOf returns the row of a field with its unit.
func valueLayoutOf(f plan.Field) rowLayout {
	if strings.HasPrefix(f.Path, routerKeys) {
		return routerValueLayout
	}
	return valueLayout
}

// choiceLayoutOf returns the row of a choice.
func choiceLayoutOf(f plan.Field) rowLayout {
	if strings.HasPrefix(f.Path, routerKeys) {
		return routerChoiceLayout
	}
	return choiceLayout
}

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
