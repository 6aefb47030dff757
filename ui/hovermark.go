package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"stopwright/ui/ink"
)

// hoverMark shows where a click would put a stop: a line from the pivot, the
// seat's rim, and the angle.
type hoverMark struct {
	line  *canvas.Line
	rim   *canvas.Circle
	angle *canvas.Text
}

func newHoverMark() *hoverMark {
	h := &hoverMark{
		line: canvas.NewLine(nil), rim: canvas.NewCircle(nil), angle: canvas.NewText("", nil),
	}
	h.line.StrokeWidth, h.rim.StrokeWidth = 1, 2
	h.angle.Alignment = fyne.TextAlignCenter
	h.angle.TextSize = 15
	h.hide()
	return h
}

func (h *hoverMark) objects() []fyne.CanvasObject { return []fyne.CanvasObject{h.line, h.rim, h.angle} }

// hide takes the mark away.
func (h *hoverMark) hide() {
	for _, o := range h.objects() {
		o.Hide()
	}
}

// show puts the mark at a place on the ring, at the least large enough to see.
func (h *hoverMark) show(pivot, at fyne.Position, radius float32, angle string, p ink.Palette) {
	const leastRadius = 3
	radius = max(radius, leastRadius)
	h.line.StrokeColor, h.rim.StrokeColor, h.angle.Color = p.Accent, p.Accent, p.Accent
	h.line.Position1, h.line.Position2 = pivot, at
	h.rim.Resize(fyne.NewSize(2*radius, 2*radius))
	h.rim.Move(at.SubtractXY(radius, radius))
	h.angle.Text = angle
	size := h.angle.MinSize()
	h.angle.Resize(size)
	// On the pivot's side of the ring, where no angle is lettered.
	in := pivot.Subtract(at)
	h.angle.Move(at.Add(fyne.NewPos(in.X*0.16-size.Width/2, in.Y*0.16-size.Height/2)))
	for _, o := range h.objects() {
		o.Show()
		o.Refresh()
	}
}
