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
	share float32 // of the height that is above the bar
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
	firstShare = 0.78 // room for a plate, and four or five lines of checks
)

func newSplitBar() *splitBar {
	b := &splitBar{share: firstShare, moved: func() {}}
	b.ExtendBaseWidget(b)
	return b
}

// place returns how much is above the bar.
func (b *splitBar) place() float32 { return max(min(b.share*b.room, b.most), b.least) }

// Dragged moves the bar.
func (b *splitBar) Dragged(e *fyne.DragEvent) {
	if b.room <= 0 {
		return
	}
	b.share = max(min(b.place()+e.Dragged.DY, b.most), b.least) / b.room
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
