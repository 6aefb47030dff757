package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// panesLayout sets the window's panes side by side: stops, pages, parts; and
// the checks below the pages, with a bar between the two to drag. The outer two
// are as wide as their fields need and a little wider on a large window, the
// middle has the rest. Tab goes through the panes in the order stops, pages,
// parts, checks.
type panesLayout struct {
	bar *splitBar
}

const (
	stopsWidth   = 262
	partsWidth   = 292
	paneGap      = 6
	wideWindow   = 1400 // from here on the outer panes are wider by widePanes
	widePanes    = 60
	narrowWindow = 900 // up to here they are narrower by narrowPanes, for a small screen at 200 %
	narrowPanes  = 30
)

// newPanes sets out the panes.
func newPanes(stops, pages, parts, checks fyne.CanvasObject) *fyne.Container {
	bar := newSplitBar()
	c := container.New(panesLayout{bar}, stops, pages, parts, checks, bar)
	bar.moved = c.Refresh
	return c
}

// sides returns the widths of the outer panes in a window of a width.
func sides(width float32) (left, right float32) {
	switch {
	case width >= wideWindow:
		return stopsWidth + widePanes, partsWidth + widePanes
	case width <= narrowWindow:
		return stopsWidth - narrowPanes, partsWidth - narrowPanes
	}
	return stopsWidth, partsWidth
}

// MinSize leaves room for a plate that can still be read.
func (l panesLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	stops, pages, parts, checks := objects[0].MinSize(), objects[1].MinSize(), objects[2].MinSize(), objects[3].MinSize()
	left, right := sides(0)
	return fyne.NewSize(
		left+max(pages.Width, checks.Width)+right+2*paneGap,
		max(stops.Height, parts.Height, pages.Height+checks.Height+barHeight),
	)
}

// Layout places the panes.
func (l panesLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	stops, pages, parts, checks := objects[0], objects[1], objects[2], objects[3]
	left, right := sides(size.Width)
	place := func(o fyne.CanvasObject, x, y, width, height float32) {
		o.Resize(fyne.NewSize(width, height))
		o.Move(fyne.NewPos(x, y))
	}
	middle, from := size.Width-left-right-2*paneGap, left+paneGap
	l.bar.least = pages.MinSize().Height
	l.bar.room = size.Height
	l.bar.most = size.Height - barHeight - checks.MinSize().Height
	at := l.bar.place()
	place(stops, 0, 0, left, size.Height)
	place(pages, from, 0, middle, at)
	place(l.bar, from, at, middle, barHeight)
	place(checks, from, at+barHeight, middle, size.Height-at-barHeight)
	place(parts, from+middle+paneGap, 0, right, size.Height)
}
