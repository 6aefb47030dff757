package ui

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/angles"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// fenceAsk is the line that asks about a stop whose angle seems to be read from
// the fence and not from square: see [angles.FromFence]. The stop is in the plan
// meanwhile, and nothing waits for an answer.
type fenceAsk struct {
	w      *Window
	open   []float64 // the stops to be asked about, by angle: the first is shown
	label  *widget.Label
	use    *widget.Button
	keep   *widget.Button
	object *fyne.Container
	moved  func() // what is below must move up or down
}

func newFenceAsk(w *Window) *fenceAsk {
	q := &fenceAsk{w: w, label: widget.NewLabel("")}
	q.label.Wrapping = fyne.TextWrapWord
	q.use = widget.NewButton("", q.takeSquare)
	q.keep = widget.NewButton(w.words.Text("fence.keep"), q.next)
	buttons := container.NewHBox(layout.NewSpacer(), q.use, q.keep)
	q.object = container.NewBorder(nil, buttons, widget.NewIcon(theme.QuestionIcon()), nil, q.label)
	q.object.Hide()
	q.moved = func() {}
	return q
}

// about asks about the stop at an angle, if there is reason to.
func (q *fenceAsk) about(angle float64) {
	if _, _, ok := angles.FromFence(geom.Angle(angle), nil); ok && !slices.Contains(q.open, angle) {
		q.open = append(q.open, angle)
		q.refresh()
	}
}

// next gives up the question shown.
func (q *fenceAsk) next() {
	q.open = q.open[1:]
	q.refresh()
}

// refresh shows the first question that there is still reason to ask. A plan
// with nothing to undo was just opened: what was asked was about another.
func (q *fenceAsk) refresh() {
	defer q.moved()
	if _, edited := q.w.store.CanUndo(); !edited {
		q.open = nil
	}
	for ; len(q.open) > 0; q.open = q.open[1:] {
		square, sides, ok := q.square(q.open[0])
		if !ok {
			continue
		}
		q.label.SetText(q.w.words.Text("fence.ask", words.Args{
			"Angle": words.Deg(q.open[0]), "Square": words.Deg(square), "Sides": sides,
		}))
		q.use.SetText(q.w.words.Text("fence.use", words.Args{"Square": words.Deg(square)}))
		q.object.Show()
		return
	}
	q.object.Hide()
}

// square returns what a stop of the plan would be from square, and false where
// there is no such stop or no reason to ask about it.
func (q *fenceAsk) square(angle float64) (square geom.Angle, sides int, ok bool) {
	i := q.stop(angle)
	if i < 0 {
		return 0, 0, false
	}
	var others []geom.Angle
	for _, s := range q.w.store.Report().Plate.Stops {
		if s.Index != i {
			others = append(others, s.Angle)
		}
	}
	return angles.FromFence(geom.Angle(angle), others)
}

// stop returns the plan's stop at an angle; -1: none.
func (q *fenceAsk) stop(angle float64) int {
	return slices.IndexFunc(q.w.store.Plan().Stops, func(s plan.Stop) bool { return s.Angle == angle })
}

// takeSquare moves the stop to where it belongs from square, as one edit. Where
// the plan has a stop there the one asked about is left out.
func (q *fenceAsk) takeSquare() {
	angle := q.open[0]
	square, _, ok := q.square(angle)
	if !ok {
		q.refresh()
		return
	}
	i, st := q.stop(angle), q.w.store
	moved := st.Plan().Stops[i]
	moved.Angle = square.Degrees()
	name := q.w.editName("edit.angle", angle)
	st.BeginGesture()
	err := st.RemoveStops(name, i)
	if offer := st.Offer([]plan.Stop{moved}); err == nil && len(offer.New) > 0 {
		err = st.AddStops(name, offer.New...)
	}
	st.EndGesture()
	q.w.report(err)
	q.w.focus(q.w.stops.add)
}
