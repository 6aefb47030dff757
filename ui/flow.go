package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// flow lays objects out below each other at full width. Unlike the toolkit's own
// box it gives a wrapped text its width first and asks how high that makes it
// only then, so that nothing is laid over its last lines.
type flow struct {
	last bool // the last object takes all the height that is left
}

// Layout lays the objects out.
func (f flow) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	y := float32(0)
	for i, o := range objects {
		if !o.Visible() {
			continue
		}
		o.Resize(fyne.NewSize(size.Width, o.MinSize().Height))
		high := o.MinSize().Height
		if f.last && i == len(objects)-1 {
			high = max(high, size.Height-y)
		}
		o.Move(fyne.NewPos(0, y))
		o.Resize(fyne.NewSize(size.Width, high))
		y += high + theme.Padding()
	}
}

// MinSize returns the size the objects take as wide as they are.
func (flow) MinSize(objects []fyne.CanvasObject) fyne.Size {
	size := fyne.NewSize(0, 0)
	for _, o := range objects {
		if o.Visible() {
			least := o.MinSize()
			size.Width = max(size.Width, least.Width)
			size.Height += least.Height + theme.Padding()
		}
	}
	return size
}

// footed lays out two objects: the second at the foot, as high as its texts are
// at the width there is, the first above it in all the rest.
type footed struct{}

// Layout lays the objects out.
func (footed) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	body, foot := objects[0], objects[1]
	foot.Resize(fyne.NewSize(size.Width, foot.MinSize().Height))
	high := foot.MinSize().Height
	foot.Resize(fyne.NewSize(size.Width, high))
	foot.Move(fyne.NewPos(0, size.Height-high))
	body.Move(fyne.NewPos(0, 0))
	body.Resize(fyne.NewSize(size.Width, max(size.Height-high-theme.Padding(), 0)))
}

// MinSize returns the size both take below each other.
func (footed) MinSize(objects []fyne.CanvasObject) fyne.Size {
	body, foot := objects[0].MinSize(), objects[1].MinSize()
	return fyne.NewSize(max(body.Width, foot.Width), body.Height+theme.Padding()+foot.Height)
}
