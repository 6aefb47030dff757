package ui

import "fyne.io/fyne/v2"

// panesLayout sets the window's three panes side by side: stops, plate, parts.
// The outer two are as wide as their fields need and a little wider on a large
// window; the plate has the rest.
type panesLayout struct{}

const (
	stopsWidth = 262
	partsWidth = 292
	paneGap    = 6
	wideWindow = 1400 // from here on the outer panes are wider by widePanes
	widePanes  = 60
)

// MinSize leaves room for a plate that can still be read.
func (panesLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	var h float32
	for _, o := range objects {
		h = max(h, o.MinSize().Height)
	}
	return fyne.NewSize(stopsWidth+objects[1].MinSize().Width+partsWidth+2*paneGap, h)
}

// Layout places the panes.
func (panesLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	left, right := float32(stopsWidth), float32(partsWidth)
	if size.Width >= wideWindow {
		left, right = left+widePanes, right+widePanes
	}
	x := float32(0)
	for i, width := range [3]float32{left, size.Width - left - right - 2*paneGap, right} {
		objects[i].Resize(fyne.NewSize(width, size.Height))
		objects[i].Move(fyne.NewPos(x, 0))
		x += width + paneGap
	}
}
