package ui

import (
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/export"
	"stopwright/export/scale"
)

// scaleSheet asks what scale is wanted.
type scaleSheet struct {
	w       *Window
	file    *sheetEntry
	form    *sheetSelect // flat, or a strip round the rim
	kind    *sheetSelect
	step    *sheetSelect
	reading *sheetSelect
	rim     *sheetEntry
	why     *problem
	good    bool
}

// scaleForms are the forms of a scale, as the names of their files end.
var scaleForms = []string{"-scale", "-strip"}

// askScale asks what scale to make, and makes it.
func (w *Window) askScale() {
	t := w.words.Text
	s := &scaleSheet{w: w, file: w.fileEntry("-scale.dxf"), why: newProblem(w), rim: newSheetEntry("")}
	s.form = newSheetSelect([]string{t("scale.form.flat"), t("scale.form.strip")}, nil)
	s.kind = w.newKindSelect(s.file, ".dxf", s.update)
	var steps, readings []string
	for _, step := range scale.Steps {
		steps = append(steps, w.words.Angle(step))
	}
	for _, r := range scale.Readings {
		readings = append(readings, t("scale.reading."+string(r)))
	}
	s.step, s.reading = newSheetSelect(steps, nil), newSheetSelect(readings, nil)
	for _, pick := range []*sheetSelect{s.form, s.step, s.reading} {
		pick.SetSelectedIndex(0)
	}
	s.rim.SetPlaceHolder(w.words.Length(w.store.Plan().TableDiameter()))
	intro := widget.NewLabel(t("scale.intro"))
	intro.Wrapping = fyne.TextWrapWord
	content := container.NewVBox(
		intro, w.fileRow(s.file),
		w.formRow("scale.form", s.form), w.formRow("kind", s.kind),
		w.formRow("scale.graduations", s.step), w.formRow("scale.reading", s.reading),
		w.formRow("scale.rim", s.rim), s.why.object,
	)
	sheet := w.newSheet(t("scale.title"), content,
		answer{text: t("ask.cancel")},
		answer{text: t("scale.do"), main: true, then: s.make, able: func() bool { return s.good && s.file.filled() }},
	)
	s.file.sheet, s.rim.sheet = sheet, sheet
	for _, pick := range []*sheetSelect{s.form, s.kind, s.step, s.reading} {
		pick.sheet = sheet
	}
	s.form.OnChanged = func(string) { s.rename(); s.update() }
	s.step.OnChanged = func(string) { s.update() }
	s.reading.OnChanged = func(string) { s.update() }
	s.rim.OnChanged = func(string) { s.update() }
	s.update()
	w.showAt(s.file)
}

// rename calls the file by the form chosen, where it is called by the other.
func (s *scaleSheet) rename() {
	now := scaleForms[s.form.SelectedIndex()]
	was := scaleForms[1-s.form.SelectedIndex()]
	if i := strings.LastIndex(s.file.Text, was+"."); i >= 0 {
		s.file.SetText(s.file.Text[:i] + now + s.file.Text[i+len(was):])
	}
}

// options returns what the fields say.
func (s *scaleSheet) options() (scale.Options, error) {
	rim, err := s.w.readLength(s.rim)
	o := scale.Options{Step: scale.Steps[s.step.SelectedIndex()], Reading: scale.Readings[s.reading.SelectedIndex()], Rim: rim}
	if err != nil {
		return o, err
	}
	return o, o.Check()
}

// update says what is wrong, if anything is.
func (s *scaleSheet) update() {
	_, err := s.options()
	s.good = err == nil
	s.why.tell(err)
}

// make writes the scale.
func (s *scaleSheet) make() {
	o, err := s.options()
	if err != nil {
		s.w.tellError(err)
		return
	}
	paper, bars := s.w.printer()
	q := export.Request{
		Plan: s.w.store.Path(), Words: s.w.sheetWords, Scaling: o,
		Paper: paper, Printer: bars, Date: time.Now().Format(time.DateOnly),
	}
	to := &q.Scale
	if s.form.SelectedIndex() > 0 {
		to = &q.Strip
	}
	*to = strings.TrimSpace(s.file.Text)
	s.w.export(q)
}
