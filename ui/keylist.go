package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// keyList is a list in which Up and Down select, so that what belongs to an item
// is shown while the keys go through it.
type keyList struct {
	widget.List
	at     int                       // selected; -1: nothing
	byKeys bool                      // it is being selected by a key, not by a click
	other  func(*fyne.KeyEvent) bool // takes other keys; nil: none
}

func newKeyList(length func() int, create func() fyne.CanvasObject, update func(widget.ListItemID, fyne.CanvasObject), selected func(int)) *keyList {
	l := &keyList{at: -1}
	l.Length, l.CreateItem, l.UpdateItem = length, create, update
	l.OnSelected = func(i widget.ListItemID) {
		l.at = i
		selected(i)
	}
	l.OnUnselected = func(widget.ListItemID) { l.at = -1 }
	l.ExtendBaseWidget(l)
	return l
}

// renew shows other items from their beginning, none selected. The toolkit cannot
// scroll a list that was never laid out.
func (l *keyList) renew() {
	l.UnselectAll()
	if l.Size().Height > 0 {
		l.ScrollToTop()
	}
	l.Refresh()
}

// enter gives the keys to a list, at its first item.
func (w *Window) enter(l *keyList) {
	w.focus(l)
	if l.at < 0 {
		l.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
	}
}

// TypedKey goes through the list.
func (l *keyList) TypedKey(k *fyne.KeyEvent) {
	var to int
	switch k.Name {
	case fyne.KeyUp:
		to = max(l.at-1, 0)
	case fyne.KeyDown:
		to = l.at + 1
	default:
		if l.other == nil || !l.other(k) {
			l.List.TypedKey(k)
		}
		return
	}
	if to != l.at && to < l.Length() {
		l.byKeys = true
		l.Select(to)
		l.byKeys = false
	}
}
