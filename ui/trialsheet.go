package ui

import (
	"errors"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
	"stopwright/ui/diskfile"
)

// halfSize is the size a trial is usually made at.
const halfSize = "0.5"

// trialCommand is the menu's item that makes a trial at another size.
func (w *Window) trialCommand() *fyne.MenuItem {
	return w.command(w.words.Text("menu.truth.trial"), "", 0, w.askTrial)
}

// askTrial asks at what size, and opens the trial as a new plan.
func (w *Window) askTrial() {
	t := w.words.Text
	how := widget.NewLabel(t("trial.how"))
	how.Wrapping = fyne.TextWrapWord
	scale, why := newSheetEntry(w.decimal(halfSize)), newProblem(w)
	var trial plan.Plan
	update := func() (err error) {
		trial, err = w.trialAt(scale.Text)
		why.tell(err)
		return err
	}
	scale.OnChanged = func(string) { _ = update() }
	row := container.NewBorder(nil, nil, widget.NewLabel(t("trial.scale")), nil, scale)
	sh := w.newSheet(t("trial.title"), container.NewVBox(how, row, why.object),
		answer{text: t("ask.cancel")},
		answer{text: t("trial.make"), main: true, able: func() bool { return update() == nil }, then: func() {
			w.unlessUnsaved(func() {
				w.take(trial, diskfile.File{})
				w.store.MarkUnsaved() // no file holds it
				w.say(t("trial.said", args{"Scale": w.words.Decimal(drawing.ScaleText(trial.Scale))}))
			})
		}},
	)
	scale.sheet = sh
	sh.dialog.Show()
	w.focus(scale)
}

// trialAt makes a trial of the plan at a size as it is typed.
func (w *Window) trialAt(text string) (plan.Plan, error) {
	factor, err := measure.ParseNumber(text)
	if err != nil || !plan.TrialSize(factor) {
		return plan.Plan{}, errors.New(w.words.Text("trial.bad"))
	}
	return plan.Trial(w.store.Plan(), factor)
}
