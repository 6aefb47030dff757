package ui

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// The size of a card, px of layout.
const (
	cardWidth   = 150
	cardHeight  = 252
	cardPicture = 104
	scrollRoom  = 12 // for a scroll bar beside the cards
)

// roomCard is one answer: a small plate over its numbers. Pointing at it shows it
// on the large plate; a click, or Enter, makes it the plan.
type roomCard struct {
	widget.BaseWidget
	v      *roomView
	room   *detent.Room
	scene  scene
	frame  *canvas.Rectangle
	object fyne.CanvasObject
}

var (
	_ fyne.Tappable     = (*roomCard)(nil)
	_ fyne.Focusable    = (*roomCard)(nil)
	_ desktop.Hoverable = (*roomCard)(nil)
)

func newRoomCard(v *roomView, r *detent.Room) *roomCard {
	c := &roomCard{v: v, room: r, frame: canvas.NewRectangle(color.Transparent)}
	c.frame.StrokeWidth = 2
	title := widget.NewLabel(v.w.roomKind(r.Kind))
	title.Truncation = fyne.TextTruncateEllipsis
	numbers := widget.NewLabel(v.w.roomNumbers(*r))
	numbers.Wrapping = fyne.TextWrapWord
	numbers.SizeName = theme.SizeNameCaptionText
	if r.Fits {
		c.scene = sceneOf(plate.New(r.Plan), v.w.store)
	}
	picture := newSketch(v.w, fyne.NewSize(cardWidth-16, cardPicture), c.paint)
	c.object = container.NewStack(c.frame, container.NewPadded(container.New(flow{}, picture, title, numbers)))
	c.ExtendBaseWidget(c)
	c.outline(false)
	return c
}

// CreateRenderer draws the card.
func (c *roomCard) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(c.object) }

// paint paints the small plate, without its hatching and centre marks; a ring
// that does not fit is drawn round the parts it is too large for.
func (c *roomCard) paint(k *ink.Canvas, d float64, p ink.Palette) {
	size := k.Img.Bounds().Size()
	sc, sign := c.scene, false
	if sc.plate == nil {
		sc, sign = sceneOf(c.v.w.store.Report().Plate, c.v.w.store), true
	}
	bounds := sc.bounds
	if sign {
		bounds.Add(geom.Point{X: c.room.Needs, Y: c.room.Needs})
		bounds.Add(geom.Point{X: -c.room.Needs, Y: -c.room.Needs})
	}
	view := ink.Fit(bounds, float64(size.X)/d, float64(size.Y)/d, 5).Dense(d)
	style := sc.style(p)
	ink.Paint(k, sc.drawing, view, func(e drawing.Entity) ink.Stroke {
		s := style(e)
		s.Hatch = ink.Hatch{}
		if e.Layer == drawing.Centres || e.Layer == drawing.Witness || e.Layer == drawing.Lettering || sign && e.Layer == drawing.Seats {
			return ink.Stroke{}
		}
		return s
	})
	if sign {
		k.Circle(view.Origin, c.room.Needs*view.Scale, p.Weight(ink.ThickLine)*d, p.Fault, []float64{6 * d, 4 * d})
	}
}

// outline shows whether the card is looked at.
func (c *roomCard) outline(on bool) {
	p := c.v.w.palette()
	c.frame.StrokeColor, c.frame.FillColor = alpha(p.Faint, 0.5), color.Transparent
	if on {
		c.frame.StrokeColor, c.frame.FillColor = p.Accent, alpha(p.Accent, 0.08)
	}
	c.frame.Refresh()
}

// MouseIn shows the answer on the large plate.
func (c *roomCard) MouseIn(*desktop.MouseEvent) { c.point(true) }

// MouseMoved does nothing.
func (c *roomCard) MouseMoved(*desktop.MouseEvent) {}

// MouseOut shows the plan again.
func (c *roomCard) MouseOut() { c.point(false) }

// FocusGained shows the answer, as pointing at it does.
func (c *roomCard) FocusGained() { c.point(true) }

// FocusLost shows the plan again.
func (c *roomCard) FocusLost() { c.point(false) }

func (c *roomCard) point(at bool) {
	c.outline(at)
	switch {
	case at:
		c.v.look(c.room)
	case c.v.shown == c.room:
		c.v.look(nil)
	}
}

// Tapped makes the answer the plan.
func (c *roomCard) Tapped(*fyne.PointEvent) { c.v.take(c.room) }

// TypedRune does nothing.
func (c *roomCard) TypedRune(rune) {}

// TypedKey makes the answer the plan with Enter or the space bar.
func (c *roomCard) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
		c.v.take(c.room)
	}
}
