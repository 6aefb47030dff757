package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// sizesButton is the small button at the end of a field that shows standard
// sizes. It takes no focus: the Down key in the field does the same.
type sizesButton struct {
	widget.BaseWidget
	icon   *widget.Icon
	tapped func()
}

var (
	_ fyne.Tappable      = (*sizesButton)(nil)
	_ desktop.Cursorable = (*sizesButton)(nil)
)

func newSizesButton(tapped func()) *sizesButton {
	b := &sizesButton{icon: widget.NewIcon(theme.MenuDropDownIcon()), tapped: tapped}
	b.ExtendBaseWidget(b)
	return b
}

// CreateRenderer draws the icon.
func (b *sizesButton) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(b.icon) }

// Tapped shows the sizes.
func (b *sizesButton) Tapped(*fyne.PointEvent) { b.tapped() }

// Cursor is an arrow, not the bar of the text beside it.
func (*sizesButton) Cursor() desktop.Cursor { return desktop.DefaultCursor }
