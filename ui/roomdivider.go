package ui

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/room"
)

// roomDivider helps to build a dividing head: the fewest holes for a number of
// divisions, and which divisions the plan as it is serves, with which seats.
type roomDivider struct {
	w      *Window
	pick   *widget.Select
	holes  *widget.Label
	serves *widget.Select
	seats  *widget.Label
	object fyne.CanvasObject

	served []room.Division
}

// divisions are the numbers of equal stops that dividing heads are built for:
// common practice, no source.
var divisions = []int{16, 24, 36, 60, 72, 100, 360}

func newRoomDivider(w *Window) *roomDivider {
	d := &roomDivider{w: w, holes: widget.NewLabel(""), seats: widget.NewLabel("")}
	d.holes.Wrapping, d.seats.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	var options []string
	for _, n := range divisions {
		options = append(options, strconv.Itoa(n))
	}
	t := w.words.Text
	take := widget.NewButton(t("room.divide.take"), d.take)
	d.pick = widget.NewSelect(options, func(string) { d.holes.SetText(d.holesFor(d.chosen())) })
	d.pick.PlaceHolder = "–" // the toolkit's own is wide, and never seen here
	d.pick.SetSelectedIndex(1)
	d.serves = widget.NewSelect(nil, func(string) { d.showSeats() })
	d.serves.PlaceHolder = "–"
	serves := widget.NewLabel(t("room.divide.serves"))
	serves.Wrapping = fyne.TextWrapWord
	d.object = container.New(flow{},
		container.NewBorder(nil, nil, nil, take, d.pick), d.holes,
		serves, d.serves, d.seats,
	)
	return d
}

func (d *roomDivider) chosen() int { return divisions[max(d.pick.SelectedIndex(), 0)] }

// take makes the stops of the plan the equal divisions of a turn. Room for them
// is then offered as for any others.
func (d *roomDivider) take() {
	n := d.chosen()
	d.w.report(d.w.store.Edit(d.w.words.Text("edit.divide", words.Args{"N": n}), func(p *plan.Plan) {
		p.Stops = nil
		p.Travel = plan.Span{From: -360, To: 360}
		for i := range n {
			p.Stops = append(p.Stops, plan.Stop{Angle: 360 * float64(i) / float64(n)})
		}
	}))
}

// holesFor says how few holes serve n divisions, with how many catches and from
// which ring on.
func (d *roomDivider) holesFor(n int) string {
	p := d.w.store.Plan()
	var out []string
	for c := 1; c <= room.MaxCatches && c*c <= n; c++ {
		if n%c != 0 {
			continue
		}
		out = append(out, d.w.words.Text("room.divide.holes", words.Args{
			"Catches": catchesIn(d.w, c), "Seats": n / c,
			"Radius": words.MM(room.RoundUp(room.RingFor(geom.FullTurn/geom.Angle(n/c), p.Seat.Mouth()+p.Rules.Web))),
		}))
	}
	return strings.Join(out, "\n")
}

// refresh finds which divisions the plan serves.
func (d *roomDivider) refresh() {
	pl := d.w.store.Report().Plate
	d.holes.SetText(d.holesFor(d.chosen()))
	d.served = nil
	if datum := pl.Datum(); datum >= 0 {
		from := 0
		stops := make([]geom.Angle, len(pl.Stops))
		for i, s := range pl.Stops {
			stops[i] = s.Angle
			if s.Angle == pl.Seats[datum].Angle {
				from = i
			}
		}
		d.served = room.Served(stops, from)
	}
	var options []string
	for _, s := range d.served {
		options = append(options, strconv.Itoa(s.N))
	}
	d.serves.Options = options
	d.serves.Selected = ""
	if len(options) > 0 {
		d.serves.Selected = options[len(options)-1]
	}
	d.serves.Refresh()
	d.showSeats()
}

// showSeats lists the stops that make the chosen division, and their seats.
func (d *roomDivider) showSeats() {
	i := d.serves.SelectedIndex()
	if i < 0 || i >= len(d.served) {
		d.seats.SetText(d.w.words.Text("room.divide.none"))
		return
	}
	const most = 40 // of a list that can be read
	pl := d.w.store.Report().Plate
	var out []string
	for k, stop := range d.served[i].Stops {
		if k == most {
			out = append(out, "…")
			break
		}
		s := pl.Stops[stop]
		out = append(out, d.w.words.Text("room.divide.stop", words.Args{"Angle": words.Deg(s.Angle), "Seat": pl.Seats[s.Seats[0]].Tag}))
	}
	d.seats.SetText(strings.Join(out, ", "))
}
