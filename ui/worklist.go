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
	v    *workView
	tall map[int]bool // the rows that are higher than one line
}

func newWorkList(v *workView) *workList {
	l := &workList{v: v, tall: map[int]bool{}}
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

// Resize fits the rows to the width.
func (l *workList) Resize(size fyne.Size) {
	wider := size.Width != l.Size().Width
	l.List.Resize(size)
	if wider {
		l.fit()
	}
}

// fit gives the rows of operations the height their texts take, wrapped at the
// width there is.
func (l *workList) fit() {
	line := newWorkLine()
	one := line.MinSize().Height
	was := l.tall
	l.tall = map[int]bool{}
	for i, r := range l.v.rows {
		if !r.heads() {
			continue
		}
		line.show(l.v, r)
		line.Resize(fyne.NewSize(l.Size().Width, one))
		l.tall[i] = true
		l.SetItemHeight(i, line.MinSize().Height)
	}
	for i := range was {
		if !l.tall[i] {
			l.SetItemHeight(i, one)
		}
	}
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

// show shows a row: an operation in bold, as many lines as it takes, its holes
// below it.
func (l *workLine) show(v *workView, r workRow) {
	resource := theme.CheckButtonIcon()
	if v.isDone(r) {
		resource = theme.CheckButtonCheckedIcon()
	}
	l.icon.SetResource(resource)
	l.text.Truncation, l.text.Wrapping = fyne.TextTruncateEllipsis, fyne.TextWrapOff
	if l.text.TextStyle.Bold = r.heads(); r.heads() {
		l.text.Truncation, l.text.Wrapping = fyne.TextTruncateOff, fyne.TextWrapWord
	}
	l.text.SetText(v.text(r))
}
