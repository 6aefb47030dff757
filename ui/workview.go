package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// workView shows the operations on every part, hole by hole, to be ticked off at
// the machine. What is ticked is kept in the plan's log.
type workView struct {
	w      *Window
	rows   []workRow
	done   map[string]bool
	list   *workList
	count  *widget.Label
	parts  *widget.Select
	part   int // into the choices: 0 is every part
	object fyne.CanvasObject
}

// workRow is a line of the list: an operation, or one of its holes.
type workRow struct {
	operation chart.Operation
	hole      int    // -1: the operation itself, whose tick is all its holes'
	stray     string // a tick whose hole has gone; empty: none
}

// heads reports whether the row is an operation's own.
func (r workRow) heads() bool { return r.hole < 0 && r.stray == "" }

func newWorkView(w *Window) *workView {
	v := &workView{w: w, count: widget.NewLabel("")}
	v.parts = widget.NewSelect(nil, nil)
	v.list = newWorkList(v)
	bar := container.NewHBox(v.parts, layout.NewSpacer(), v.count)
	v.object = container.NewBorder(bar, nil, nil, nil, v.list)
	return v
}

// refresh lists the work of the plan as it now is.
func (v *workView) refresh() {
	c := v.w.words
	p := v.w.store.Plan()
	all := chart.Operations(v.w.store.Report().Plate, c)
	v.done = make(map[string]bool, len(p.Ticks))
	for _, t := range p.Ticks {
		v.done[t] = true
	}
	parts := drawing.AllPartsOf(p)
	v.showParts(parts)
	v.rows = v.rows[:0]
	ticks, set := 0, 0
	for _, o := range all {
		if v.part > 0 && o.Part != parts[v.part-1] {
			continue
		}
		v.rows = append(v.rows, workRow{operation: o, hole: -1})
		for i := range o.Holes {
			v.rows = append(v.rows, workRow{operation: o, hole: i})
		}
		for _, t := range o.Ticks() {
			ticks++
			if v.done[t] {
				set++
			}
		}
	}
	if v.part == 0 {
		for _, t := range chart.Stray(p.Ticks, all) {
			v.rows = append(v.rows, workRow{hole: -1, stray: t})
		}
	}
	v.count.SetText(c.Text("work.count", words.Args{"N": set, "Of": ticks}))
	v.list.fit()
	v.list.Refresh()
}

// showParts fills the choice of parts, which is kept while there is one.
func (v *workView) showParts(parts []plan.Part) {
	options := []string{v.w.words.Text("work.every")}
	for _, part := range parts {
		options = append(options, drawing.PartName(v.w.words, part))
	}
	if v.part >= len(options) {
		v.part = 0
	}
	v.parts.OnChanged = nil
	v.parts.SetOptions(options)
	v.parts.SetSelectedIndex(v.part)
	v.parts.OnChanged = func(string) {
		v.part = v.parts.SelectedIndex()
		v.refresh()
	}
}

// ticks lists what a row's tick stands for.
func (v *workView) ticks(r workRow) []string {
	switch {
	case r.stray != "":
		return []string{r.stray}
	case r.hole < 0:
		return r.operation.Ticks()
	}
	return []string{r.operation.Tick(r.operation.Holes[r.hole])}
}

// isDone reports whether all that a row stands for is ticked.
func (v *workView) isDone(r workRow) bool {
	for _, t := range v.ticks(r) {
		if !v.done[t] {
			return false
		}
	}
	return true
}

// toggle ticks a row, or takes its tick off.
func (v *workView) toggle(i int) {
	ticks := v.ticks(v.rows[i])
	v.w.report(v.w.store.Log(func(p *plan.Plan) { p.Ticks = chart.Toggled(p.Ticks, ticks) }))
}

// text returns what a row says.
func (v *workView) text(r workRow) string {
	c := v.w.words
	switch {
	case r.stray != "":
		return c.Text("work.stray", words.Args{"Tick": r.stray})
	case r.hole < 0:
		return c.Text("work.operation", words.Args{
			"Part": drawing.PartName(c, r.operation.Part), "Operation": r.operation.Name(c), "Say": r.operation.Say(c),
		})
	}
	h := r.operation.Holes[r.hole]
	args := words.Args{"Hole": h.Tag, "X": words.MM(h.At.X), "Y": words.MM(h.At.Y), "Outside": words.MM(h.Outside)}
	if h.Outside > 0 {
		return c.Text("work.gauge", args)
	}
	return c.Text("work.hole", args)
}
