package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// stopList is the list of stops, edited in place, with a line on top to add to
// it.
type stopList struct {
	w      *Window
	add    *addEntry
	both   *widget.Check
	count  *widget.Label
	why    *problem
	note   *widget.Label // what is typed means
	fence  *fenceAsk
	list   *widget.List
	head   *fyne.Container // all above the list
	height float32         // of the head when last laid out
	faulty map[int]bool    // the plan's stops that a finding is about
	object *fyne.Container
}

func newStopList(w *Window) *stopList {
	l := &stopList{
		w: w, add: newAddEntry(w.offerList), why: newProblem(w), note: newNote(), fence: newFenceAsk(w),
		count: widget.NewLabel(""),
	}
	l.add.SetPlaceHolder(w.words.Text("stops.new"))
	l.add.OnSubmitted = func(string) { l.addTyped() }
	l.add.OnChanged = func(text string) {
		l.why.tell(nil)
		if strings.TrimSpace(text) != "" {
			_, err := readStops(text, false)
			l.why.tell(err)
		}
		sayIn(l.note)(w.anglesUnderstood(text))
		l.settle()
	}
	l.both = widget.NewCheck(w.words.Text("stops.both"), func(on bool) {
		v := w.store.View()
		v.BothSides = on
		w.store.SetView(v)
	})
	button := widget.NewButton(w.words.Text("stops.add"), l.addTyped)
	l.list = widget.NewList(
		func() int { return len(w.store.Plan().Stops) },
		func() fyne.CanvasObject { return newStopRow(l) },
		func(i widget.ListItemID, o fyne.CanvasObject) { o.(*stopRow).show(i) },
	)
	l.list.HideSeparators = true
	l.list.OnSelected = func(i widget.ListItemID) {
		if w.store.Selection().Lead != i {
			w.store.SelectStop(i)
		}
	}
	head := container.NewVBox(
		container.NewBorder(nil, nil, heading(w.words.Text("stops.title")), l.count),
		container.NewBorder(nil, nil, nil, button, l.add),
		container.NewBorder(nil, nil, l.both, widget.NewButton(w.words.Text("stops.set"), w.askSet)),
		l.why.object,
		l.note,
		l.fence.object,
	)
	l.why.moved, l.fence.moved = l.settle, l.settle
	l.head = head
	// Tab goes through them in this order.
	l.object = container.New(layout.NewBorderLayout(head, nil, nil, nil), head, l.list, listWheel(l.list))
	l.refresh()
	return l
}

// settle moves the list up to the head or down from it, where a line in the
// head has come or gone: the toolkit leaves a gap. A line that wraps has its
// height only when it has been given its width, so it may take another turn.
func (l *stopList) settle() {
	for h := l.head.MinSize().Height; h != l.height; h = l.head.MinSize().Height {
		l.height = h
		l.object.Layout.Layout(l.object.Objects, l.object.Size()) // and no row is shown anew: one may be typed in
	}
}

// heading makes a heading of a panel.
func heading(text string) *widget.Label {
	return widget.NewLabelWithStyle(text, fyne.TextAlignLeading, fyne.TextStyle{Bold: true})
}

// refresh shows the plan's stops.
func (l *stopList) refresh() {
	plate := l.w.store.Report().Plate
	l.faulty = map[int]bool{}
	for _, f := range l.w.store.Report().Findings {
		if !f.Wrong() {
			continue
		}
		for _, s := range f.Seats {
			for _, v := range plate.Seats[s].Serves {
				l.faulty[plate.Stops[v.Stop].Index] = true
			}
		}
	}
	l.count.SetText(l.w.words.Text("stops.count", words.Args{
		"Stops": len(plate.Stops), "Seats": len(plate.Seats),
	}))
	if both := l.w.store.View().BothSides; l.both.Checked != both {
		l.both.Checked = both
		l.both.Refresh()
	}
	l.list.Refresh()
	l.fence.refresh()
	l.showSelection()
}

// showSelection marks the selected stop and brings it into sight.
func (l *stopList) showSelection() {
	if i := l.w.store.Selection().Lead; i >= 0 {
		l.list.Select(i)
	} else {
		l.list.UnselectAll()
	}
}

// stopRow is one stop of the list.
type stopRow struct {
	widget.BaseWidget
	l     *stopList
	index int
	angle *valueEntry
	both  *widget.Check
	catch *catchPick
	label *valueEntry
	sign  *widget.Icon
	box   *fyne.Container
}

func newStopRow(l *stopList) *stopRow {
	r := &stopRow{l: l, index: -1}
	tell := func(err error) { l.why.tell(err) }
	r.angle = newValueEntry(
		func() string { return l.w.decimal(l.w.units().AngleField(r.stop().Angle)) },
		func(text string) (func() error, error) {
			a, err := measure.ParseAngle(text)
			if err == nil {
				err = l.w.judgeStop(a)
			}
			return func() error {
				err := r.change("edit.angle", func(s *plan.Stop) { s.Angle = a.Degrees() })
				l.fence.about(a.Degrees())
				return err
			}, err
		}, tell)
	r.label = newValueEntry(
		func() string { return r.stop().Label },
		func(text string) (func() error, error) {
			return func() error { return r.change("edit.label", func(s *plan.Stop) { s.Label = text }) }, nil
		}, tell)
	r.label.SetPlaceHolder(l.w.words.Text("stops.label"))
	// In the line at the foot of the window: one below the row would push the
	// list away from under the pointer.
	r.angle.remarks = l.w.angleRemarks(l.w.say, func() float64 { return r.stop().Angle })
	r.angle.focused, r.label.focused = r.selectMe, r.selectMe
	r.both = widget.NewCheck("±", func(on bool) {
		l.w.report(r.change("edit.both", func(s *plan.Stop) { s.BothSides = on }))
	})
	r.sign = widget.NewIcon(nil)
	remove := iconButton(theme.DeleteIcon(), func() { l.w.removeStops(r.index) })
	r.catch = newCatchPick(r)
	left := container.NewHBox(r.sign, container.New(angleLayout{r.catch}, r.angle), r.both, r.catch)
	r.box = container.NewBorder(nil, nil, left, remove, r.label)
	r.ExtendBaseWidget(r)
	return r
}

// CreateRenderer draws the row.
func (r *stopRow) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(r.box) }

// stop returns the row's stop as the plan now has it.
func (r *stopRow) stop() plan.Stop {
	if stops := r.l.w.store.Plan().Stops; r.index >= 0 && r.index < len(stops) {
		return stops[r.index]
	}
	return plan.Stop{}
}

func (r *stopRow) change(key string, change func(*plan.Stop)) error {
	return r.l.w.store.ChangeStops(r.l.w.editName(key, r.stop().Angle), change, r.index)
}

func (r *stopRow) selectMe() { r.l.w.store.SelectStop(r.index) }

// show makes the row that of stop i. The list uses one row for many stops as it
// scrolls, so what was typed for another is handed in first.
func (r *stopRow) show(i int) {
	if i != r.index {
		r.angle.commit()
		r.label.commit()
		r.index = i
		r.angle.revert()
		r.label.revert()
	}
	r.angle.refresh()
	r.label.refresh()
	if s := r.stop(); r.both.Checked != s.BothSides {
		r.both.Checked = s.BothSides
		r.both.Refresh()
	}
	r.catch.refresh()
	switch faulty := r.l.faulty[i]; {
	case faulty && r.sign.Resource == nil:
		r.sign.SetResource(theme.NewErrorThemedResource(theme.ErrorIcon()))
	case !faulty && r.sign.Resource != nil:
		r.sign.SetResource(nil)
	}
}

// editName names an edit of one stop.
func (w *Window) editName(key string, angle float64) string {
	return w.words.Text(key, words.Args{"Angle": words.Deg(angle)})
}

// judgeStop says whether a plan may have a stop at an angle.
func (w *Window) judgeStop(a geom.Angle) error {
	p := w.store.Plan()
	p.Stops = []plan.Stop{{Angle: a.Degrees()}}
	if err := plan.Validate(p); err != nil {
		return w.fieldProblem(plan.Field{Path: "stops[0].angle"}, err)
	}
	return nil
}

// addStops adds stops as one edit, named after the first.
func (w *Window) addStops(stops ...plan.Stop) error {
	for _, s := range stops {
		if err := w.judgeStop(geom.Angle(s.Angle)); err != nil {
			return err
		}
	}
	return w.store.AddStops(w.editName("edit.add", stops[0].Angle), stops...)
}

// removeStops takes stops off the list.
func (w *Window) removeStops(stops ...int) {
	if len(stops) == 0 {
		return
	}
	name := w.words.Text("edit.removemany", words.Args{"N": len(stops)})
	if len(stops) == 1 {
		name = w.editName("edit.remove", w.store.Plan().Stops[stops[0]].Angle)
	}
	w.report(w.store.RemoveStops(name, stops...))
}
