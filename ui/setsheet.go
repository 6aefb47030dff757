package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// setSheet asks for a set of stops by name and shows what it comes to while it
// is typed.
type setSheet struct {
	w       *Window
	kind    setKind
	pick    *sheetSelect
	form    *fyne.Container
	entries []*sheetEntry
	both    *sheetCheck
	note    *widget.Label
	why     *problem
	view    *offerView
	sheet   *sheet
}

// setLayout is a row of the form: a name and its field.
var setLayout = rowLayout{160}

// setCommand is the menu's item that adds a set of stops.
func (w *Window) setCommand() *fyne.MenuItem {
	return w.command(w.words.Text("menu.set"), fyne.KeyL, ctrl|shift, w.askSet)
}

// askSet asks for a set of stops.
func (w *Window) askSet() {
	t := w.words.Text
	s := &setSheet{w: w, form: container.NewVBox(), note: widget.NewLabel(""), why: newProblem(w), view: newOfferView(w)}
	s.note.Wrapping = fyne.TextWrapWord
	names := make([]string, len(setKinds))
	for i, k := range setKinds {
		names[i] = t(k.key)
	}
	s.pick = newSheetSelect(names, func(string) { s.show(setKinds[s.pick.SelectedIndex()]) })
	s.both = newSheetCheck(t("set.both"), func(bool) { s.update() })
	s.both.Checked = w.store.View().BothSides
	content := container.NewVBox(s.pick, s.form, s.both, s.note, s.why.object, s.view.object)
	s.sheet = w.newSheet(t("set.title"), content,
		answer{text: t("ask.cancel")},
		answer{text: t("offer.add"), main: true, able: s.view.able, then: s.view.add},
	)
	s.pick.sheet, s.both.sheet, s.view.list.sheet = s.sheet, s.sheet, s.sheet
	s.pick.SetSelectedIndex(0)
	s.sheet.dialog.Show()
	w.focus(s.pick)
}

// show shows the fields of a kind of set.
func (s *setSheet) show(k setKind) {
	s.kind, s.entries = k, nil
	s.form.RemoveAll()
	for _, f := range k.fields {
		e := newSheetEntry(f.first(s.w.store.Plan()))
		e.sheet = s.sheet
		e.OnChanged = func(string) { s.update() }
		s.entries = append(s.entries, e)
		name := widget.NewLabel(s.w.words.Text(f.key))
		s.form.Add(container.New(setLayout, name, e))
	}
	if k.both == "" {
		s.both.Hide()
	} else {
		s.both.SetText(s.w.words.Text(k.both))
		s.both.Show()
	}
	s.update()
}

// update shows what the fields come to.
func (s *setSheet) update() {
	r := &setReader{w: s.w, kind: s.kind}
	for _, e := range s.entries {
		r.texts = append(r.texts, e.Text)
	}
	result := s.kind.make(r)
	if r.err != nil {
		result = setResult{}
	}
	both := s.kind.both != "" && s.both.Checked
	stops := make([]plan.Stop, len(result.stops))
	for i, st := range result.stops {
		st.BothSides = both && hasOtherSide(geom.Angle(st.Angle))
		stops[i] = st
	}
	s.why.tell(r.err)
	if s.note.SetText(result.note); result.note == "" {
		s.note.Hide()
	} else {
		s.note.Show()
	}
	s.view.show(stops, nil)
}
