package ui

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/ui/ink"
)

// roomBoard shows which catch holds which stop, a column a catch. A stop is
// dragged from one column to another, or moved with the arrow keys.
type roomBoard struct {
	w       *Window
	columns []*fyne.Container
	note    *widget.Label
	object  *fyne.Container
	shown   plan.Plan
	made    bool
}

const (
	chipWidth  = 66
	chipHeight = 24
	mostChips  = 100 // stops on the board: of more the list of stops tells
)

func newRoomBoard(w *Window) *roomBoard {
	b := &roomBoard{w: w, note: widget.NewLabel(""), object: container.New(flow{})}
	b.note.Wrapping = fyne.TextWrapWord
	return b
}

// refresh shows the plan's stops by their catches.
func (b *roomBoard) refresh() {
	p := b.w.store.Plan()
	if b.made && slices.Equal(b.shown.Catches, p.Catches) && plan.Equal(plan.Plan{Stops: b.shown.Stops}, plan.Plan{Stops: p.Stops}) {
		return
	}
	b.shown, b.made = p, true
	b.object.RemoveAll()
	b.columns = nil
	defer b.object.Refresh()
	switch {
	case len(p.Catches) == 1:
		b.say("room.board.one")
		return
	case len(p.Stops) > mostChips:
		b.say("room.board.many")
		return
	}
	grid := container.NewGridWithColumns(len(p.Catches))
	names := catchNames(p)
	for k, c := range p.Catches {
		chips := container.NewGridWrap(fyne.NewSize(chipWidth, chipHeight))
		for i, s := range p.Stops {
			if stopCatches(s, names)[0] == c.Name {
				chips.Add(newStopChip(b, i))
			}
		}
		mark := newSketch(b.w, fyne.NewSize(14, 20), func(cv *ink.Canvas, d float64, pal ink.Palette) {
			size := cv.Img.Bounds().Size()
			drawCatchMark(cv, ink.Px{X: float64(size.X) / 2, Y: float64(size.Y) / 2}, 4*d, k, catchInk(pal, k), d)
		})
		title := widget.NewLabel(b.w.words.Text("room.column", words.Args{"Name": c.Name, "Radius": words.MM(c.Radius)}))
		title.Truncation = fyne.TextTruncateEllipsis
		column := container.New(flow{}, container.NewBorder(nil, nil, mark, nil, title), chips)
		b.columns = append(b.columns, column)
		grid.Add(column)
	}
	b.object.Add(grid)
	b.say("room.board.drag")
}

func (b *roomBoard) say(key string) {
	b.note.SetText(b.w.words.Text(key))
	b.object.Add(b.note)
}

// columnAt returns the column under a position of the window, -1 where there is
// none.
func (b *roomBoard) columnAt(at fyne.Position) int {
	for k, c := range b.columns {
		from := fyne.CurrentApp().Driver().AbsolutePositionForObject(c)
		if at.X >= from.X && at.X < from.X+c.Size().Width {
			return k
		}
	}
	return -1
}

// move gives a stop the catch of a column.
func (b *roomBoard) move(stop, column int) {
	p := b.w.store.Plan()
	if column < 0 || column >= len(p.Catches) || stop >= len(p.Stops) {
		return
	}
	name := p.Catches[column].Name
	b.w.report(b.w.store.ChangeStops(b.w.words.Text("edit.stopcatches", words.Args{"Angle": words.Deg(p.Stops[stop].Angle)}), func(s *plan.Stop) {
		if column == 0 && len(s.Catches) == 0 {
			return // named or not, it is the first
		}
		s.Catches = []string{name}
	}, stop))
}

// focusStop gives the keys to a stop's chip.
func (b *roomBoard) focusStop(stop int) {
	for _, c := range b.columns {
		for _, o := range c.Objects[1].(*fyne.Container).Objects {
			if chip := o.(*stopChip); chip.stop == stop {
				b.w.focus(chip)
			}
		}
	}
}

// stopChip is one stop on the board.
type stopChip struct {
	widget.BaseWidget
	b     *roomBoard
	stop  int
	back  *canvas.Rectangle
	label *widget.Label
	last  fyne.Position // of the pointer in the window, while dragging
	drag  bool
}

var (
	_ fyne.Draggable = (*stopChip)(nil)
	_ fyne.Tappable  = (*stopChip)(nil)
	_ fyne.Focusable = (*stopChip)(nil)
)

func newStopChip(b *roomBoard, stop int) *stopChip {
	c := &stopChip{b: b, stop: stop, label: widget.NewLabel("")}
	s := b.w.store.Plan().Stops[stop]
	text := b.w.words.Angle(s.Angle)
	if s.BothSides && s.Angle != 0 {
		text = "±" + b.w.words.Angle(max(s.Angle, -s.Angle))
	}
	if held := stopCatches(s, catchNames(b.w.store.Plan())); len(held) > 1 {
		text += " +"
	}
	c.label.SetText(text)
	c.label.Truncation = fyne.TextTruncateEllipsis
	c.label.SizeName = theme.SizeNameCaptionText
	c.label.Alignment = fyne.TextAlignCenter
	c.back = canvas.NewRectangle(b.w.theme.Color(theme.ColorNameButton, b.w.app.Settings().ThemeVariant()))
	c.back.CornerRadius = 3
	c.back.StrokeWidth = 2
	c.ExtendBaseWidget(c)
	return c
}

// CreateRenderer draws the chip.
func (c *stopChip) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewStack(c.back, c.label))
}

// Dragged takes the chip along with the pointer.
func (c *stopChip) Dragged(e *fyne.DragEvent) {
	c.drag, c.last = true, e.AbsolutePosition
	c.Move(c.Position().Add(e.Dragged))
}

// DragEnd leaves the stop with the catch of the column it was dragged to.
func (c *stopChip) DragEnd() {
	if !c.drag {
		return
	}
	c.drag = false
	column := c.b.columnAt(c.last)
	c.b.made = false // the chip lies where it was dropped: make the board anew
	c.b.move(c.stop, column)
	c.b.refresh()
}

// Tapped selects the stop.
func (c *stopChip) Tapped(*fyne.PointEvent) {
	c.b.w.store.SelectStop(c.stop)
	c.b.w.focus(c)
}

// FocusGained shows that the keys go here.
func (c *stopChip) FocusGained() {
	c.back.StrokeColor = c.b.w.palette().Accent
	c.back.Refresh()
}

// FocusLost shows that they no longer do.
func (c *stopChip) FocusLost() {
	c.back.StrokeColor = nil
	c.back.Refresh()
}

// TypedRune does nothing.
func (c *stopChip) TypedRune(rune) {}

// TypedKey moves the stop to the next catch, left or right.
func (c *stopChip) TypedKey(k *fyne.KeyEvent) {
	by := map[fyne.KeyName]int{fyne.KeyLeft: -1, fyne.KeyRight: 1}[k.Name]
	if by == 0 {
		return
	}
	p := c.b.w.store.Plan()
	names := catchNames(p)
	now := slices.Index(names, stopCatches(p.Stops[c.stop], names)[0])
	c.b.move(c.stop, now+by)
	c.b.refresh()
	c.b.focusStop(c.stop)
}
