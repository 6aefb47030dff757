package ui

import (
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/measure"
	"stopwright/detent/proving"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// repairView shows how to put right one seat that was measured: each way with a
// small drawing and its chart, or what is in its way.
type repairView struct {
	w       *Window
	pick    *widget.Select
	none    *widget.Label
	caution fyne.CanvasObject
	ways    [3]*repairWay
	take    *widget.Button // makes the moved pattern the plan's
	offered []offeredSeat
	object  *fyne.Container
}

// offeredSeat is a seat to put right, into the plate's, with what the diagnosis
// says of its stop. Where catches drop together each of their seats is offered.
type offeredSeat struct {
	proving.Seat
	seat int
}

// repairWay is one way.
type repairWay struct {
	repair detent.Repair
	sketch *sketch
	said   *widget.Label
	object fyne.CanvasObject
}

func newRepairView(w *Window) *repairView {
	v := &repairView{w: w, pick: widget.NewSelect(nil, nil), none: wrapped(w.words.Text("repair.none"))}
	v.pick.PlaceHolder = w.words.Text("repair.pick")
	v.pick.OnChanged = func(string) { v.show() }
	v.caution = newCaution(w, "repair.caution")
	v.object = container.NewVBox(v.none, v.pick, v.caution)
	for i := range v.ways {
		way := &repairWay{said: wrapped("")}
		way.sketch = newSketch(w, fyne.NewSize(170, 150), func(c *ink.Canvas, d float64, p ink.Palette) { v.paint(way.repair, c, d, p) })
		way.object = container.NewBorder(nil, nil, container.NewGridWrap(fyne.NewSize(170, 150), way.sketch), nil, way.said)
		v.ways[i] = way
		v.object.Add(way.object)
	}
	v.take = widget.NewButton(w.words.Text("repair.take"), v.takePattern)
	v.object.Add(container.NewHBox(v.take))
	v.show()
	return v
}

// takePattern makes the plan the one that was tried for the moved pattern, the
// old seats and pockets among its features, so that it can be charted and
// drilled. Readings from before today, of the old seats, no longer count; those
// of today can be told from new ones only by the maker.
func (v *repairView) takePattern() {
	for _, way := range v.ways {
		if x := way.repair; x.Kind == detent.Pattern && x.Fits {
			p := x.Trial.Plate.Plan.Clone()
			p.ReadingsSince = time.Now().Format(time.DateOnly)
			v.w.report(v.w.store.Replace(v.w.words.Text("repair.pattern"), p))
			return
		}
	}
}

// refresh offers the seats that are out, or off by more than the target.
func (v *repairView) refresh(p detent.Proving) {
	t := v.w.words.Text
	v.offered = nil
	pl := v.w.store.Report().Plate
	var names []string
	for _, s := range p.Seats {
		if target := pl.Plan.Shop.Target; !s.Out && s.Own <= target && s.Own >= -target {
			continue
		}
		key, seats := "repair.of", pl.Stops[s.Stop].Seats
		if len(seats) > 1 {
			key = "repair.of.seat"
		}
		for _, seat := range seats {
			v.offered = append(v.offered, offeredSeat{s, seat})
			names = append(names, t(key, words.Args{
				"Angle": words.Deg(p.Stops[s.Stop]), "Own": words.Deg(s.Own), "Seat": pl.Seats[seat].Tag,
			}))
		}
	}
	v.pick.Options = names
	if v.pick.SelectedIndex() < 0 {
		v.pick.Selected = ""
	}
	if v.pick.Selected == "" && len(names) > 0 {
		v.pick.Selected = names[0]
	}
	v.pick.Refresh()
	v.show()
}

// show works out the repairs of the chosen seat.
func (v *repairView) show() {
	i := v.pick.SelectedIndex()
	any := i >= 0 && i < len(v.offered)
	show(v.none, !any)
	show(v.pick, len(v.offered) > 0)
	show(v.caution, any)
	for _, way := range v.ways {
		show(way.object, any)
		way.repair = detent.Repair{}
	}
	show(v.take, any)
	if !any {
		return
	}
	r := v.w.store.Report()
	s := v.offered[i]
	for k, x := range r.RepairsOf(s.seat, s.Move) {
		v.ways[k].repair = x
		v.ways[k].said.SetText(v.text(r, x))
		v.ways[k].sketch.Refresh()
		if x.Kind == detent.Pattern {
			enable(v.take, x.Fits)
		}
	}
}

func show(o fyne.CanvasObject, visible bool) {
	if visible {
		o.Show()
	} else {
		o.Hide()
	}
}

// text says how it is done and lists what is bored, as seen at the drill.
func (v *repairView) text(r detent.Report, x detent.Repair) string {
	t := v.w.words.Text
	lines := append([]string{t("repair." + string(x.Kind))}, x.Say(r, v.w.words)...)
	if !x.Fits {
		return strings.Join(lines, "\n")
	}
	for _, h := range x.Holes(r.Plate) {
		depth := t("chart.through")
		if h.Depth > 0 {
			depth = v.w.words.Length(h.Depth)
		}
		number := func(mm float64) string { return v.w.decimal(measure.Fixed(mm, 2)) }
		lines = append(lines, t("repair.hole."+h.Key, words.Args{
			"Diameter": number(h.Diameter), "Depth": depth, "X": number(h.At.X), "Y": number(h.At.Y),
			"Radius": number(h.Radius), "Azimuth": words.Deg(h.Azimuth),
		}))
	}
	if x.Seat >= 0 {
		lines = append(lines, t("repair.view", words.Args{"View": drawing.ViewName(v.w.words, r.Plate.SeatsPart)}))
	}
	return strings.Join(lines, "\n")
}

// paint paints the small drawing of a repair.
func (v *repairView) paint(x detent.Repair, c *ink.Canvas, d float64, p ink.Palette) {
	if x.Kind == "" || x.Trial.Plate == nil {
		return
	}
	dr := drawing.Repair(v.w.store.Report().Plate, x)
	size := c.Img.Bounds().Size()
	const margin = 8 // px of layout
	view := ink.Fit(dr.Bounds(), float64(size.X)/d, float64(size.Y)/d, margin).Dense(d)
	base := p.Style()
	ink.Paint(c, dr, view, func(e drawing.Entity) ink.Stroke {
		s := base(e)
		if e.Layer == drawing.Witness {
			s.Colour, s.Fill = p.Accent, p.Accent
		}
		return s
	})
}
