package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
)

// remarks say in small letters below a field what is typed into it means, and
// how a value that the field has to round is kept. A nil remarks says nothing.
type remarks struct {
	say        func(string)             // shows a remark; "": none
	understood func(text string) string // "": it says so itself
	kept       func() string            // "": the field shows all of it
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
		r.say("")
	}
}

// typed says what a text was understood as.
func (r *remarks) typed(text string, err error) {
	if r == nil {
		return
	}
	if err != nil {
		r.say("")
		return
	}
	r.say(r.understood(text))
}

// entered says, on coming to a field, whether it shows all of its value.
func (r *remarks) entered() {
	if r != nil {
		r.say(r.kept())
	}
}

// remarksOn returns the remarks on a field of the plan, shown in note.
func (w *Window) remarksOn(f plan.Field, note *widget.Label) *remarks {
	kept := func(text string) string {
		if text == "" {
			return ""
		}
		return w.words.Text("field.kept", words.Args{"Value": text})
	}
	switch f.Unit {
	case millimetres:
		return &remarks{
			say:        sayIn(note),
			understood: func(text string) string { return w.units().LengthUnderstood(text) },
			kept:       func() string { return kept(w.units().LengthKept(w.fieldAt(f).Number)) },
		}
	case degrees:
		return &remarks{
			say:        sayIn(note),
			understood: func(text string) string { return w.units().AngleUnderstood(text) },
			kept:       func() string { return kept(w.units().AngleKept(w.fieldAt(f).Number)) },
		}
	}
	return nil
}
