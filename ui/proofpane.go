package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent"
	"stopwright/detent/plate"
)

// proofPane takes readings of the stops, keeps their log, says what they tell,
// and shows how to mend a seat that is out.
type proofPane struct {
	w       *Window
	form    *readingForm
	log     *readingLog
	since   fieldRow
	said    *widget.Label
	picture *sketch
	trend   *trendView
	repairs *repairView
	object  *container.Scroll
	proving detent.Proving
	proved  bool
	of      *plate.Plate // that is shown
}

func newProofPane(w *Window) *proofPane {
	t := w.words.Text
	v := &proofPane{w: w, said: wrapped("")}
	v.form = newReadingForm(w)
	v.log = newReadingLog(w)
	v.since = w.newFieldRow(w.fields["readings_since"])
	v.picture = newSketch(w, fyne.NewSize(200, 220), v.paint)
	v.trend = newTrendView(w)
	v.repairs = newRepairView(w)
	print := widget.NewButtonWithIcon(t("setting.print"), theme.DocumentPrintIcon(), w.askProof)
	v.object = container.NewVScroll(container.NewVBox(
		heading(t("reading.head")), v.form.object,
		heading(t("proof.head.stops")), v.picture, v.said, container.NewHBox(print),
		heading(t("trend.head")), v.trend.object,
		heading(t("repair.heading")), v.repairs.object,
		// A list takes the wheel: last, it is in nobody's way.
		heading(t("reading.log")), v.since.object, v.log.object,
	))
	v.refresh()
	return v
}

// refresh shows the plan's readings and what they tell.
func (v *proofPane) refresh() {
	r := v.w.store.Report()
	if v.of == r.Plate { // the table was turned, or the look is another
		v.repaint()
		return
	}
	v.of = r.Plate
	v.proving, v.proved = r.Proving()
	v.form.refresh()
	v.log.refresh()
	v.since.refresh()
	lines := v.proving.Say(r, v.w.words)
	if len(lines) == 0 {
		lines = []string{v.w.words.Text("reading.none")}
	}
	v.said.SetText(strings.Join(lines, "\n"))
	if v.proved {
		v.picture.Show()
	} else {
		v.picture.Hide()
	}
	v.trend.refresh()
	v.repairs.refresh(v.proving)
	v.repaint()
}

// repaint paints the pictures anew.
func (v *proofPane) repaint() {
	v.picture.Refresh()
	v.trend.sketch.Refresh()
	for _, way := range v.repairs.ways {
		way.sketch.Refresh()
	}
}
