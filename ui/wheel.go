package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// wheel lies over something that scrolls and takes the mouse wheel for it. The
// toolkit's fields scroll themselves and keep the wheel, so that a form stuck
// wherever the pointer came over one. All else goes to what lies below.
type wheel struct {
	widget.BaseWidget
	turned func(*fyne.ScrollEvent)
}

var _ fyne.Scrollable = (*wheel)(nil)

func newWheel(turned func(*fyne.ScrollEvent)) *wheel {
	v := &wheel{turned: turned}
	v.ExtendBaseWidget(v)
	return v
}

// underWheel lays a wheel over a form that scrolls.
func underWheel(form *container.Scroll) *fyne.Container {
	return container.NewStack(form, newWheel(form.Scrolled))
}

// listWheel makes a wheel to lie over a list.
func listWheel(list *widget.List) *wheel {
	return newWheel(func(e *fyne.ScrollEvent) { list.ScrollToOffset(list.GetScrollOffset() - e.Scrolled.DY) })
}

// CreateRenderer draws nothing.
func (*wheel) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewWithoutLayout())
}

// Scrolled turns what lies below.
func (v *wheel) Scrolled(e *fyne.ScrollEvent) { v.turned(e) }
