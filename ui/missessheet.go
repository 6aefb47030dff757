package ui

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/budget"
	"stopwright/detent/plan"
)

// missesSheet asks for what a maker measured on holes drilled in scrap, and says
// what that makes of the shop's own spread.
type missesSheet struct {
	w      *Window
	misses *sheetEntry
	catch  *sheetCheck
	says   *widget.Label
	why    *problem
	radius float64 // mm; 0: not known yet
}

// fewestMisses is of how many holes at least a spread is told.
const fewestMisses = 3

// missesCommand is the menu's item that measures the maker's own drilling.
func (w *Window) missesCommand() *fyne.MenuItem {
	return w.command(w.words.Text("menu.truth.coupon"), "", 0, w.askMisses)
}

// askMisses asks for the distances measured.
func (w *Window) askMisses() {
	t := w.words.Text
	s := &missesSheet{w: w, misses: newSheetEntry(""), says: widget.NewLabel(""), why: newProblem(w)}
	how := widget.NewLabel(t("misses.how"))
	how.Wrapping, s.says.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	s.catch = newSheetCheck(t("misses.catches"), nil)
	s.catch.Checked = true
	s.misses.PlaceHolder = w.decimal("0.2 0.35 0.1 …")
	s.misses.OnChanged = func(string) { s.update() }
	row := container.NewBorder(nil, nil, widget.NewLabel(t("misses.misses")), nil, s.misses)
	sh := w.newSheet(t("misses.title"), container.NewVBox(how, row, s.says, s.why.object, s.catch),
		answer{text: t("ask.cancel")},
		answer{text: t("misses.use"), main: true, able: func() bool { return s.radius > 0 }, then: s.take},
	)
	s.misses.sheet, s.catch.sheet = sh, sh
	s.update()
	sh.dialog.Show()
	w.focus(s.misses)
}

// update says what the distances typed come to.
func (s *missesSheet) update() {
	s.radius = 0
	misses, err := s.read()
	s.why.tell(err)
	s.says.SetText(s.w.words.Text("misses.none"))
	if err != nil || len(misses) < fewestMisses {
		return
	}
	s.radius, _ = budget.DiscOf(misses)
	s.says.SetText(s.w.words.Text("misses.says", args{"N": len(misses), "Radius": words.MM(s.radius)}))
}

// read reads the distances: between spaces or semicolons, each a number.
func (s *missesSheet) read() ([]float64, error) {
	var misses []float64
	for _, text := range strings.FieldsFunc(s.misses.Text, func(r rune) bool { return r == ' ' || r == ';' || r == '\n' }) {
		mm, err := s.w.units().ReadLength(text)
		if err != nil {
			return nil, err
		}
		if mm < 0 {
			return nil, errors.New(s.w.words.Text("misses.negative", args{"Text": text}))
		}
		misses = append(misses, mm)
	}
	return misses, nil
}

// take makes the spread measured the shop's.
func (s *missesSheet) take() {
	s.w.report(s.w.store.Edit(s.w.words.Text("edit.misses"), func(p *plan.Plan) {
		p.Shop.Method, p.Shop.SeatError = plan.MethodMeasured, s.radius
		if s.catch.Checked {
			p.Shop.CatchError = s.radius
		}
	}))
}
