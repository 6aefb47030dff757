package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// workList is the list of a work view. A click ticks a row; with the keys, up
// and down go from row to row and Space ticks.
type workList struct {
	widget.List
	v *workView
}

func newWorkList(v *workView) *workList {
	l := &workList{v: v}
	l.Length = func() int { return len(v.rows) }
	l.CreateItem = func() fyne.CanvasObject { return newWorkLine() }
	l.UpdateItem = func(i widget.ListItemID, o fyne.CanvasObject) { o.(*workLine).show(v, v.rows[i]) }
	l.OnSelected = func(i widget.ListItemID) {
		l.Unselect(i) // so that the same row can be chosen again
		v.toggle(i)
	}
	l.ExtendBaseWidget(l)
	return l
}

// workLine is one line of the list.
type workLine struct {
	widget.BaseWidget
	icon *widget.Icon
	text *widget.Label
	box  *fyne.Container
}

func newWorkLine() *workLine {
	l := &workLine{icon: widget.NewIcon(theme.CheckButtonIcon()), text: widget.NewLabel("")}
	l.text.Truncation = fyne.TextTruncateEllipsis
	l.box = container.NewBorder(nil, nil, l.icon, nil, l.text)
	l.ExtendBaseWidget(l)
	return l
}

// CreateRenderer draws the box and the text.
func (l *workLine) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(l.box) }

// show shows a row: an operation in bold, its holes below it.
func (l *workLine) show(v *workView, r workRow) {
	resource := theme.CheckButtonIcon()
	if v.isDone(r) {
		resource = theme.CheckButtonCheckedIcon()
	}
	l.icon.SetResource(resource)
	l.text.TextStyle.Bold = r.hole < 0 && r.stray == ""
	l.text.SetText(v.text(r))
}
