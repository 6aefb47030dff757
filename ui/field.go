package ui

import (
	"errors"
	"math"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// fieldRow is one value of the plan in a form: its name, the field, its unit,
// and below it what is wrong with what is typed.
type fieldRow struct {
	object  fyne.CanvasObject
	refresh func() // shows the plan's value
}

// newFieldRow makes the row of a field of the plan.
func (w *Window) newFieldRow(f plan.Field) fieldRow {
	name := w.fieldName(f)
	label := widget.NewLabel(name)
	label.Truncation = fyne.TextTruncateEllipsis
	switch f.Kind {
	case plan.ChoiceField:
		return w.choiceRow(f, label)
	case plan.FlagField:
		return w.flagRow(f, name)
	}
	problem := newProblem(w)
	e := newValueEntry(
		func() string { return w.fieldText(w.fieldAt(f)) },
		func(text string) (func() error, error) { return w.readField(f, text) },
		problem.tell,
	)
	note := newNote()
	e.remarks = w.remarksOn(f, note)
	e.focused = func() { w.explain(f) }
	e.offer(w.sizesFor(f))
	unit := widget.NewLabel("")
	refresh := func() {
		unit.SetText(w.unitSign(f.Unit))
		e.refresh()
	}
	refresh()
	row := container.New(valueLayoutOf(f), label, e, unit)
	switch {
	case f.Path == "notes": // the one text that may be long
		e.MultiLine, e.Wrapping = true, fyne.TextWrapWord
		row = container.NewBorder(label, nil, nil, nil, e)
	case f.Kind == plan.TextField:
		row = container.NewBorder(nil, nil, widget.NewLabel(name), nil, e)
	}
	return fieldRow{container.NewVBox(row, problem.object, note), refresh}
}

// choiceRow makes the row of a field that is one of a few words.
func (w *Window) choiceRow(f plan.Field, label *widget.Label) fieldRow {
	shown := make([]string, len(f.Choices))
	for i, c := range f.Choices {
		shown[i] = w.words.Text("choice." + c)
	}
	s := newChoice(shown, func() { w.explain(f) })
	refresh := func() {
		now := w.fieldAt(f).Text
		for i, c := range f.Choices {
			if c == now && s.SelectedIndex() != i {
				s.Selected = shown[i]
				s.Refresh()
			}
		}
	}
	refresh()
	s.OnChanged = func(string) {
		f.Text = f.Choices[s.SelectedIndex()]
		w.report(w.setField(f))
		refresh() // a choice refused
	}
	return fieldRow{container.New(choiceLayoutOf(f), label, s), refresh}
}

// flagRow makes the row of a yes or no.
func (w *Window) flagRow(f plan.Field, name string) fieldRow {
	c := widget.NewCheck(name, nil)
	refresh := func() {
		if now := w.fieldAt(f).Flag; c.Checked != now {
			c.Checked = now
			c.Refresh()
		}
	}
	refresh()
	c.OnChanged = func(on bool) {
		f.Flag = on
		w.report(w.setField(f))
	}
	return fieldRow{c, refresh}
}

// fieldName returns what the window calls a field.
func (w *Window) fieldName(f plan.Field) string { return w.words.Text("field." + f.Generic) }

// fieldAt returns a field as the plan now has it; unchanged if it is gone.
func (w *Window) fieldAt(f plan.Field) plan.Field {
	if now, ok := w.fields[f.Path]; ok {
		return now
	}
	return f
}

// setField writes a field's value into the plan, as one edit named after it.
func (w *Window) setField(f plan.Field) error {
	name := w.words.Text("edit.field", words.Args{"Field": w.fieldName(f)})
	return w.store.Edit(name, func(p *plan.Plan) { plan.ChangeField(p, f) })
}

// readField makes sense of what is typed into a field.
func (w *Window) readField(f plan.Field, text string) (func() error, error) {
	var err error
	switch {
	case namesMaterial(f):
		f.Text = w.readMaterial(text)
	case f.Kind == plan.TextField:
		f.Text = text
	case f.Unit == millimetres:
		f.Number, err = w.units().ReadLength(text)
	case f.Unit == degrees:
		f.Number, err = w.units().ReadAngle(text)
	case f.Unit == newtons:
		f.Number, err = measure.ParseForce(text)
	default:
		f.Number, err = measure.ParseNumber(text)
	}
	if err != nil {
		return nil, err
	}
	if !f.Range.Holds(f.Number) && f.Kind != plan.TextField {
		return nil, w.outOfRange(f)
	}
	if f.Kind == plan.CountField && f.Number != math.Trunc(f.Number) {
		return nil, errors.New(w.words.Text("field.whole", words.Args{"Value": strings.TrimSpace(text)}))
	}
	p := w.store.Plan().Clone()
	plan.ChangeField(&p, f)
	if err := plan.Validate(p); err != nil {
		return nil, w.fieldProblem(f, err)
	}
	return func() error { return w.setField(f) }, nil
}

// fieldProblem puts what is wrong with a field's value into words.
func (w *Window) fieldProblem(f plan.Field, err error) error {
	var ps plan.Problems
	if !errors.As(err, &ps) || len(ps) == 0 {
		return err
	}
	for _, p := range ps {
		if p.Path == f.Path {
			return errors.New(w.words.Text("field.must", words.Args{"Value": p.Value, "Want": p.Want}))
		}
	}
	return ps
}

// The units of the plan's fields that may be typed in another.
const (
	millimetres = "mm"
	degrees     = "degrees"
	newtons     = "N"
)

// outOfRange says what a number of a field may be, in the units shown.
func (w *Window) outOfRange(f plan.Field) error {
	limit := func(x float64) string { return w.quantity(f.Unit, x) }
	key := "field.range"
	if f.Range.OrZero {
		key = "field.range.zero"
	}
	return errors.New(w.words.Text(key, words.Args{
		"Value": limit(f.Number), "Low": limit(f.Range.Low), "High": limit(f.Range.High),
	}))
}

// quantity returns a number in a field's unit as it is told.
func (w *Window) quantity(unit string, x float64) string {
	switch unit {
	case millimetres:
		return w.units().LengthLimit(x)
	case degrees:
		return w.units().AngleLimit(x)
	}
	return strings.TrimSpace(w.decimal(measure.Trim(x, plainDecimals)) + " " + w.unitSign(unit))
}

// fieldText returns a field's value as it is shown.
func (w *Window) fieldText(f plan.Field) string {
	switch {
	case namesMaterial(f):
		return w.materialText(f.Text)
	case f.Kind == plan.TextField || f.Kind == plan.ChoiceField:
		return f.Text
	case f.Unit == millimetres:
		return w.decimal(w.units().LengthField(f.Number))
	case f.Unit == degrees:
		return w.decimal(w.units().AngleField(f.Number))
	}
	return w.decimal(measure.Trim(f.Number, plainDecimals))
}

// plainDecimals is how many decimals a field shows of a number that is neither
// a length nor an angle; what a file holds beyond them is kept.
const plainDecimals = 4

// unitSign returns how a unit is written behind a field.
func (w *Window) unitSign(unit string) string {
	switch unit {
	case millimetres:
		return w.units().LengthSign()
	case degrees:
		return w.units().AngleSign()
	case "per cent":
		return "%"
	case "screws":
		return ""
	case "mm/min", "rev/min":
		return w.words.Text("unit." + unit)
	}
	return unit
}

// problem is the line below a field that says what is wrong with it.
type problem struct {
	w      *Window
	label  *widget.Label
	object *fyne.Container
	moved  func() // what is below must move up or down
}

func newProblem(w *Window) *problem {
	p := &problem{w: w, label: widget.NewLabel(""), moved: func() {}}
	p.label.Wrapping = fyne.TextWrapWord
	p.label.Importance = widget.DangerImportance
	sign := widget.NewIcon(theme.NewErrorThemedResource(theme.ErrorIcon()))
	p.object = container.NewBorder(nil, nil, sign, nil, p.label)
	p.object.Hide()
	return p
}

// tell shows an error, or hides the line.
func (p *problem) tell(err error) {
	defer p.moved()
	if err == nil {
		p.object.Hide()
		return
	}
	p.label.SetText(p.w.inWords(err))
	p.object.Show()
}
