package ui

import (
	"cmp"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

// plateTools is the line above the plate: which face is shown, and to what
// step a click is rounded.
type plateTools struct {
	w      *Window
	face   *widget.Select
	parts  []plan.Part // what each choice of face shows
	snap   *widget.Select
	object fyne.CanvasObject
}

// snaps are the steps, in degrees, to which a click may be rounded; 0 is free.
var snaps = []float64{0.1, 0.5, 1, 2.5, 5, 7.5, 0}

func newPlateTools(w *Window) *plateTools {
	t := &plateTools{w: w, face: widget.NewSelect(nil, nil), snap: widget.NewSelect(nil, nil)}
	t.face.PlaceHolder = w.words.Text("plate.free") // never shown, but the toolkit leaves room for it
	t.snap.OnChanged = func(string) {
		v := w.store.View()
		v.Snap = snaps[t.snap.SelectedIndex()]
		w.store.SetView(v)
	}
	t.face.OnChanged = func(string) {
		v := w.store.View()
		v.Part = t.parts[t.face.SelectedIndex()]
		w.store.SetView(v)
	}
	fit := widget.NewButton(w.words.Text("plate.fit"), func() { w.plate.fit() })
	fit.Importance = widget.LowImportance
	right := container.NewHBox(widget.NewLabel(w.words.Text("plate.snap")), t.snap, fit)
	t.object = container.NewBorder(nil, nil, nil, right, t.face)
	t.refresh()
	return t
}

func (w *Window) snapName(step float64) string {
	if step == 0 {
		return w.words.Text("plate.free")
	}
	return w.words.Angle(step)
}

// refresh shows the view's settings and the parts there are.
func (t *plateTools) refresh() {
	v := t.w.store.View()
	t.parts = append([]plan.Part{""}, drawing.Parts(t.w.store.Plan())...)
	names := make([]string, len(t.parts))
	shown := t.face.Selected
	for i, part := range t.parts {
		names[i] = t.w.words.Text("plate.above")
		if part != "" {
			names[i] = t.w.words.Text("plate.part", words.Args{
				"Part": drawing.PartName(t.w.words, part), "View": drawing.ViewName(t.w.words, part),
			})
		}
		if part == v.Part {
			shown = names[i]
		}
	}
	showChoice(t.face, names, shown)
	step, steps := t.snap.Selected, make([]string, len(snaps))
	for i, s := range snaps {
		steps[i] = t.w.snapName(s)
		if s == v.Snap {
			step = steps[i]
		}
	}
	if longest := slices.MaxFunc(steps, byLength); longest != t.snap.PlaceHolder {
		t.snap.PlaceHolder = longest // never shown, but the toolkit leaves room for it
		t.object.Refresh()
	}
	showChoice(t.snap, steps, step)
}

func byLength(a, b string) int { return cmp.Compare(len(a), len(b)) }

// showChoice makes a list of choices show one of them, without calling back,
// and paints it anew only where that changes something.
func showChoice(s *widget.Select, options []string, shown string) {
	if s.Selected == shown && slices.Equal(s.Options, options) {
		return
	}
	s.Options, s.Selected = options, shown
	s.Refresh()
}
