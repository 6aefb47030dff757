package ui

import (
	"errors"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"stopwright/detent/measure"
)

// pasteCommand is the menu's item that pastes a list of stops.
func (w *Window) pasteCommand() *fyne.MenuItem {
	return w.command(w.words.Text("menu.paste"), fyne.KeyV, ctrl|shift, func() { w.offerList(w.app.Clipboard().Content()) })
}

// offerList shows what is understood of a list of stops and what is not, and
// adds the former if that is wanted.
func (w *Window) offerList(text string) {
	if strings.TrimSpace(text) == "" {
		w.report(errors.New(w.words.Text("paste.empty")))
		return
	}
	items, faults := w.readList(text)
	view := newOfferView(w)
	both := newSheetCheck(w.words.Text("set.both"), func(on bool) { view.show(listedStops(items, on), faults) })
	// A list that has the other side itself is not doubled.
	doubled := slices.ContainsFunc(items, func(it measure.ListItem) bool { return it.Angle < 0 })
	both.Checked = w.store.View().BothSides && !doubled
	both.OnChanged(both.Checked)

	s := w.newSheet(w.words.Text("paste.title"), container.NewVBox(both, view.object),
		answer{text: w.words.Text("ask.cancel")},
		answer{text: w.words.Text("offer.add"), main: true, able: view.able, then: func() {
			view.add()
			w.stops.askAbout(view.offer.New)
		}},
	)
	both.sheet, view.list.sheet = s, s
	s.dialog.Show()
	w.focus(s.main)
}

// readList reads a list of stops that a plan may have, and what else it holds.
func (w *Window) readList(text string) ([]measure.ListItem, []listFault) {
	read, problems := measure.ParseStops(text)
	var faults []listFault
	for _, p := range problems {
		faults = append(faults, listFault{p.Line, p.Shown(), w.words.Text(reasonKeys[p.Reason])})
	}
	refused := w.refused(listedStops(read, false))
	var items []measure.ListItem
	for i, it := range read {
		if why, bad := refused[i]; bad {
			faults = append(faults, listFault{it.Line, measure.Trim(it.Angle.Degrees(), plainDecimals), why})
		} else {
			items = append(items, it)
		}
	}
	slices.SortStableFunc(faults, func(a, b listFault) int { return a.line - b.line })
	return items, faults
}
