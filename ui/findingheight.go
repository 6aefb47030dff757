package ui

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// mostFitted is how many findings are shown in full, each in as many lines as it
// needs. Of more, which only a plan that is wrong all round has, each has one
// line: to measure thousands at every edit would make the window slow. The
// selected one alone unfolds.
const mostFitted = 30

// fits reports whether the rows are as high as their sentences.
func (l *findingList) fits() bool { return len(l.order) <= mostFitted }

// whole reports whether the row of one of the report's findings shows all it says.
func (l *findingList) whole(i int) bool { return l.fits() || i == l.w.store.Selection().Finding }

// selected returns the row of the selected finding, or -1.
func (l *findingList) selected() int { return slices.Index(l.order, l.w.store.Selection().Finding) }

// fit makes the rows as high as their sentences are in a list of a width (px of
// layout).
func (l *findingList) fit(width float32) {
	if width <= 0 { // not laid out yet
		return
	}
	if l.fits() {
		for at := range l.order {
			l.list.SetItemHeight(at, l.gauge.heightOf(l.order[at], width))
		}
		l.tall, l.open = max(l.tall, len(l.order), l.open+1), -1
		return
	}
	for at := range l.tall { // of a shorter list
		l.list.SetItemHeight(at, l.line())
	}
	l.tall = 0
	l.unfold(l.selected())
}

// line returns how high a row of one line is.
func (l *findingList) line() float32 { return l.list.CreateItem().MinSize().Height }

// unfold makes one row of a long list as high as its sentence, and the one before
// it one line high again; -1 unfolds none.
func (l *findingList) unfold(at int) {
	width := l.list.Size().Width
	if l.fits() || width <= 0 {
		return
	}
	if l.open >= 0 && l.open != at {
		l.list.SetItemHeight(l.open, l.line())
		l.list.RefreshItem(l.open)
	}
	if at < 0 {
		l.open = at
		return
	}
	high := l.gauge.heightOf(l.order[at], width)
	l.list.SetItemHeight(at, high)
	l.list.RefreshItem(at)
	if l.open != at {
		l.open = at
		l.bring(at, high)
	}
}

// bring scrolls the open row of a long list into sight with all its lines: the
// toolkit's list itself brings the first one only. The rows above are one line
// high.
func (l *findingList) bring(at int, high float32) {
	l.list.ScrollTo(at)
	top := float32(at) * (l.line() + l.list.Theme().Size(theme.SizeNamePadding))
	if below := top + high - l.list.Size().Height; below > l.list.GetScrollOffset() {
		l.list.ScrollToOffset(min(below, top))
	}
}

// heightOf returns how high the row of one of the report's findings is at a width.
func (r *findingRow) heightOf(i int, width float32) float32 {
	r.show(i)
	r.box.Resize(fyne.NewSize(width, r.box.MinSize().Height)) // a wrapped text wants its width first
	return r.box.MinSize().Height
}

// rowsLayout lays its objects over each other, and fits the rows of the list to
// the width.
type rowsLayout struct{ l *findingList }

// MinSize is what the largest object needs.
func (rowsLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	var least fyne.Size
	for _, o := range objects {
		least = least.Max(o.MinSize())
	}
	return least
}

// Layout fills the place with each object.
func (f rowsLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	f.l.fit(size.Width)
	for _, o := range objects {
		o.Resize(size)
	}
}
