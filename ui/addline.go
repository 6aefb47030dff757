package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// addEntry is the line that stops are added in. Text of several lines or columns
// that is pasted into it is a list of stops: the toolkit would join its lines.
type addEntry struct {
	widget.Entry
	list func(text string) // offers a list of stops
}

func newAddEntry(list func(string)) *addEntry {
	e := &addEntry{list: list}
	e.ExtendBaseWidget(e)
	return e
}

// TypedShortcut takes the pasting of a list.
func (e *addEntry) TypedShortcut(s fyne.Shortcut) {
	if p, ok := s.(*fyne.ShortcutPaste); ok {
		if text := p.Clipboard.Content(); strings.ContainsAny(strings.TrimSpace(text), "\n\r\t") {
			e.list(text)
			return
		}
	}
	e.Entry.TypedShortcut(s)
}

// addTyped adds the stops typed in the line on top: one angle, or several as
// [measure.ParseStops] has them.
func (l *stopList) addTyped() {
	stops, err := readStops(l.add.Text, l.both.Checked)
	if err == nil {
		err = l.w.addStops(stops...)
	}
	if err != nil {
		l.why.tell(err)
		return
	}
	l.add.SetText("")
	l.w.focus(l.add)
	l.askAbout(stops)
}

// askAbout asks about those of the stops just added that there is reason to.
func (l *stopList) askAbout(stops []plan.Stop) {
	for _, s := range stops {
		l.fence.about(s.Angle)
	}
}

// readStops reads one line of stops.
func readStops(text string, bothSides bool) ([]plan.Stop, error) {
	items, problems := measure.ParseStops(text)
	if len(problems) > 0 {
		return nil, &problems[0].SyntaxError
	}
	if len(items) == 0 {
		return nil, &measure.SyntaxError{Kind: measure.Angle, Text: text, Reason: measure.Empty}
	}
	return listedStops(items, bothSides), nil
}

// listedStops makes stops of a list.
func listedStops(items []measure.ListItem, bothSides bool) []plan.Stop {
	stops := make([]plan.Stop, len(items))
	for i, it := range items {
		stops[i] = plan.Stop{
			Angle: it.Angle.Degrees(), Label: it.Label, BothSides: bothSides && hasOtherSide(it.Angle),
		}
	}
	return stops
}
