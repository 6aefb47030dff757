package ui

import (
	"math/rand/v2"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// scribbles are texts that somebody may type anywhere.
var scribbles = []string{
	"0", "-36", "22,5", "180/7", "1e9", "0.0001", "100", "360", "-360", "31°37'", "1/2 in", "north", "", "-", ";", "10;20;30", "六", "Z",
}

// anything does something at random that a person may do in the window.
func (w *Window) anything(r *rand.Rand) {
	content := w.win.Content()
	if w.overlay() != nil {
		content = w.overlay()
	}
	spot := func() fyne.Position {
		size := w.plate.Size()
		return fyne.NewPos(r.Float32()*size.Width, r.Float32()*size.Height)
	}
	switch r.IntN(12) {
	case 0, 1:
		if fields := find[*valueEntry](content); len(fields) > 0 {
			w.focus(fields[r.IntN(len(fields))])
			w.typeText(scribbles[r.IntN(len(scribbles))])
		}
	case 2:
		w.press([]fyne.KeyName{fyne.KeyReturn, fyne.KeyEscape, fyne.KeyTab}[r.IntN(3)])
	case 3:
		w.typeInto(w.stops.add, scribbles[r.IntN(len(scribbles))])
		w.press(fyne.KeyReturn)
	case 4:
		if b := find[*widget.Button](content); len(b) > 0 {
			tap(b[r.IntN(len(b))])
		}
	case 5:
		if c := find[*widget.Check](content); len(c) > 0 {
			tap(c[r.IntN(len(c))])
		}
	case 6:
		if s := find[*widget.Select](content); len(s) > 0 {
			if one := s[r.IntN(len(s))]; len(one.Options) > 0 {
				one.SetSelectedIndex(r.IntN(len(one.Options)))
			}
		}
	case 7:
		w.click(spot(), []fyne.KeyModifier{0, fyne.KeyModifierShift}[r.IntN(2)])
	case 8:
		w.drag(primary, spot(), spot(), spot())
	case 9:
		w.focus(w.plate)
		keys := []fyne.KeyName{
			fyne.KeyUp, fyne.KeyDown, fyne.KeyLeft, fyne.KeyRight, fyne.KeyDelete, fyne.KeyPageUp, fyne.KeyPageDown, fyne.KeyHome,
		}
		w.press(keys[r.IntN(len(keys))])
	case 10:
		[]func(){w.undo, w.undo, w.redo}[r.IntN(3)]()
	case 11:
		items := w.win.MainMenu().Items
		menu := items[1+r.IntN(2)].Items // edit and view
		if i := menu[r.IntN(len(menu))]; i.Action != nil {
			i.Action()
		}
	}
}

// Whatever is done in whatever order, the plan stays one that can be saved, and
// undo leads back to where it began.
func TestAnythingInAnyOrder(t *testing.T) {
	const steps = 250
	for seed := range uint64(3) {
		p := withStops(0, 20, 36, 54)
		p.Features = []plan.Feature{plan.NewFeature(p)}
		w := opened(t, p)
		for i := range w.parts.sections {
			w.parts.accordion.Open(i)
		}
		r := rand.New(rand.NewPCG(seed, 1))
		for step := range steps {
			w.anything(r)
			if r.IntN(20) == 0 {
				w.plate.paint(200, 200)
			}
			require.NoError(t, plan.Validate(w.store.Plan()), "seed %d, step %d", seed, step)
			if w.overlay() != nil && r.IntN(3) == 0 {
				w.win.Canvas().Overlays().Remove(w.overlay())
			}
		}
		for w.undoName() != "" {
			w.store.Undo()
		}
		require.Equal(t, p, w.store.Plan(), "seed %d", seed)
	}
}
