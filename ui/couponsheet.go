package ui

import (
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export"
	"stopwright/export/coupon"
)

// couponSheet makes the coupon, and asks what fitted in the one that was cut.
type couponSheet struct {
	w      *Window
	file   *sheetEntry
	rows   []coupon.Row
	fitted []*sheetSelect // one a row
}

// fittedLayout is a row of the question: a name, and a size with its allowance.
var fittedLayout = rowLayout{356}

// askCoupon offers to write the coupon, and to put into the plan what fitted.
func (w *Window) askCoupon() {
	t := w.words.Text
	s := &couponSheet{w: w, file: w.fileEntry("-coupon.dxf"), rows: coupon.Rows(w.store.Plan())}
	kind := w.newKindSelect(s.file, ".dxf", func() {})
	intro, question := widget.NewLabel(t("coupon.intro")), widget.NewLabel(t("coupon.question"))
	intro.Wrapping, question.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	question.SizeName = theme.SizeNameSubHeadingText
	content := container.NewVBox(
		intro, w.fileRow(s.file), w.formRow("kind", kind),
		widget.NewSeparator(), question,
	)
	for _, r := range s.rows {
		pick := newSheetSelect(s.sizes(r), nil)
		for i, g := range r.Rungs {
			if g.Chosen {
				pick.SetSelectedIndex(i)
			}
		}
		s.fitted = append(s.fitted, pick)
		name := widget.NewLabel(w.words.Text("coupon.fitted." + string(r.Kind)))
		content.Add(container.New(fittedLayout, name, pick))
	}
	sheet := w.newSheet(t("coupon.title"), content,
		answer{text: t("ask.cancel")},
		answer{text: t("coupon.write"), then: s.write, able: s.file.filled},
		answer{text: t("coupon.put"), main: true, then: s.put, able: s.differs},
	)
	s.file.sheet, kind.sheet = sheet, sheet
	for _, pick := range s.fitted {
		pick.sheet = sheet
	}
	w.showAt(s.file)
}

// sizes names the rungs of a row.
func (s *couponSheet) sizes(r coupon.Row) []string {
	var names []string
	for _, g := range r.Rungs {
		name := s.w.words.Text("coupon.size."+string(r.Kind), words.Args{"Size": words.MM(g.Size), "Allowance": words.MM(g.Value)})
		if g.Chosen {
			name = s.w.words.Text("coupon.planned", words.Args{"Size": name})
		}
		names = append(names, name)
	}
	return names
}

// differs reports whether anything fitted that the plan does not have.
func (s *couponSheet) differs() bool {
	for i, r := range s.rows {
		if !r.Rungs[s.fitted[i].SelectedIndex()].Chosen {
			return true
		}
	}
	return false
}

// write writes the coupon.
func (s *couponSheet) write() {
	paper, bars := s.w.printer()
	s.w.export(export.Request{
		Coupon: strings.TrimSpace(s.file.Text), Plan: s.w.store.Path(), Words: s.w.sheetWords,
		Paper: paper, Printer: bars, Date: time.Now().Format(time.DateOnly),
	})
}

// put puts into the plan what fitted, as one edit.
func (s *couponSheet) put() {
	s.w.report(s.w.store.Edit(s.w.words.Text("coupon.edit"), func(p *plan.Plan) {
		for i, r := range s.rows {
			if g := r.Rungs[s.fitted[i].SelectedIndex()]; !g.Chosen {
				coupon.Apply(p, r.Kind, g.Value)
			}
		}
	}))
}
