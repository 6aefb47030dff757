package ui

import (
	"errors"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// drilledSheet asks where a seat came out: by its place as the part lies at the
// drill, or by what callipers read over pins.
type drilledSheet struct {
	w     *Window
	pl    *plate.Plate
	seats *sheetSelect
	other *sheetSelect // the seat measured from, over pins
	by    *sheetSelect
	xy    *fyne.Container
	pins  *fyne.Container
	entry map[string]*sheetEntry
	says  *widget.Label
	why   *problem
	at    geom.Point // as seen at the drill
	ready bool
}

// drilledCommand is the menu's item that takes down where seats came out.
func (w *Window) drilledCommand() *fyne.MenuItem {
	return w.command(w.words.Text("menu.truth.drilled"), "", 0, func() { w.askDrilled(-1) })
}

// The ways to measure a seat, in the order of the choice.
const (
	byPlace = iota
	byPins
)

// askDrilled asks about a seat of the plate; -1: the one selected, or the first.
// It returns the sheet, nil where there is no seat to ask about.
func (w *Window) askDrilled(seat int) *drilledSheet {
	t, pl := w.words.Text, w.store.Report().Plate
	if len(pl.Seats) == 0 {
		w.say(t("truth.none"))
		return nil
	}
	s := &drilledSheet{w: w, pl: pl, entry: map[string]*sheetEntry{}, says: widget.NewLabel(""), why: newProblem(w)}
	s.says.Wrapping = fyne.TextWrapWord
	how := widget.NewLabel(t("drilled.how"))
	how.Wrapping = fyne.TextWrapWord
	names := make([]string, len(pl.Seats))
	for i, seat := range pl.Seats {
		names[i] = t("drilled.item", args{"Tag": seat.Tag, "Angle": deg(seat.Angle)})
	}
	s.seats = newSheetSelect(names, func(string) { s.fill() })
	s.other = newSheetSelect(names, func(string) { s.update() })
	s.by = newSheetSelect([]string{t("drilled.by.xy"), t("drilled.by.pins")}, func(string) { s.show() })
	s.xy = container.NewVBox(s.field("drilled.x"), s.field("drilled.y"))
	s.pins = container.NewVBox(s.field("drilled.pivotpin"), s.field("drilled.pins"), s.field("drilled.pivot"),
		s.row("drilled.other", s.other), s.field("drilled.over"))
	content := container.NewVBox(how, s.row("drilled.seat", s.seats), s.row("drilled.by", s.by), s.xy, s.pins, s.says, s.why.object)
	sh := w.newSheet(t("drilled.title"), content,
		answer{text: t("drilled.close")},
		answer{text: t("drilled.clear"), able: s.taken, then: s.clear},
		answer{text: t("drilled.add"), main: true, able: func() bool { return s.ready }, then: s.add},
	)
	s.seats.sheet, s.other.sheet, s.by.sheet = sh, sh, sh
	for _, e := range s.entry {
		e.sheet = sh
	}
	s.begin(seat)
	sh.dialog.Show()
	w.focus(s.entry["drilled.x"])
	return s
}

// row is a named part of the form.
func (s *drilledSheet) row(key string, o fyne.CanvasObject) fyne.CanvasObject {
	label := widget.NewLabel(s.w.words.Text(key))
	label.Truncation = fyne.TextTruncateEllipsis
	return container.New(setLayout, label, o)
}

// field is a named field for a length.
func (s *drilledSheet) field(key string) fyne.CanvasObject {
	e := newSheetEntry("")
	e.OnChanged = func(string) { s.update() }
	s.entry[key] = e
	return s.row(key, e)
}

// begin shows a seat; -1: one of the stop selected, or the first.
func (s *drilledSheet) begin(seat int) {
	s.by.Selected = s.by.Options[byPlace]
	s.other.Selected = s.other.Options[0]
	if chosen := s.w.store.Selection().Lead; seat < 0 && chosen >= 0 {
		for _, stop := range s.pl.Stops {
			if stop.Index == chosen {
				seat = stop.Seats[0]
				break
			}
		}
	}
	length := func(mm float64) string { return s.w.decimal(s.w.units().LengthField(mm)) }
	s.entry["drilled.pivotpin"].Text = length(s.pl.Plan.Turntable.PivotBore)
	s.entry["drilled.pins"].Text = length(s.pl.Plan.Seat.Diameter)
	s.seats.SetSelectedIndex(max(0, seat))
	s.show()
}

// seat returns the seat shown.
func (s *drilledSheet) seat() plate.Seat { return s.pl.Seats[s.seats.SelectedIndex()] }

// fill begins a seat with where it was measured before, or where it should be.
func (s *drilledSheet) fill() {
	seat := s.seat()
	at := plate.AtDrill(s.pl.SeatsPart, seat.Centre)
	for _, d := range s.pl.Drilled {
		if d.Stop == seat.Serves[0].Stop && d.Catch == seat.Serves[0].Catch {
			at = geom.Point{X: d.X, Y: d.Y}
		}
	}
	const decimals = 3
	for key, mm := range map[string]float64{"drilled.x": at.X, "drilled.y": at.Y} {
		s.entry[key].SetText(s.w.decimal(measure.Trim(s.w.units().Unit().FromMillimetres(mm), decimals)))
	}
	s.update()
}

// show shows the fields of the way of measuring.
func (s *drilledSheet) show() {
	if s.by.SelectedIndex() == byPins {
		s.xy.Hide()
		s.pins.Show()
	} else {
		s.pins.Hide()
		s.xy.Show()
	}
	s.update()
}

// update says what stop the seat would give.
func (s *drilledSheet) update() {
	s.ready = false
	s.says.SetText("")
	at, err := s.read()
	s.why.tell(err)
	if err != nil {
		return
	}
	s.at, s.ready = at, true
	p := s.pl.Plan
	p.AsDrilled = s.entries()
	drilled := plate.New(p).Drilled[0]
	s.says.SetText(s.w.words.Text("drilled.says", args{"True": deg(drilled.True), "Off": deg(drilled.Off), "Radial": words.MM(drilled.Radial)}))
}

// read returns where the fields put the seat, as seen at the drill.
func (s *drilledSheet) read() (geom.Point, error) {
	values := map[string]float64{}
	keys := []string{"drilled.x", "drilled.y"}
	pins := s.by.SelectedIndex() == byPins
	if pins {
		keys = []string{"drilled.pivotpin", "drilled.pins", "drilled.pivot", "drilled.over"}
	}
	for _, key := range keys {
		mm, err := s.w.units().ReadLength(s.entry[key].Text)
		if err != nil {
			return geom.Point{}, err
		}
		values[key] = mm
	}
	if !pins {
		return geom.Point{X: values["drilled.x"], Y: values["drilled.y"]}, nil
	}
	side := func(i int) geom.Point { return plate.AtDrill(s.pl.SeatsPart, s.place(i)) }
	o := plate.OverPins{
		Pivot: values["drilled.pivot"], Other: values["drilled.over"],
		PivotPin: values["drilled.pivotpin"], SeatPins: values["drilled.pins"], OtherSeat: side(s.other.SelectedIndex()),
	}
	at, ok := o.Place(plate.AtDrill(s.pl.SeatsPart, s.seat().Centre))
	if !ok {
		return geom.Point{}, errors.New(s.w.words.Text("drilled.wrong"))
	}
	return at, nil
}

// place returns where a seat is, seen from above: as measured if it has been.
func (s *drilledSheet) place(i int) geom.Point {
	seat := s.pl.Seats[i]
	for _, d := range s.pl.Drilled {
		if d.Stop == seat.Serves[0].Stop && d.Catch == seat.Serves[0].Catch {
			return plate.AtDrill(s.pl.SeatsPart, geom.Point{X: d.X, Y: d.Y})
		}
	}
	return seat.Centre
}

// entries are what the log takes down about the seat: an entry for every stop it
// serves.
func (s *drilledSheet) entries() []plan.AsDrilled {
	var out []plan.AsDrilled
	for _, v := range s.seat().Serves {
		out = append(out, plan.AsDrilled{Angle: v.Angle.Degrees(), Catch: s.pl.Plan.Catches[v.Catch].Name, X: s.at.X, Y: s.at.Y})
	}
	return out
}

// add takes the seat down in the log, in place of what was there about it, and
// asks about the next.
func (s *drilledSheet) add() {
	entries := s.entries()
	s.w.report(s.w.store.Log(func(p *plan.Plan) {
		p.AsDrilled = withoutEntries(p.AsDrilled, entries, s.pl.Plan.Catches[0].Name)
		p.AsDrilled = append(p.AsDrilled, entries...)
	}))
	if next := s.seats.SelectedIndex() + 1; next < len(s.pl.Seats) {
		s.w.askDrilled(next)
	}
}

// taken reports whether the log has entries about the seat.
func (s *drilledSheet) taken() bool {
	log := s.pl.Plan.AsDrilled
	return len(withoutEntries(log, s.entries(), s.pl.Plan.Catches[0].Name)) < len(log)
}

// clear takes the seat's entries out of the log.
func (s *drilledSheet) clear() {
	s.w.report(s.w.store.Log(func(p *plan.Plan) {
		p.AsDrilled = withoutEntries(p.AsDrilled, s.entries(), s.pl.Plan.Catches[0].Name)
	}))
}

// withoutEntries returns a log without the entries about the same stops and
// catches as others; an entry without a catch is about the first.
func withoutEntries(log, others []plan.AsDrilled, first string) []plan.AsDrilled {
	var out []plan.AsDrilled
	for _, a := range log {
		same := false
		for _, b := range others {
			name := a.Catch
			if name == "" {
				name = first
			}
			same = same || name == b.Catch && a.Angle == b.Angle
		}
		if !same {
			out = append(out, a)
		}
	}
	return out
}
