package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/geom"
)

// turnBar turns the table on screen, and says where it is and which stop comes
// next.
type turnBar struct {
	w      *Window
	slider *widget.Slider
	strip  *sweepStrip
	said   *widget.Label
	object fyne.CanvasObject
}

func newTurnBar(w *Window) *turnBar {
	b := &turnBar{w: w, slider: widget.NewSlider(0, 1), said: widget.NewLabel("")}
	b.said.Truncation = fyne.TextTruncateEllipsis
	b.slider.OnChanged = func(x float64) { w.store.SetTurn(geom.Angle(x)) }
	back := iconButton(theme.MediaSkipPreviousIcon(), func() { w.turnToNext(-1) })
	on := iconButton(theme.MediaSkipNextIcon(), func() { w.turnToNext(1) })
	b.strip = newSweepStrip(b)
	bar := container.New(layout.NewCustomPaddedVBoxLayout(0), b.strip, b.slider)
	b.object = container.NewGridWithColumns(2, container.NewBorder(nil, nil, back, on, bar), b.said)
	b.refresh()
	return b
}

// widest is how far the slider turns each way a table whose travel is more.
const widest = 180

// refresh shows the table's turn.
func (b *turnBar) refresh() {
	t := b.w.store.Plan().Travel
	turn := b.w.store.Turn()
	b.slider.Min, b.slider.Max = max(t.From, min(-widest, turn.Degrees())), min(t.To, max(widest, turn.Degrees()))
	b.slider.Step = b.w.turnStep()
	b.slider.Value = turn.Degrees()
	b.slider.Refresh()
	b.strip.refresh()
	b.said.SetText(b.w.turnReading())
}

// turnStep returns how far one step turns the table, degrees.
func (w *Window) turnStep() float64 {
	if step := w.store.View().Snap; step > 0 {
		return step
	}
	return freeStep
}

// turnBy turns the table by so many steps.
func (w *Window) turnBy(steps float64) {
	w.store.SetTurn(w.store.Turn() + geom.Angle(steps*w.turnStep()))
}

// turnToNext turns the table to the next stop one way or the other.
func (w *Window) turnToNext(way int) {
	if a, ok := w.store.NextStop(way); ok {
		w.store.SetTurn(a)
	}
}

// turnReading says where the table is, which stop is next and how far, and
// which ball clicks where no stop is meant.
func (w *Window) turnReading() string {
	turn := w.store.Turn()
	args := words.Args{"Turn": words.Deg(turn)}
	key := "turn.between"
	if _, ok := w.store.AtStop(); ok {
		key = "turn.at"
	}
	if next, ok := w.store.NextStop(1); ok {
		args["Next"], args["On"] = words.Deg(next), words.Deg(next-turn)
	} else {
		key += ".last"
	}
	text := w.words.Text(key, args)
	pl := w.store.Report().Plate
	for _, b := range pl.Balls(turn) {
		if b.Seat >= 0 && b.Over(pl.Plan.Seat.Mouth()) && !b.Served {
			text += " " + w.words.Text("turn.false", words.Args{
				"Catch": pl.Plan.Catches[b.Catch].Name, "Seat": pl.Seats[b.Seat].Tag,
			})
		}
	}
	return text
}
