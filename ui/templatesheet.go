package ui

import (
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/export"
	"stopwright/export/drawing"
	"stopwright/export/template"
	"stopwright/export/tile"
)

// templateSheet asks for the paper of the templates, and for what the bars of a
// printed one measure.
type templateSheet struct {
	w     *Window
	file  *sheetEntry
	paper *sheetSelect
	bars  [2]*sheetEntry // across the paper, and up it
	why   *problem
	note  *widget.Label

	sheets []tile.Sheet // what is printed
	pages  int          // that come of it; 0: something is wrong
}

// askTemplate asks what paper templates to make, and makes them.
func (w *Window) askTemplate() {
	t := w.words.Text
	s := &templateSheet{w: w, file: w.fileEntry("-template.pdf"), why: newProblem(w), note: widget.NewLabel("")}
	s.sheets = template.Sheets(w.store.Report().Plate, drawing.Info{Words: w.sheetWords})
	paper, bars := w.printer()
	s.paper = newSheetSelect(paperNames(), nil)
	s.paper.SetSelectedIndex(paperNamed(paper.Name))
	for i, measured := range [2]float64{bars.X, bars.Y} {
		text := ""
		if measured > 0 {
			text = w.units().LengthField(measured) + " " + w.units().LengthSign()
		}
		s.bars[i] = newSheetEntry(text)
		s.bars[i].SetPlaceHolder(w.words.Text("template.bar.unmeasured"))
	}
	intro := widget.NewLabel(t("template.intro"))
	intro.Wrapping, s.note.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	content := container.NewVBox(
		intro, w.fileRow(s.file),
		w.formRow("export.paper", s.paper),
		w.formRow("template.bar.x", s.bars[0], words.Args{"Length": words.MM(tile.BarX)}),
		w.formRow("template.bar.y", s.bars[1], words.Args{"Length": words.MM(tile.BarY)}),
		s.why.object, s.note, w.exportWarning(),
	)
	sheet := w.newSheet(t("template.title"), content,
		answer{text: t("ask.cancel")},
		answer{text: t("template.do"), main: true, then: s.make, able: func() bool { return s.pages > 0 && s.file.filled() }},
	)
	s.file.sheet, s.paper.sheet, s.bars[0].sheet, s.bars[1].sheet = sheet, sheet, sheet, sheet
	s.paper.OnChanged = func(string) { s.update() }
	s.bars[0].OnChanged = func(string) { s.update() }
	s.bars[1].OnChanged = func(string) { s.update() }
	s.update()
	w.showAt(s.file)
}

// read returns what the fields say.
func (s *templateSheet) read() (drawing.Paper, tile.Correction, error) {
	paper := drawing.Papers[s.paper.SelectedIndex()]
	var bars tile.Correction
	for i, to := range [2]*float64{&bars.X, &bars.Y} {
		measured, err := s.w.readLength(s.bars[i])
		if err != nil {
			return paper, bars, err
		}
		if measured == 0 && strings.TrimSpace(s.bars[i].Text) != "" {
			return paper, bars, tile.NotMeasured(i)
		}
		*to = measured
	}
	_, err := bars.Stretch()
	return paper, bars, err
}

// update shows what the fields come to: how many pages, or what is wrong.
func (s *templateSheet) update() {
	paper, bars, err := s.read()
	s.pages = 0
	if err == nil {
		for _, sheet := range s.sheets {
			n, _ := tile.Count(sheet, paper, bars, s.w.sheetWords) // the bars are good
			s.pages += n
		}
	}
	s.why.tell(err)
	s.note.SetText("")
	if err == nil {
		s.note.SetText(s.w.words.Text("template.pages", words.Args{"N": s.pages, "Paper": paper.Name}))
	}
}

// make writes the templates and remembers the printer.
func (s *templateSheet) make() {
	paper, bars, err := s.read()
	if err != nil {
		s.w.tellError(err)
		return
	}
	s.w.keepPrinter(paper, bars)
	s.w.export(export.Request{
		Template: strings.TrimSpace(s.file.Text), Plan: s.w.store.Path(), Words: s.w.sheetWords,
		Paper: paper, Printer: bars, Date: time.Now().Format(time.DateOnly),
	})
}
