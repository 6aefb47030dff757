package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/ui/units"
)

// catchPick is the button of a stop's row that shows which catches drop at it,
// in short, and opens a list to choose others.
type catchPick struct {
	widget.Button
	r *stopRow
}

// catchPickWidth is as narrow as A+B goes, to leave the label some room.
const catchPickWidth = 40

func newCatchPick(r *stopRow) *catchPick {
	c := &catchPick{r: r}
	c.ExtendBaseWidget(c)
	c.Importance = widget.LowImportance
	c.OnTapped = c.open
	c.Hide()
	return c
}

// MinSize keeps the rows of the list in line.
func (c *catchPick) MinSize() fyne.Size {
	return fyne.NewSize(catchPickWidth, c.Button.MinSize().Height)
}

// FocusGained selects the stop, as the other fields of its row do.
func (c *catchPick) FocusGained() {
	c.Button.FocusGained()
	c.r.selectMe()
}

// refresh shows the stop's catches; nothing in a plan of one catch.
func (c *catchPick) refresh() {
	all := catchNames(c.r.l.w.store.Plan())
	if shown := len(all) > 1; shown != c.Visible() {
		c.Hidden = !shown
		c.r.box.Refresh() // the rest of the row has more room, or less
	}
	c.SetText(shortNames(stopCatches(c.r.stop(), all)))
}

// open lists the catches and sets of them to choose from.
func (c *catchPick) open() {
	w := c.r.l.w
	c.r.selectMe()
	all := catchNames(w.store.Plan())
	now := stopCatches(c.r.stop(), all)
	menu := fyne.NewMenu("")
	for _, names := range catchChoices(all, now) {
		item := fyne.NewMenuItem(joinNames(w.words, names), func() { c.choose(names) })
		item.Checked = slices.Equal(names, now)
		menu.Items = append(menu.Items, item)
	}
	list := widget.NewPopUpMenu(menu, w.win.Canvas())
	list.OnDismiss = func() {
		list.Hide()
		w.focus(c)
	}
	list.ShowAtRelativePosition(fyne.NewPos(0, c.Size().Height), c)
}

// choose makes catches those of the stop.
func (c *catchPick) choose(names []string) {
	w := c.r.l.w
	if slices.Equal(names, stopCatches(c.r.stop(), catchNames(w.store.Plan()))) {
		return
	}
	w.report(c.r.change("edit.stopcatches", func(s *plan.Stop) { s.Catches = slices.Clone(names) }))
}

// angleLayout makes the field of a stop's angle narrower where the row shows
// catches as well, and wider where there are minutes and seconds to show.
type angleLayout struct{ catch *catchPick }

// MinSize is what the field gets.
func (l angleLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	const wide, narrow, minutes = 78, 62, 112
	width := float32(wide)
	switch {
	case l.catch.r.l.w.units().Angles == units.Minutes:
		width = minutes
	case l.catch.Visible():
		width = narrow
	}
	return fyne.NewSize(width, objects[0].MinSize().Height)
}

// Layout gives the field all there is.
func (angleLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) { objects[0].Resize(size) }

func catchNames(p plan.Plan) []string {
	names := make([]string, len(p.Catches))
	for i, c := range p.Catches {
		names[i] = c.Name
	}
	return names
}

// stopCatches returns the names of the catches that drop at a stop, in the order
// of the plan's.
func stopCatches(s plan.Stop, all []string) []string {
	if len(s.Catches) == 0 {
		return all[:1]
	}
	var names []string
	for _, n := range all {
		if slices.Contains(s.Catches, n) {
			names = append(names, n)
		}
	}
	return names
}

// mostPairs is the most catches of which every two are offered: from there on
// the list would be too long to choose from.
const mostPairs = 8

// catchChoices returns the sets of catches to choose from: each alone, every two
// where there are not too many, all of them, and those the stop has now.
func catchChoices(all, now []string) [][]string {
	var sets [][]string
	add := func(names ...string) {
		if !slices.ContainsFunc(sets, func(s []string) bool { return slices.Equal(s, names) }) {
			sets = append(sets, names)
		}
	}
	for _, n := range all {
		add(n)
	}
	if len(all) <= mostPairs {
		for i, a := range all {
			for _, b := range all[i+1:] {
				add(a, b)
			}
		}
	}
	add(all...)
	add(now...)
	return sets
}

// joinNames writes names as "A, B and C".
func joinNames(c *words.Catalogue, names []string) string {
	last := len(names) - 1
	if last == 0 {
		return names[0]
	}
	return c.Text("stops.and", words.Args{"First": strings.Join(names[:last], ", "), "Last": names[last]})
}

// shortNames writes names as "A+B", or its beginning.
func shortNames(names []string) string {
	const most = 4 // characters that fit the button
	text := []rune(strings.Join(names, "+"))
	if len(text) > most {
		return string(text[:most-1]) + "…"
	}
	return string(text)
}
