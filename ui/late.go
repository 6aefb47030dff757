package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// late is an object that need not be up to date while it is hidden: it is brought
// so whenever it is shown.
type late struct {
	widget.BaseWidget
	object  fyne.CanvasObject
	refresh func()
}

// newLate makes one that is hidden.
func newLate(object fyne.CanvasObject, refresh func()) *late {
	l := &late{object: object, refresh: refresh}
	l.ExtendBaseWidget(l)
	l.Hide()
	return l
}

// Show brings the object up to date before it is seen.
func (l *late) Show() {
	if !l.Visible() {
		l.refresh()
	}
	l.BaseWidget.Show()
}

// CreateRenderer shows the object and nothing else.
func (l *late) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(l.object) }
