package ui

import (
	"errors"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// springSheet works out the two forces of the catch's spring from what a maker
// can measure or buy it by, and shows them while it is typed.
type springSheet struct {
	w       *Window
	kind    springKind
	pick    *sheetSelect
	wires   *sheetSelect
	wire    fyne.CanvasObject
	form    *fyne.Container
	entries []*sheetEntry
	result  *widget.Label
	why     *problem
	sheet   *sheet
	spring  ball.Spring // what the fields come to
	ok      bool
}

// springCommand is the menu's item that works out a spring.
func (w *Window) springCommand() *fyne.MenuItem {
	return w.command(w.words.Text("menu.spring"), "", 0, w.askSpring)
}

// askSpring asks what is known of the catch's spring.
func (w *Window) askSpring() {
	t := w.words.Text
	s := &springSheet{w: w, form: container.NewVBox(), result: widget.NewLabel(""), why: newProblem(w)}
	s.result.Wrapping = fyne.TextWrapWord
	var kinds, wires []string
	for _, k := range springKinds {
		kinds = append(kinds, t(k.key))
	}
	for _, wire := range stock.Wires() {
		wires = append(wires, t(wire.WordKey()))
	}
	s.pick = newSheetSelect(kinds, func(string) { s.show(springKinds[s.pick.SelectedIndex()]) })
	s.wires = newSheetSelect(wires, nil)
	s.wires.SetSelectedIndex(0)
	s.wires.OnChanged = func(string) { s.update() }
	s.wire = container.New(choiceLayout, widget.NewLabel(t("spring.material")), s.wires)
	s.sheet = w.newSheet(t("spring.title"), container.NewVBox(s.pick, s.form, s.wire, s.result, s.why.object),
		answer{text: t("ask.cancel")},
		answer{text: t("spring.use"), main: true, able: func() bool { return s.ok }, then: s.apply},
	)
	s.pick.sheet, s.wires.sheet = s.sheet, s.sheet
	s.pick.SetSelectedIndex(0)
	s.sheet.dialog.Show()
	w.focus(s.pick)
}

// show shows the fields of a way to know a spring.
func (s *springSheet) show(k springKind) {
	s.kind, s.entries = k, nil
	s.form.RemoveAll()
	for _, f := range k.fields {
		first, unit := f.first(s.w.store.Plan()), s.w.unitSign(f.unit)
		text := measure.Trim(first, plainDecimals)
		if f.unit == millimetres {
			text = s.w.units().LengthField(first)
		}
		e := newSheetEntry(s.w.decimal(text))
		e.sheet = s.sheet
		e.OnChanged = func(string) { s.update() }
		s.entries = append(s.entries, e)
		s.form.Add(container.New(springLayout, widget.NewLabel(s.w.words.Text(f.key)), e, widget.NewLabel(unit)))
	}
	if s.wire.Hide(); k.wire {
		s.wire.Show()
	}
	s.update()
}

// springLayout is a row of the form: a name, its field and its unit.
var springLayout = rowLayout{fieldWidth, 56}

// read reads the fields.
func (s *springSheet) read() *springReader {
	r := &springReader{travel: s.w.store.Plan().Catch.Protrusion, wire: stock.Wires()[s.wires.SelectedIndex()]}
	for i, e := range s.entries {
		f := s.kind.fields[i]
		x, err := s.w.readSpring(f, e.Text)
		if err != nil && r.err == nil {
			why := s.w.inWords(err)
			r.err = errors.New(s.w.words.Text("set.field", words.Args{"Field": s.w.words.Text(f.key), "Why": why}))
		}
		r.values = append(r.values, x)
	}
	return r
}

// update shows what the fields come to.
func (s *springSheet) update() {
	r := s.read()
	err := r.err
	if err == nil {
		s.spring, err = s.kind.make(r)
	}
	if err == nil {
		s.spring.Free, s.spring.Flush = toHundredths(s.spring.Free), toHundredths(s.spring.Flush)
		p := s.w.store.Plan().Clone()
		s.put(&p)
		err = plan.Validate(p)
	}
	s.ok = err == nil
	s.why.tell(err)
	if s.result.Hide(); s.ok {
		s.result.SetText(s.says(r))
		s.result.Show()
	}
}

// says tells the forces, and of a coil how it is wound.
func (s *springSheet) says(r *springReader) string {
	num := func(x float64) string { return s.w.decimal(measure.Trim(x, 2)) }
	text := s.w.words.Text("spring.result", words.Args{
		"Free": num(s.spring.Free), "Flush": num(s.spring.Flush),
		"Rate": num(s.spring.Rate()), "Travel": words.MM(s.spring.Travel),
	})
	if !s.kind.wire {
		return text
	}
	c := r.coil()
	key := "spring.index"
	if c.Index() < 4 || c.Index() > 12 {
		key = "spring.index.unusual"
	}
	return text + " " + s.w.words.Text(key, words.Args{"Index": num(c.Index()), "Stress": num(math.Round(c.Stress(s.spring.Flush)))})
}

// toHundredths rounds a force to what a good scale shows.
func toHundredths(x float64) float64 { return math.Round(x*100) / 100 }

// put gives a plan's catch the forces.
func (s *springSheet) put(p *plan.Plan) {
	p.Catch.FreeForce, p.Catch.FlushForce = s.spring.Free, s.spring.Flush
}

// apply makes the forces the plan's, as one edit.
func (s *springSheet) apply() { s.w.report(s.w.store.Edit(s.w.words.Text("edit.spring"), s.put)) }
