package ui

import (
	"cmp"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/check"
)

// findingList shows what the checks found, the gravest first; choosing one
// shows it on the plate.
type findingList struct {
	w      *Window
	title  *widget.Label
	clean  *widget.Label
	list   *widget.List
	order  []int       // the report's findings as they are shown
	gauge  *findingRow // the row that heights are measured with
	tall   int         // so many rows from the first may be higher than a line
	open   int         // the row of a long list that is unfolded; -1: none
	fixes  fixes
	object fyne.CanvasObject
}

func newFindingList(w *Window) *findingList {
	l := &findingList{w: w, title: heading(""), clean: widget.NewLabel(w.words.Text("checks.clean")), open: -1}
	l.clean.Wrapping = fyne.TextWrapWord
	l.list = widget.NewList(
		func() int { return len(l.order) },
		func() fyne.CanvasObject { return newFindingRow(l) },
		func(i widget.ListItemID, o fyne.CanvasObject) { o.(*findingRow).show(l.order[i]) },
	)
	l.list.OnSelected = func(i widget.ListItemID) { w.showFinding(l.order[i]) }
	l.gauge = newFindingRow(l)
	l.object = container.NewBorder(l.title, nil, nil, nil, container.New(rowsLayout{l}, l.list, container.NewVBox(l.clean)))
	l.refresh()
	return l
}

// refresh shows the findings of the report.
func (l *findingList) refresh() {
	findings := l.w.store.Report().Findings
	l.order = make([]int, len(findings))
	for i := range l.order {
		l.order[i] = i
	}
	rank := map[check.Severity]int{check.Error: 0, check.Warning: 1, check.Note: 2}
	slices.SortStableFunc(l.order, func(a, b int) int {
		return cmp.Compare(rank[findings[a].Severity], rank[findings[b].Severity])
	})
	wrong := 0
	for _, f := range findings {
		if f.Wrong() {
			wrong++
		}
	}
	title := l.w.words.Text("checks.none")
	if wrong > 0 {
		title = l.w.words.Text("checks.title", words.Args{"N": wrong})
	}
	l.title.SetText(title)
	if len(findings) == 0 {
		l.clean.Show()
		l.list.Hide()
	} else {
		l.clean.Hide()
		l.list.Show()
	}
	l.fit(l.list.Size().Width)
	l.list.Refresh()
	l.showSelection()
}

// showFinding selects a finding, says it in full, and brings what it is about
// into sight.
func (w *Window) showFinding(i int) {
	w.store.SelectFinding(i)
	r := w.store.Report()
	f := r.Findings[i]
	w.say(check.Sentence(r.Plate, f, w.words))
	part := r.Plate.SeatsPart
	if len(f.Pockets) > 0 && len(f.Seats) == 0 {
		part = r.Plate.CatchPart
	}
	if v := w.store.View(); v.Part != "" && v.Part != part {
		v.Part = ""
		w.store.SetView(v)
	}
	w.plate.bring(f.Seats)
}

// showSelection marks the selected finding.
func (l *findingList) showSelection() {
	at := l.selected()
	l.unfold(at)
	if at >= 0 {
		l.list.Select(at)
	} else {
		l.list.UnselectAll()
	}
}

// findingRow is one finding: its severity as a sign, what it says, and what
// would mend it.
type findingRow struct {
	widget.BaseWidget
	l    *findingList
	sign *widget.Icon // a shape of its own for each severity
	text *widget.Label
	fix  *widget.Button
	box  *fyne.Container
}

func newFindingRow(l *findingList) *findingRow {
	r := &findingRow{
		l: l, sign: widget.NewIcon(nil), text: widget.NewLabel(""), fix: widget.NewButton("", nil),
	}
	r.box = container.New(&findingBox{}, r.sign, r.text, r.fix)
	r.ExtendBaseWidget(r)
	return r
}

// CreateRenderer draws the row.
func (r *findingRow) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(r.box) }

// show makes the row that of one of the report's findings.
func (r *findingRow) show(i int) {
	defer r.box.Refresh() // with a button or without, the text has another width
	w := r.l.w
	report := w.store.Report()
	f := report.Findings[i]
	if r.text.Wrapping, r.text.Truncation = fyne.TextWrapWord, fyne.TextTruncateOff; !r.l.whole(i) {
		r.text.Wrapping, r.text.Truncation = fyne.TextWrapOff, fyne.TextTruncateEllipsis
	}
	r.text.SetText(check.Sentence(report.Plate, f, w.words))
	switch f.Severity {
	case check.Error:
		r.sign.SetResource(theme.NewErrorThemedResource(theme.ErrorIcon()))
	case check.Warning:
		r.sign.SetResource(theme.NewWarningThemedResource(theme.WarningIcon()))
	default:
		r.sign.SetResource(theme.InfoIcon())
	}
	fix := r.l.fixes.fix(report, i)
	if fix == nil {
		r.fix.Hide()
		return
	}
	text := w.words.Text(fix.Key, fix.Args)
	r.fix.SetText(text)
	r.fix.OnTapped = func() { w.report(w.store.Replace(text, fix.Apply(w.store.Plan()))) }
	r.fix.Show()
}
