package ui

import (
	"math"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/ui/ink"
	"stopwright/ui/units"
)

// clickView shows what the ball does: a section through ball and seat that
// moves as the table is turned, the torque it takes, the numbers in words, and
// the seats next to the chosen one.
type clickView struct {
	w       *Window
	catch   int
	whatIf  plate.WhatIf
	pick    *widget.Select
	turn    *widget.Slider // from the nearest stop, degrees
	section *sketch
	torque  *sketch
	travel  *sketch
	choices *sketch
	numbers *widget.Label
	ifs     []*widget.Slider // of what may come out otherwise
	seats   *seatTable
	object  fyne.CanvasObject

	shown  clickKey    // what everything but the turn was last worked out for
	click  plate.Click // as planned
	worse  plate.Click // as it may come out, where whatIf says so
	curves [2]curves
}

// clickKey is what the page shows apart from the table's turn.
type clickKey struct {
	plate *plate.Plate // made anew by every edit
	catch int
	units units.Style
	inks  ink.Palette
}

// curves are both torques of one stop out to where the ball rides.
type curves struct{ samples []ball.Sample }

func newClickView(w *Window) *clickView {
	v := &clickView{w: w, pick: widget.NewSelect(nil, nil), turn: widget.NewSlider(-1, 1), numbers: widget.NewLabel("")}
	v.numbers.Wrapping = fyne.TextWrapWord
	v.pick.OnChanged = func(string) {
		v.catch = v.pick.SelectedIndex()
		v.refresh()
	}
	v.section = newSketch(w, fyne.NewSize(200, 230), v.paintSection)
	v.torque = newSketch(w, fyne.NewSize(200, 230), v.paintTorque)
	v.travel = newSketch(w, fyne.NewSize(200, 150), v.paintTravel)
	v.torque.marked, v.travel.marked = v.fromStop, v.inTravel
	v.choices = newSketch(w, fyne.NewSize(200, 210), v.paintChoices)
	v.turn.OnChanged = func(x float64) {
		s := w.store
		s.SetTurn(v.stop() + geom.Angle(x))
	}
	v.seats = newSeatTable(w)
	suggest := widget.NewButton(w.words.Text("click.suggest"), func() { w.suggestSeat(v.catch) })
	head := container.NewBorder(nil, nil, nil, suggest, v.pick)
	pictures := container.NewGridWithColumns(2, v.section, v.torque)
	slide := container.NewBorder(nil, nil, widget.NewLabel(w.words.Text("click.turn")), nil, v.turn)
	v.object = container.NewBorder(head, nil, nil, nil, container.NewScroll(container.NewVBox(
		pictures, slide, v.numbers, v.whatIfRow(), heading(w.words.Text("click.seats")), v.seats.object,
		heading(w.words.Text("click.choices")), v.choices,
		heading(w.words.Text("click.travel")), v.travel,
	)))
	return v
}

// whatIfRow makes the three sliders of what may come out otherwise.
func (v *clickView) whatIfRow() fyne.CanvasObject {
	t := v.w.words.Text
	rows := container.NewVBox()
	add := func(key string, most, step float64, set func(x float64), say func(x float64) string) {
		label := widget.NewLabel(t(key, words.Args{"By": say(0)}))
		label.Truncation = fyne.TextTruncateEllipsis
		s := widget.NewSlider(0, most)
		s.Step = step
		s.OnChanged = func(x float64) {
			set(x)
			label.SetText(t(key, words.Args{"By": say(x)}))
			v.judge()
		}
		v.ifs = append(v.ifs, s)
		rows.Add(container.NewGridWithColumns(2, label, s))
	}
	add("whatif.oversize", 0.5, 0.05, func(x float64) { v.whatIf.Oversize = x }, v.w.words.Length)
	add("whatif.worn", 0.5, 0.05, func(x float64) { v.whatIf.Worn = x }, v.w.words.Length)
	add("whatif.weaker", 50, 5, func(x float64) { v.whatIf.Weaker = x / 100 }, func(x float64) string { return strconv.Itoa(int(x)) + " %" })
	return rows
}

// stop returns the stop of the chosen catch nearest the table's turn.
func (v *clickView) stop() geom.Angle {
	best, near := geom.Angle(0), geom.Angle(math.Inf(1))
	for _, s := range v.w.store.Report().Plate.Stops {
		for _, c := range s.Catches {
			if d := (s.Angle - v.w.store.Turn()).Abs(); c == v.catch && d < near {
				best, near = s.Angle, d
			}
		}
	}
	return best
}

// refresh works out the chosen catch and shows it. Where only the table was
// turned that is all it shows: a slider that is dragged asks for it at every
// step.
func (v *clickView) refresh() {
	pl := v.w.store.Report().Plate
	v.catch = min(v.catch, len(pl.Clicks)-1)
	if key := (clickKey{pl, v.catch, v.w.units(), v.w.palette()}); key != v.shown {
		v.shown = key
		v.workOut(pl)
	}
	v.turned()
}

// workOut works out everything but the table's turn.
func (v *clickView) workOut(pl *plate.Plate) {
	names := catchList.names(v.w)
	v.pick.Options = names
	v.pick.Selected = names[v.catch]
	v.pick.Refresh()

	v.click = pl.Clicks[v.catch]
	v.curves[0].samples = v.click.Curve(v.reach(), curvePoints)
	v.numbers.SetText(v.w.clickWords(pl.Plan, v.click))
	v.seats.refresh(v.catch)
	v.travel.Refresh()
	v.choices.Refresh()
	v.judge()
}

// curvePoints is how many points a curve of torque is drawn by.
const curvePoints = 200

// judge works out the catch as it may come out.
func (v *clickView) judge() {
	v.worse = plate.ClicksOf(v.whatIf.Apply(v.w.store.Plan()))[v.catch]
	v.curves[1].samples = v.worse.Curve(v.reach(), curvePoints)
	v.torque.Refresh()
}

// turned shows the table's turn.
func (v *clickView) turned() {
	most := math.Ceil(v.angle(v.reach())*10) / 10
	x := (v.w.store.Turn() - v.stop()).Degrees()
	v.turn.Min, v.turn.Max, v.turn.Step = -most, most, most/100
	v.turn.Value = math.Max(-most, math.Min(most, x))
	v.turn.Refresh()
	v.section.Refresh()
	v.torque.move()
	v.travel.move()
}

// reach returns how far (mm) from the stop is shown: to where the ball rides,
// and half as far again.
func (v *clickView) reach() float64 { return 1.5 * v.click.Contour().Mouth() }

// angle returns the turn (degrees) that moves the ball mm along its track.
func (v *clickView) angle(mm float64) float64 {
	return geom.FromRadians(mm / v.click.Setup.RingRadius).Degrees()
}

// offset returns how far (mm) the seat's axis stands from the ball.
func (v *clickView) offset() float64 {
	turn := (v.w.store.Turn() - v.stop()).Radians()
	most := 1.6 * v.reach()
	return math.Max(-most, math.Min(most, turn*v.click.Setup.RingRadius))
}

// suggestSeat takes the seat that suits a catch best.
func (w *Window) suggestSeat(catch int) {
	best, ok := w.store.Report().Plate.BestSeat([]int{catch}, nil)
	if !ok {
		w.say(w.words.Text("click.nosuggest"))
		return
	}
	w.takeSeat(best.Seat)
	w.say(w.words.Text("click.suggested", words.Args{
		"Drill": words.MM(best.Seat.Diameter), "Depth": words.MM(best.Seat.Depth),
		"Holding": words.NM(best.Holding), "Margin": strconv.FormatFloat(best.Margin(), 'f', 1, 64),
	}))
}

// takeSeat makes a seat the plan's.
func (w *Window) takeSeat(s plan.Seat) {
	name := w.words.Text("edit.seat", words.Args{"Drill": words.MM(s.Diameter)})
	w.report(w.store.Edit(name, func(p *plan.Plan) { p.Seat = s }))
}
