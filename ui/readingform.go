package ui

import (
	"cmp"
	"errors"
	"math"
	"slices"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/proving"
	"stopwright/ui/store"
)

// readingForm takes one reading: which stop, by which method, what was read,
// from which side it was turned to, and when. The method's own arithmetic is
// done here.
type readingForm struct {
	w        *Window
	stop     *widget.Select
	method   *widget.Select
	how      *widget.Label
	inputs   *fyne.Container
	values   []*widget.Entry
	open     *widget.Select // which way a gap is open; nil: the method has none
	approach *widget.Select
	date     *widget.Entry
	result   *widget.Label
	wrong    *problem
	angles   []geom.Angle
	doubted  plan.Reading // asked about already: kept if it comes again
	object   fyne.CanvasObject
}

// inputs of each method, after "reading.": lengths but for the angle of direct.
var methodInputs = map[proving.Method][]string{
	proving.Typed:   {"angle"},
	proving.Square:  {"gap", "leg"},
	proving.FiveCut: {"near", "far", "apart"},
	proving.Flip:    {"gap", "face"},
	proving.Ring:    {"gap", "face"},
}

// methodOpens names the two ways in which a gap can be open, first the one that
// counts as plus.
var methodOpens = map[proving.Method][2]string{
	proving.Square: {"corner", "ends"},
	proving.Flip:   {"operator", "fence"},
	proving.Ring:   {"inside", "outside"},
}

// approaches are the senses a stop is turned to, as a plan has them.
var approaches = []string{"", string(plan.Clockwise), string(plan.Counterclockwise)}

func newReadingForm(w *Window) *readingForm {
	t := w.words.Text
	f := &readingForm{
		w: w, how: wrapped(""), inputs: container.NewGridWithColumns(2), result: wrapped(""), wrong: newProblem(w),
		stop: widget.NewSelect(nil, nil), method: widget.NewSelect(nil, nil), approach: widget.NewSelect(nil, nil),
	}
	for _, m := range proving.Methods {
		f.method.Options = append(f.method.Options, t("reading.method."+string(m)))
	}
	for _, a := range approaches {
		if a == "" {
			a = "unknown"
		}
		f.approach.Options = append(f.approach.Options, t("reading.approach."+a))
	}
	f.date = widget.NewEntry()
	f.date.SetText(time.Now().Format(time.DateOnly))
	f.date.OnSubmitted = func(string) { f.add() }
	f.stop.PlaceHolder = t("reading.stop")
	f.stop.OnChanged = func(string) { f.work() }
	f.method.OnChanged = func(string) { f.ask() }
	f.method.SetSelectedIndex(0)
	f.approach.SetSelectedIndex(0)
	add := widget.NewButtonWithIcon(t("reading.add"), theme.ContentAddIcon(), f.add)
	pair := func(key string, o fyne.CanvasObject) fyne.CanvasObject {
		return container.NewGridWithColumns(2, shortLabel(t(key)), o)
	}
	f.object = container.NewVBox(
		pair("reading.stop", f.stop), pair("reading.method", f.method), f.how, f.inputs,
		pair("reading.approach", f.approach), pair("reading.date", f.date),
		container.NewBorder(nil, nil, nil, add, f.result), f.wrong.object,
	)
	return f
}

// begin gives the keys to the form, with the stop at which the table stands.
func (f *readingForm) begin() {
	if i := slices.Index(f.angles, f.w.store.Turn()); i >= 0 {
		f.stop.SetSelectedIndex(i)
	}
	f.w.focus(f.values[0])
}

// refresh offers the plan's stops.
func (f *readingForm) refresh() {
	was := f.stop.SelectedIndex()
	angles, names := f.w.stopChoices()
	if slices.Equal(angles, f.angles) && slices.Equal(names, f.stop.Options) {
		f.work()
		return
	}
	var keep geom.Angle
	if was >= 0 {
		keep = f.angles[was]
	}
	f.angles, f.stop.Options = angles, names
	f.stop.ClearSelected()
	if i := slices.Index(angles, keep); i >= 0 && was >= 0 {
		f.stop.SetSelectedIndex(i)
	}
	f.stop.Refresh()
	f.work()
}

func (f *readingForm) chosen() proving.Method {
	return proving.Methods[max(0, f.method.SelectedIndex())]
}

// ask makes the fields of the chosen method.
func (f *readingForm) ask() {
	t, m := f.w.words.Text, f.chosen()
	f.how.SetText(t("reading.how." + string(m)))
	f.inputs.RemoveAll()
	f.values, f.open = nil, nil
	for _, key := range methodInputs[m] {
		e := widget.NewEntry()
		e.OnChanged = func(string) { f.work() }
		e.OnSubmitted = func(string) { f.add() }
		f.values = append(f.values, e)
		f.inputs.Add(wrapped(t("reading." + key)))
		f.inputs.Add(e)
	}
	if opens, ok := methodOpens[m]; ok {
		f.open = widget.NewSelect([]string{t("reading.open." + opens[0]), t("reading.open." + opens[1])}, func(string) { f.work() })
		f.open.SetSelectedIndex(0)
		f.inputs.Add(wrapped(t("reading.open")))
		f.inputs.Add(f.open)
	}
	f.work()
}

// read makes sense of the form: the angle measured.
func (f *readingForm) read() (plan.Reading, error) {
	t := f.w.words.Text
	i := f.stop.SelectedIndex()
	if i < 0 {
		return plan.Reading{}, errors.New(t("reading.need.stop"))
	}
	m := detent.Measurement{Method: f.chosen(), Stop: f.angles[i]}
	for k, to := range []*float64{&m.A, &m.B, &m.C} {
		if k >= len(f.values) {
			break
		}
		read := f.w.units().ReadLength
		if m.Method == proving.Typed {
			read = f.w.units().ReadAngle
		}
		var err error
		if *to, err = read(f.values[k].Text); err != nil {
			return plan.Reading{}, err
		}
	}
	if f.open != nil && f.open.SelectedIndex() == 1 {
		m.A = -m.A
	}
	if _, ok := proving.Multiple(m.Method, m.Stop); !ok {
		return plan.Reading{}, errors.New(t("reading.unsuited." + string(m.Method)))
	}
	measured, ok := f.w.store.Report().Measured(m)
	if !ok {
		return plan.Reading{}, errors.New(t("reading.need.length"))
	}
	return plan.Reading{
		Angle: m.Stop.Degrees(), Measured: store.Tidy(measured.Degrees()).Degrees(),
		Approach: approaches[max(0, f.approach.SelectedIndex())], Method: string(m.Method), Date: f.date.Text,
	}, nil
}

// empty reports whether nothing has been typed yet.
func (f *readingForm) empty() bool {
	for _, e := range f.values {
		if e.Text != "" {
			return false
		}
	}
	return true
}

// work says what the form comes to as it is typed.
func (f *readingForm) work() {
	if f.empty() {
		f.result.SetText("")
		return
	}
	x, err := f.read()
	if err != nil {
		f.result.SetText("")
		return
	}
	n, _ := proving.Multiple(f.chosen(), geom.Angle(x.Angle))
	key := "reading.is"
	if n == 1 {
		key = "reading.is.once"
	}
	f.result.SetText(f.w.words.Text(key, words.Args{
		"Measured": words.Deg(x.Measured), "Off": words.Deg(detent.Residual(x)), "N": n,
	}))
}

// doubt says so, once, where what was read is nearer another stop than the one
// it is for: as like as not the next stop was measured and the choice forgotten,
// or a sign was.
func (f *readingForm) doubt(x plan.Reading) error {
	off := func(a geom.Angle) float64 { return math.Abs(x.Measured - a.Degrees()) }
	if len(f.angles) == 0 || x == f.doubted {
		return nil
	}
	near := slices.MinFunc(f.angles, func(a, b geom.Angle) int { return cmp.Compare(off(a), off(b)) })
	if off(near) >= off(geom.Angle(x.Angle)) {
		return nil
	}
	f.doubted = x
	return errors.New(f.w.words.Text("reading.doubt", words.Args{
		"Measured": words.Deg(x.Measured), "Near": words.Deg(near), "Angle": words.Deg(x.Angle),
	}))
}

// add keeps what the form comes to in the log, and makes room for the next.
func (f *readingForm) add() {
	x, err := f.read()
	if err == nil {
		err = f.doubt(x)
	}
	if err == nil {
		err = f.w.store.Log(func(p *plan.Plan) { p.Readings = append(p.Readings, x) })
	}
	f.wrong.tell(err)
	if err != nil {
		return
	}
	for _, e := range f.values {
		e.SetText("")
	}
	f.result.SetText(f.w.words.Text("reading.kept", words.Args{"Angle": words.Deg(x.Angle), "Measured": words.Deg(x.Measured)}))
	f.w.focus(f.values[0])
}
