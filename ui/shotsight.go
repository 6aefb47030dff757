package ui

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// capture paints the window as it is seen on a display. The toolkit's painter of
// pictures cuts what stands in a field at the field's edge only, not at that of
// the page that is scrolled, so what is scrolled out of sight is left out.
func (w *Window) capture() image.Image {
	var hidden []fyne.CanvasObject
	size := w.win.Canvas().Size()
	outOfSight(w.win.Content(), sight{right: size.Width, foot: size.Height}, func(o fyne.CanvasObject) {
		o.Hide()
		hidden = append(hidden, o)
	})
	defer func() {
		for _, o := range hidden {
			o.Show()
		}
	}()
	return w.win.Canvas().Capture()
}

// sight is the part of the window in which something can be seen, px of layout.
type sight struct{ left, top, right, foot float32 }

// placeOf returns where an object lies in the window.
func placeOf(o fyne.CanvasObject) sight {
	at, size := fyne.CurrentApp().Driver().AbsolutePositionForObject(o), o.Size()
	return sight{at.X, at.Y, at.X + size.Width, at.Y + size.Height}
}

// within returns what of a place is in another.
func (s sight) within(o sight) sight {
	return sight{max(s.left, o.left), max(s.top, o.top), min(s.right, o.right), min(s.foot, o.foot)}
}

// outOfSight calls leave with each object that cannot be seen, and with each
// field the line of which cannot.
func outOfSight(o fyne.CanvasObject, seen sight, leave func(fyne.CanvasObject)) {
	if o == nil || !o.Visible() {
		return
	}
	place := placeOf(o)
	part := place.within(seen)
	_, typed := o.(interface{ SelectedText() string }) // a field, or what is made from one
	switch middle := (place.top + place.foot) / 2; {
	case part.left >= part.right || part.top >= part.foot, typed && (middle < part.top || middle > part.foot):
		leave(o)
		return
	}
	switch o := o.(type) {
	case *fyne.Container:
		for _, child := range o.Objects {
			outOfSight(child, seen, leave)
		}
	case *container.AppTabs:
		outOfSight(o.Selected().Content, seen, leave)
	case *container.Split:
		outOfSight(o.Leading, seen, leave)
		outOfSight(o.Trailing, seen, leave)
	case *container.Scroll:
		outOfSight(o.Content, part, leave)
	}
}
