package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent/angles"
	"stopwright/detent/plate"
)

// truthView shows how true a stop will be: what makes it so, how it is spread,
// what that is at a joint, and what the year's air does. It is about the stop
// chosen in the list, or else the least true.
type truthView struct {
	w       *Window
	head    *container.Scroll // the buttons
	method  *widget.Button
	says    *widget.Label
	all     *widget.Label // how all stops do together
	causes  *sketch
	spread  *sketch
	sides   *widget.Select
	wanted  *widget.Entry // gap of the last joint, as typed
	jointly *widget.Label
	joint   *sketch
	yearly  *widget.Label
	season  *sketch
	drilled *widget.Label
	object  fyne.CanvasObject

	stop int // into the plate's stops; -1: there is none to show
}

// The frames whose joints are shown.
const (
	fewestSides = 3
	mostSides   = 16
	usualSides  = 4
)

func newTruthView(w *Window) *truthView {
	t := w.words.Text
	v := &truthView{w: w, stop: -1, wanted: widget.NewEntry()}
	for _, l := range []**widget.Label{&v.says, &v.all, &v.jointly, &v.yearly, &v.drilled} {
		*l = widget.NewLabel("")
		(*l).Wrapping = fyne.TextWrapWord
	}
	v.causes = newSketch(w, fyne.NewSize(200, 190), v.paintCauses)
	v.spread = newSketch(w, fyne.NewSize(200, 190), v.paintSpread)
	v.joint = newSketch(w, fyne.NewSize(200, 190), v.paintJoint)
	v.season = newSketch(w, fyne.NewSize(200, 150), v.paintSeason)
	var sides []string
	for n := fewestSides; n <= mostSides; n++ {
		sides = append(sides, t("truth.sides.n", args{"N": n}))
	}
	v.sides = widget.NewSelect(sides, nil)
	v.sides.SetSelectedIndex(usualSides - fewestSides)
	v.sides.OnChanged = func(string) { v.refreshJoint() }
	v.wanted.SetText(w.decimal("0.2") + " mm")
	v.wanted.OnChanged = func(string) { v.refreshJoint() }

	v.method = w.methodButton()
	head := container.NewHBox(v.method, widget.NewButton(t("misses.button"), w.askMisses))
	asks := container.NewGridWithColumns(2,
		container.NewBorder(nil, nil, widget.NewLabel(t("truth.sides")), nil, v.sides),
		container.NewBorder(nil, nil, widget.NewLabel(t("truth.wanted")), nil, v.wanted))
	pictures := container.NewGridWithColumns(2,
		container.NewBorder(heading(t("truth.causes")), nil, nil, nil, v.causes),
		container.NewBorder(heading(t("truth.spread")), nil, nil, nil, v.spread))
	v.head = container.NewHScroll(head)
	v.object = container.NewBorder(v.head, nil, nil, nil, container.NewVScroll(container.NewVBox(
		v.says, pictures, v.all,
		heading(t("truth.joint")), asks, v.joint, v.jointly,
		heading(t("truth.season")), v.season, v.yearly,
		container.NewBorder(nil, nil, heading(t("drilled.head")), widget.NewButton(t("drilled.button"), func() { w.askDrilled(-1) })),
		v.drilled,
	)))
	return v
}

// refresh shows the plan.
func (v *truthView) refresh() {
	pl := v.w.store.Report().Plate
	v.w.study()
	v.stop = v.chosen(pl)
	v.method.SetText(v.w.words.Text("truth.method", args{"Method": v.w.words.Text("choice." + pl.Plan.Shop.Method)}))
	v.says.SetText(v.w.truthWords(pl, v.stop))
	v.all.SetText(v.allWords())
	v.causes.Refresh()
	v.spread.Refresh()
	v.refreshJoint()
	v.yearly.SetText(v.w.seasonWords(pl))
	v.season.Refresh()
	v.drilled.SetText(v.w.drilledWords(pl))
}

// chosen returns the stop to show.
func (v *truthView) chosen(pl *plate.Plate) int {
	if chosen := v.w.store.Selection().Lead; chosen >= 0 {
		for i, s := range pl.Stops {
			if s.Index == chosen {
				return i
			}
		}
	}
	worst, _, ok := pl.Trueness.WorstZeroed()
	if !ok {
		return -1
	}
	return worst
}

// allWords says how all stops did together, or that this is being tried out.
func (v *truthView) allWords() string {
	r, done := v.w.store.Studied()
	pl := v.w.store.Report().Plate
	if _, _, clicks := pl.Trueness.WorstZeroed(); !clicks {
		return ""
	}
	if !done {
		return v.w.words.Text("truth.trying")
	}
	if r.Sampled == nil {
		return ""
	}
	return v.w.words.Text("truth.all", args{
		"Trials": grouped(r.Sampled.Trials), "Share": percent(r.Sampled.AllWithinTarget), "Within": deg(r.Sampled.AllWithin95),
	})
}

// sideCount returns how many sides the frame has.
func (v *truthView) sideCount() int { return fewestSides + v.sides.SelectedIndex() }

// jointLength returns how long (mm) a mitre of the maker's stock is.
func (v *truthView) jointLength() float64 {
	return angles.JointLength(v.w.store.Plan().Shop.StockWidth, v.sideCount())
}

// refreshJoint shows what the least true stop does to a frame.
func (v *truthView) refreshJoint() {
	v.jointly.SetText(v.jointWords())
	v.joint.Refresh()
}
