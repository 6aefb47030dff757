package ui

import (
	"errors"
	"math"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export"
	"stopwright/export/drawing"
	"stopwright/export/router"
)

// routerSheet is where the router is set: its settings, what it would do to each
// part, and why it must not.
type routerSheet struct {
	w       *Window
	rows    []fieldRow
	pick    *sheetSelect
	view    *routerView
	why     *problem
	whyBox  *container.Scroll
	explain *widget.Label
	sheet   *sheet
}

// routerKeys begin the paths of a router's fields.
const routerKeys = "router."

// routerFields returns the settings of the plan's router, those it has by default
// too.
func (w *Window) routerFields() []plan.Field {
	set := w.store.Plan().RouterSettings()
	return slices.DeleteFunc(plan.Fields(plan.Plan{Router: &set}), func(f plan.Field) bool {
		return !strings.HasPrefix(f.Path, routerKeys)
	})
}

// routerCommand is the menu's item that opens the sheet.
func (w *Window) routerCommand() *fyne.MenuItem {
	return w.command(w.words.Text("menu.router"), fyne.KeyR, ctrl|shift, w.askRouter)
}

// askRouter opens the sheet.
func (w *Window) askRouter() {
	t := w.words.Text
	s := &routerSheet{w: w, view: newRouterView(w), why: newProblem(w), explain: widget.NewLabel("")}
	s.explain.Wrapping = fyne.TextWrapWord
	form := container.NewVBox()
	for _, f := range w.routerFields() {
		row := w.newFieldRow(f)
		s.rows = append(s.rows, row)
		form.Add(row.object)
	}
	var names []string
	for _, part := range drawing.AllPartsOf(w.store.Plan()) {
		names = append(names, drawing.PartName(w.words, part))
	}
	s.pick = newSheetSelect(names, func(string) { s.refresh() })
	s.pick.Selected = names[0]
	s.whyBox = container.NewVScroll(s.why.object)
	s.why.moved = func() { s.whyBox.Refresh() }

	size := w.routerSize()
	scroll := container.NewVScroll(form)
	scroll.SetMinSize(fyne.NewSize(routerForm, 0))
	explain := container.NewVScroll(s.explain)
	explain.SetMinSize(fyne.NewSize(routerForm, routerExplain))
	left := container.NewBorder(nil, explain, nil, nil, underWheel(scroll))
	right := container.NewBorder(container.NewVBox(s.pick, s.whyBox), nil, nil, nil, s.view.object)
	content := container.NewBorder(nil, nil, left, nil, right)
	s.sheet = w.newSheet(t("router.title"), content,
		answer{text: t("router.close")},
		answer{text: t("router.export"), main: true, able: s.able, then: w.exportPrograms},
	)
	s.pick.sheet = s.sheet
	w.router = s
	s.sheet.dialog.SetOnClosed(func() { w.router = nil })
	s.sheet.dialog.Resize(size)
	s.refresh()
	s.sheet.dialog.Show()
	w.focus(s.pick)
}

// The sizes of the sheet, px of layout.
const (
	routerForm    = 330 // of the settings
	routerExplain = 84  // of what explains one
	routerWhy     = 92  // of why a program is refused
	routerWide    = 1000
	routerHigh    = 660
)

// routerSize returns how large the sheet is: as large as the window lets it.
func (w *Window) routerSize() fyne.Size {
	const margin = 40
	size := w.win.Canvas().Size()
	return fyne.NewSize(min(routerWide, size.Width-margin), min(routerHigh, size.Height-margin))
}

// able reports whether the programs may be written. What is being typed is
// handed in first.
func (s *routerSheet) able() bool {
	if e, ok := s.w.win.Canvas().Focused().(*valueEntry); ok {
		e.commit()
	}
	return s.refusal() == nil
}

// refusal returns why programs are refused; nil: they are not.
func (s *routerSheet) refusal() error {
	_, err := router.All(s.w.store.Report().Plate, s.w.words)
	return err
}

// part returns the part that is shown.
func (s *routerSheet) part() plan.Part {
	return drawing.AllPartsOf(s.w.store.Plan())[max(0, s.pick.SelectedIndex())]
}

// refresh shows the plan's router, if the sheet is open.
func (s *routerSheet) refresh() {
	if s == nil {
		return
	}
	for _, r := range s.rows {
		r.refresh()
	}
	p, err := router.New(s.w.store.Report().Plate, s.part(), s.w.words)
	s.view.show(s.part(), p, err != nil)
	err = s.refusal() // of any part
	if s.whyBox.SetMinSize(fyne.NewSize(0, 0)); err != nil {
		s.whyBox.SetMinSize(fyne.NewSize(0, routerWhy))
	}
	s.why.tell(s.w.refusalInWords(err, math.MaxInt))
}

// explainField says what a setting means, if the sheet is open, and reports
// whether it is.
func (s *routerSheet) explainField(f plan.Field) bool {
	if s == nil {
		return false
	}
	s.explain.SetText(s.w.words.Text("explain." + f.Generic))
	return true
}

// fewReasons is how many reasons of a refusal are told where there is more to
// see.
const fewReasons = 2

// refusalInWords puts the reasons of a refusal into the window's language, at
// most so many of them.
func (w *Window) refusalInWords(err error, most int) error {
	var refused export.Refused
	if !errors.As(err, &refused) {
		return err
	}
	return errors.New(w.reasons(refused, most))
}

// reasons returns the reasons of a refusal, one a line, at most so many of them.
func (w *Window) reasons(why words.Saying, most int) string {
	lines := strings.Split(why.In(w.words), "\n")
	if over := len(lines) - most; over > 0 {
		lines = append(lines[:most], w.words.Text("router.more", words.Args{"N": over}))
	}
	return strings.Join(lines, "\n")
}

// exportPrograms asks where to, and writes the router's programs alone.
func (w *Window) exportPrograms() {
	path := filepath.Join(w.folder(), w.fileName()+".ngc")
	w.askPath(w.words.Text("router.title"), path, func(path string) {
		w.export(export.Request{
			Plan: w.store.Path(), Words: w.sheetWords, Date: time.Now().Format(time.DateOnly), Router: path,
		})
	})
}
