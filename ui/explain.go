package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/ui/figures"
)

// explainer is the strip at the foot of the parts panel that says what the
// field one has come to means, with a drawing where words are not enough.
type explainer struct {
	w      *Window
	field  plan.Field // of no path: none yet
	on     bool       // the strip is wanted
	shown  explained
	name   *widget.Label
	text   *widget.Label
	figure *figureView
	object *fyne.Container
}

// explained is all that the strip's content depends on.
type explained struct {
	path, value string
	seat        plan.Seat
	arrangement plan.Arrangement
	look        Look
}

func newExplainer(w *Window) *explainer {
	e := &explainer{w: w, on: true, name: heading(""), text: widget.NewLabel(""), figure: newFigureView(w)}
	e.text.Wrapping = fyne.TextWrapWord
	e.object = container.NewVBox(widget.NewSeparator(), e.figure, e.name, e.text)
	e.refresh()
	return e
}

// explain tells what a field means that has gained the focus, and brings it
// into sight.
func (w *Window) explain(f plan.Field) {
	if w.router.explainField(f) {
		return
	}
	w.parts.explain.field = f
	w.parts.explain.refresh()
	// Lays out the panel with the strip as it now is: twice, as a wrapped text
	// knows its height only once it knows its width.
	w.parts.object.Refresh()
	w.parts.object.Refresh()
	if at, ok := w.win.Canvas().Focused().(fyne.CanvasObject); ok {
		w.parts.reveal(at)
	}
}

// refresh shows the explanation of the field as the plan now has it.
func (e *explainer) refresh() {
	if !e.on || e.field.Path == "" {
		e.object.Hide()
		return
	}
	f := e.w.fieldAt(e.field)
	p := e.w.store.Plan()
	now := explained{f.Path, e.w.valueText(f), p.Seat, p.Arrangement, e.w.theme.look}
	if now == e.shown && e.object.Visible() {
		return // as at every step of a seat that is dragged
	}
	e.shown = now
	e.name.SetText(e.w.fieldName(f))
	e.text.SetText(e.w.words.Text("explain." + f.Generic))
	e.figure.fit(e.w.parts.object.Size().Height)
	if fig, ok := figures.Of(p, f.Generic, now.value); ok {
		e.figure.show(fig)
		e.figure.Show()
	} else {
		e.figure.Hide()
	}
	e.object.Show()
}

// valueText returns a field's value as a reading.
func (w *Window) valueText(f plan.Field) string {
	switch f.Unit {
	case millimetres:
		return w.words.Length(f.Number)
	case degrees:
		return w.words.Angle(f.Number)
	}
	return measure.Trim(f.Number, plainDecimals) + " " + f.Unit
}

// explainItem makes the menu item that shows the strip or puts it away.
func (w *Window) explainItem() *fyne.MenuItem {
	m := w.command(w.words.Text("menu.explain"), "", 0, func() {
		w.parts.explain.on = !w.parts.explain.on
		w.parts.explain.refresh()
		w.app.Preferences().SetBool(plainSetting, !w.parts.explain.on)
		w.win.SetMainMenu(w.mainMenu())
	})
	m.Checked = w.parts.explain.on
	return m
}
