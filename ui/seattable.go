package ui

import (
	"math"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent/ball"
	"stopwright/detent/plate"
)

// seatTable shows the drills around the chosen one side by side: what the ball
// would do with each, so that choosing is a look and not a sum.
type seatTable struct {
	w      *Window
	rows   []seatRow
	object *fyne.Container
}

// seatRow is one drill.
type seatRow struct {
	choice plate.SeatChoice
	take   *widget.Button
	cells  [5]*widget.Label
}

// ladder is how many drills are shown to either side of the chosen one, a tenth
// of a millimetre apart.
const ladder = 4

func newSeatTable(w *Window) *seatTable {
	t := &seatTable{w: w, object: container.NewVBox()}
	head := container.NewGridWithColumns(5)
	for _, key := range []string{"drop", "holding", "margin", "play", "note"} {
		head.Add(shortLabel(w.words.Text("seats." + key)))
	}
	t.addRow(shortLabel(w.words.Text("seats.drill")), head)
	t.rows = make([]seatRow, 2*ladder+1)
	for i := range t.rows {
		r := &t.rows[i]
		r.take = widget.NewButton("", func() { w.takeSeat(r.choice.Seat) })
		cells := container.NewGridWithColumns(5)
		for k := range r.cells {
			r.cells[k] = shortLabel("")
			cells.Add(r.cells[k])
		}
		t.addRow(r.take, cells)
	}
	return t
}

// addRow adds a row: the drill, as wide as its button, and what it does.
func (t *seatTable) addRow(drill, does fyne.CanvasObject) {
	const wide = 84 // px: a length in any unit
	first := container.NewGridWrap(fyne.NewSize(wide, drill.MinSize().Height), drill)
	t.object.Add(container.NewBorder(nil, nil, first, nil, does))
}

// shortLabel makes a label that is cut short rather than widen the page.
func shortLabel(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Truncation = fyne.TextTruncateEllipsis
	return l
}

// refresh works the drills out for a catch.
func (t *seatTable) refresh(catch int) {
	pl := t.w.store.Report().Plate
	for i := range t.rows {
		r := &t.rows[i]
		d := pl.Plan.Seat.Diameter + float64(i-ladder)*0.1
		d = math.Max(0.1, math.Round(d*1000)/1000)
		r.choice = pl.SeatWith([]int{catch}, d)
		c := r.choice
		r.take.SetText(t.w.words.Length(d))
		r.take.Importance = widget.MediumImportance
		if i == ladder {
			r.take.Importance = widget.HighImportance
		}
		r.take.Refresh()
		texts := [5]string{"–", "–", "–", "–", t.note(c)}
		if c.HasHome {
			texts[0], texts[3] = t.w.words.Length(c.Drop), t.w.words.Angle(c.Play)
		}
		if c.State == ball.Clicks {
			texts[1] = t.w.decimal(strconv.FormatFloat(c.Holding, 'f', 2, 64)) + " N·m"
			texts[2] = t.w.decimal(strconv.FormatFloat(c.Margin(), 'f', 1, 64)) + " ×"
		}
		for k, text := range texts {
			r.cells[k].SetText(text)
		}
	}
}

// note says in a word what becomes of the ball.
func (t *seatTable) note(c plate.SeatChoice) string {
	switch {
	case c.State != ball.Clicks:
		return t.w.words.Text("seats.state." + c.State.String())
	case !c.Seated:
		return t.w.words.Text("seats.loose")
	}
	return t.w.words.Text("seats.seated")
}
