package ui

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
)

// guideCard is a card of the guide, lying on the window. What is clicked on it
// does not reach the pane below.
type guideCard struct {
	widget.BaseWidget
	g       *guide
	title   *widget.Label
	text    *widget.Label
	skip    *sheetButton
	back    *sheetButton
	next    *sheetButton
	edge    *canvas.Rectangle
	paper   *canvas.Rectangle // within the edge
	frame   *canvas.Rectangle // round the pane it is about
	box     *fyne.Container
	overlay *fyne.Container // over the whole window
}

var (
	_ fyne.Tappable     = (*guideCard)(nil)
	_ fyne.Scrollable   = (*guideCard)(nil)
	_ fyne.Draggable    = (*guideCard)(nil)
	_ desktop.Mouseable = (*guideCard)(nil)
	_ desktop.Hoverable = (*guideCard)(nil)
)

// How wide a card is and how thick its edge, px of layout.
const (
	guideWidth = 380
	edgeWidth  = 2
)

func newGuideCard(g *guide) *guideCard {
	c := &guideCard{
		g: g, title: heading(""), text: widget.NewLabel(""),
		edge: canvas.NewRectangle(color.Transparent), paper: canvas.NewRectangle(color.Transparent),
		frame: canvas.NewRectangle(color.Transparent),
	}
	c.text.Wrapping = fyne.TextWrapWord
	keys := &sheet{escape: g.end}
	t := g.w.words.Text
	c.skip = newSheetButton(keys, t("guide.skip"), g.end)
	c.back = newSheetButton(keys, t("guide.back"), func() { g.turn(-1) })
	c.next = newSheetButton(keys, t("guide.next"), func() { g.turn(1) })
	c.next.Importance = widget.HighImportance
	buttons := container.NewHBox(c.skip, layout.NewSpacer(), c.back, c.next)
	within := layout.NewCustomPaddedLayout(edgeWidth, edgeWidth, edgeWidth, edgeWidth)
	c.box = container.NewStack(c.edge, container.New(within, c.paper), container.NewPadded(container.NewPadded(container.NewBorder(c.title, buttons, nil, nil, c.text))))
	c.ExtendBaseWidget(c)
	c.overlay = container.New(guideLayout{c}, c.frame, c)
	c.hide()
	return c
}

// CreateRenderer draws the card.
func (c *guideCard) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(c.box) }

// fill puts the words of the guide's present step on the card.
func (c *guideCard) fill() {
	title, text := c.g.text()
	c.title.SetText(title)
	c.text.SetText(text)
	c.next.SetText(c.g.w.words.Text("guide.next"))
	if c.g.at == len(guideSteps)-1 {
		c.next.SetText(c.g.w.words.Text("guide.done"))
	}
	if c.g.at == 0 {
		c.back.Disable()
	} else {
		c.back.Enable()
	}
	p := c.g.w.palette()
	c.edge.FillColor, c.paper.FillColor = p.Ink, p.Paper
	c.frame.StrokeColor, c.frame.StrokeWidth = p.Accent, 3
	c.edge.Refresh()
	c.paper.Refresh()
	c.frame.Refresh()
}

func (c *guideCard) hide() {
	c.frame.Hide()
	c.Hide()
}

// guideLayout lays a card beside the pane it is about, and a frame round that.
type guideLayout struct{ c *guideCard }

// MinSize asks for no room: the card lies over what is there.
func (guideLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

// Layout places frame and card.
func (l guideLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	const gap = 14
	c := l.c
	if c.g.at < 0 {
		c.hide()
		return
	}
	card := fyne.NewSize(min(guideWidth, size.Width), 0)
	c.Resize(fyne.NewSize(card.Width, c.MinSize().Height))
	card.Height = whole(c.MinSize().Height) // once its lines are as wide as that
	c.Resize(card)
	at := fyne.NewPos((size.Width-card.Width)/2, (size.Height-card.Height)/2)
	pane := c.g.pane()
	if pane == nil {
		c.frame.Hide()
	} else {
		d := fyne.CurrentApp().Driver()
		from := d.AbsolutePositionForObject(pane).Subtract(d.AbsolutePositionForObject(c.overlay))
		c.frame.Move(from)
		c.frame.Resize(pane.Size())
		c.frame.Show()
		at = beside(from, pane.Size(), card, size, gap)
	}
	c.Move(fyne.NewPos(whole(at.X), whole(at.Y)))
}

// whole rounds up to whole px of layout, between which an edge would be blurred.
func whole(x float32) float32 { return float32(math.Ceil(float64(x))) }

// beside returns where a card goes: right or left of the pane, else above it,
// else within it at the foot.
func beside(pane fyne.Position, paneSize, card, window fyne.Size, gap float32) fyne.Position {
	top := min(max(pane.Y+gap, 0), max(0, window.Height-card.Height))
	mid := min(max(pane.X+(paneSize.Width-card.Width)/2, 0), max(0, window.Width-card.Width))
	switch {
	case paneSize.Width > window.Width/3 && pane.Y >= card.Height+gap:
		return fyne.NewPos(mid, pane.Y-card.Height-gap)
	case paneSize.Width > window.Width/3:
		return fyne.NewPos(mid, max(0, pane.Y+paneSize.Height-card.Height-gap))
	case pane.X+paneSize.Width+gap+card.Width <= window.Width:
		return fyne.NewPos(pane.X+paneSize.Width+gap, top)
	}
	return fyne.NewPos(max(0, pane.X-card.Width-gap), top)
}

// What the mouse does on the card stays there.

// Tapped does nothing.
func (*guideCard) Tapped(*fyne.PointEvent) {}

// Scrolled does nothing.
func (*guideCard) Scrolled(*fyne.ScrollEvent) {}

// Dragged does nothing.
func (*guideCard) Dragged(*fyne.DragEvent) {}

// DragEnd does nothing.
func (*guideCard) DragEnd() {}

// MouseDown does nothing.
func (*guideCard) MouseDown(*desktop.MouseEvent) {}

// MouseUp does nothing.
func (*guideCard) MouseUp(*desktop.MouseEvent) {}

// MouseIn does nothing.
func (*guideCard) MouseIn(*desktop.MouseEvent) {}

// MouseMoved does nothing.
func (*guideCard) MouseMoved(*desktop.MouseEvent) {}

// MouseOut does nothing.
func (*guideCard) MouseOut() {}
