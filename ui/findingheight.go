package ui

import "fyne.io/fyne/v2"

// mostFitted is how many findings are shown in full, each in as many lines as it
// needs. Of more, which only a plan that is wrong all round has, each has one
// line: to measure thousands at every edit would make the window slow.
const mostFitted = 30

// fits reports whether the rows are as high as their sentences.
func (l *findingList) fits() bool { return len(l.order) <= mostFitted }

// fit makes the rows as high as their sentences are in a list of a width (px of
// layout).
func (l *findingList) fit(width float32) {
	if width <= 0 { // not laid out yet
		return
	}
	for at := range min(len(l.order), mostFitted) {
		l.list.SetItemHeight(at, l.gauge.heightOf(l.order[at], width))
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
