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

// underWheel lays a wheel over a form that scrolls. Lists in it take the wheel
// where the pointer is on them, until they come to their end.
func underWheel(form *container.Scroll, lists ...*widget.List) *fyne.Container {
	return container.NewStack(form, newWheel(func(e *fyne.ScrollEvent) {
		for _, list := range lists {
			if under(e.AbsolutePosition, list) && scrollList(list, e) {
				return
			}
		}
		form.Scrolled(e)
	}))
}

// listWheel makes a wheel to lie over a list.
func listWheel(list *widget.List) *wheel {
	return newWheel(func(e *fyne.ScrollEvent) { scrollList(list, e) })
}

// scrollList turns a list by the wheel, and reports whether it went further.
func scrollList(list *widget.List, e *fyne.ScrollEvent) bool {
	was := list.GetScrollOffset()
	list.ScrollToOffset(was - e.Scrolled.DY)
	return list.GetScrollOffset() != was
}

// under reports whether an object lies at a place of the window.
func under(at fyne.Position, o fyne.CanvasObject) bool {
	in := at.Subtract(fyne.CurrentApp().Driver().AbsolutePositionForObject(o))
	return o.Visible() && in.X >= 0 && in.Y >= 0 && in.X < o.Size().Width && in.Y < o.Size().Height
}

// CreateRenderer draws nothing.
func (*wheel) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewWithoutLayout())
}

// Scrolled turns what lies below.
func (v *wheel) Scrolled(e *fyne.ScrollEvent) { v.turned(e) }
