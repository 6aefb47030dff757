package ui

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/proving"
)

// readingLog lists every reading, the last first. Those whose stop is gone and
// those that are too old to count are kept and say so.
type readingLog struct {
	w      *Window
	list   *widget.List
	object *fyne.Container
}

func newReadingLog(w *Window) *readingLog {
	l := &readingLog{w: w}
	l.list = widget.NewList(
		func() int { return len(w.store.Plan().Readings) },
		func() fyne.CanvasObject {
			return container.NewBorder(nil, nil, nil, iconButton(theme.DeleteIcon(), nil), shortLabel(""))
		},
		l.show,
	)
	l.object = container.New(tallLayout(rowsShown*rowHeight()), l.list)
	return l
}

// refresh shows the plan's readings.
func (l *readingLog) refresh() { l.list.Refresh() }

func (l *readingLog) show(id widget.ListItemID, o fyne.CanvasObject) {
	p := l.w.store.Plan()
	i := len(p.Readings) - 1 - id
	row := o.(*fyne.Container)
	label := row.Objects[0].(*widget.Label)
	text, _ := l.text(i)
	label.SetText(text)
	row.Objects[1].(*widget.Button).OnTapped = func() { l.remove(i) }
}

// text tells one reading, and whether it counts.
func (l *readingLog) text(i int) (text string, counts bool) {
	t := l.w.words.Text
	r := l.w.store.Report()
	x := r.Plate.Plan.Readings[i]
	text = t("reading.row", words.Args{"Angle": words.Deg(x.Angle), "Measured": words.Deg(x.Measured), "Off": words.Deg(detent.Residual(x))})
	if x.Date != "" {
		text += " · " + x.Date
	}
	if x.Approach != "" {
		text += " · " + t("reading.approach."+x.Approach)
	}
	if x.Method != "" {
		method := x.Method // another program's may be any word
		if slices.Contains(proving.Methods, proving.Method(method)) {
			method = t("reading.method." + method)
		}
		text += " · " + method
	}
	switch {
	case r.StopOf(x) < 0:
		return t("reading.gone") + " " + text, false
	case !detent.Counts(r.Plate.Plan, x):
		return t("reading.old") + " " + text, false
	}
	return text, true
}

// remove takes a reading that was a slip out of the log.
func (l *readingLog) remove(i int) {
	l.w.report(l.w.store.Log(func(p *plan.Plan) {
		if i < len(p.Readings) {
			p.Readings = slices.Delete(p.Readings, i, i+1)
		}
	}))
}
