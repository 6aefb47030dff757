package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/ui/units"
)

// remarks say in small letters below a field what is typed into it means, and
// how a value that the field has to round is kept. A nil remarks says nothing.
type remarks struct {
	say        func(string)             // shows a remark; "": none
	understood func(text string) string // "": it says so itself
	refused    func(text string) string // what else to say of a text that is refused; nil: nothing
	kept       func() string            // "": the field shows all of it
	said       bool                     // a remark is shown
}

// newNote makes the line for remarks, hidden while there is none.
func newNote() *widget.Label {
	note := widget.NewLabel("")
	note.SizeName = theme.SizeNameCaptionText
	note.Alignment = fyne.TextAlignTrailing
	note.Hide()
	return note
}

// sayIn shows a remark in a line made for them.
func sayIn(note *widget.Label) func(string) {
	return func(text string) {
		if text == "" {
			note.Hide()
			return
		}
		note.SetText(text)
		note.Show()
	}
}

// clear takes the remark away.
func (r *remarks) clear() {
	if r != nil {
		r.show("")
	}
}

// show shows a remark; "" takes away one that is shown, and nothing else.
func (r *remarks) show(text string) {
	if text != "" || r.said {
		r.say(text)
	}
	r.said = text != ""
}

// typed says what a text was understood as.
func (r *remarks) typed(text string, err error) {
	if r == nil {
		return
	}
	say := r.understood
	if err != nil {
		say = r.refused
	}
	if say == nil {
		r.show("")
		return
	}
	r.show(say(text))
}

// entered says, on coming to a field, whether it shows all of its value.
func (r *remarks) entered() {
	if r != nil {
		r.show(r.kept())
	}
}

// remarksOn returns the remarks on a field of the plan, shown in note.
func (w *Window) remarksOn(f plan.Field, note *widget.Label) *remarks {
	if namesMaterial(f) {
		return w.materialRemarks(f, note)
	}
	switch f.Unit {
	case millimetres:
		note.Wrapping = fyne.TextWrapWord
		return &remarks{
			say:        sayIn(note),
			understood: w.lengthUnderstood,
			refused:    w.fractionRefused,
			kept:       func() string { return w.kept(w.units().LengthKept(w.fieldAt(f).Number)) },
		}
	case degrees:
		return w.angleRemarks(sayIn(note), func() float64 { return w.fieldAt(f).Number })
	case newtons:
		return &remarks{say: sayIn(note), understood: w.forceUnderstood, kept: func() string { return "" }}
	}
	return nil
}

// angleRemarks returns the remarks on a field that holds an angle.
func (w *Window) angleRemarks(say func(string), now func() float64) *remarks {
	return &remarks{
		say:        say,
		understood: func(text string) string { return w.units().AngleUnderstood(text) },
		kept:       func() string { return w.kept(w.units().AngleKept(now())) },
	}
}

// forceUnderstood returns what a force typed in another unit comes to, "= 11.8 N";
// "" of a plain number, which is in newtons.
func (w *Window) forceUnderstood(text string) string {
	force, err := measure.ParseForce(text)
	if _, plain := measure.ParseNumber(text); err != nil || plain == nil {
		return ""
	}
	return "= " + w.decimal(measure.Trim(force, 2)) + " N"
}

// kept says how a value is kept; nothing of "".
func (w *Window) kept(value string) string {
	if value == "" {
		return ""
	}
	return w.words.Text("field.kept", words.Args{"Value": value})
}

// anglesUnderstood says what a line of stops was understood as, unless it says
// so itself.
func (w *Window) anglesUnderstood(text string) string {
	items, problems := measure.ParseStops(text)
	if len(problems) > 0 || len(items) == 0 {
		return ""
	}
	if len(items) == 1 && items[0].Label == "" {
		return w.units().AngleUnderstood(text)
	}
	if w.units().Angles == units.Degrees && !strings.ContainsAny(text, "/°'′\"″") {
		return ""
	}
	sign, all := "= ", []string{}
	for _, i := range items {
		all = append(all, w.words.Angle(i.Angle.Degrees()))
		if w.units().AngleKept(i.Angle.Degrees()) != "" {
			sign = "≈ "
		}
	}
	return sign + strings.Join(all, ", ")
}
