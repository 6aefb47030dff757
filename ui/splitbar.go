package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// splitBar is the bar between the pages and the checks below them. It is
// dragged up and down.
type splitBar struct {
	widget.BaseWidget
	below float32 // the height below the bar that was dragged to; 0: not dragged
	moved func()

	// What the layout has found: the whole height, and the least and the most
	// that can be above the bar.
	room, least, most float32
}

var (
	_ fyne.Draggable     = (*splitBar)(nil)
	_ desktop.Cursorable = (*splitBar)(nil)
)

const (
	barHeight  = 8
	firstBelow = 140  // four or five lines of checks; what a window has more goes to the plate
	firstShare = 0.22 // of a low window that is below the bar at most
)

func newSplitBar() *splitBar {
	b := &splitBar{moved: func() {}}
	b.ExtendBaseWidget(b)
	return b
}

// place returns how much is above the bar.
func (b *splitBar) place() float32 {
	below := b.below
	if below == 0 {
		below = min(firstBelow, firstShare*b.room)
	}
	return b.within(b.room - barHeight - below)
}

// within returns the nearest height above the bar that there is room for.
func (b *splitBar) within(above float32) float32 { return max(min(above, b.most), b.least) }

// Dragged moves the bar.
func (b *splitBar) Dragged(e *fyne.DragEvent) {
	if b.room <= 0 {
		return
	}
	b.below = b.room - barHeight - b.within(b.place()+e.Dragged.DY)
	b.moved()
}

// DragEnd ends a move.
func (*splitBar) DragEnd() {}

// Cursor says which way the bar moves.
func (*splitBar) Cursor() desktop.Cursor { return desktop.VResizeCursor }

// CreateRenderer draws a short line to take hold of.
func (b *splitBar) CreateRenderer() fyne.WidgetRenderer {
	r := &splitBarRenderer{b: b, grip: canvas.NewRectangle(theme.Color(theme.ColorNameInputBorder))}
	return r
}

type splitBarRenderer struct {
	b    *splitBar
	grip *canvas.Rectangle
}

func (r *splitBarRenderer) Layout(size fyne.Size) {
	const long, thick = 60, 3
	r.grip.Resize(fyne.NewSize(long, thick))
	r.grip.Move(fyne.NewPos((size.Width-long)/2, (size.Height-thick)/2))
}

func (r *splitBarRenderer) MinSize() fyne.Size { return fyne.NewSize(0, barHeight) }

func (r *splitBarRenderer) Refresh() {
	r.grip.FillColor = theme.Color(theme.ColorNameInputBorder)
	r.grip.Refresh()
}

func (r *splitBarRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.grip} }
func (r *splitBarRenderer) Destroy()                     {}
