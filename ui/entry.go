package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// valueEntry is a field that shows one value of the plan and hands back what is
// typed: with Enter or on leaving it. Escape brings back what was there. While
// text makes no sense the field says so and the plan keeps its last good value.
type valueEntry struct {
	widget.Entry

	// value returns the plan's value as text.
	value func() string
	// read makes sense of text and returns what applies it to the plan.
	read func(text string) (apply func() error, err error)
	// tell shows why text cannot be used; nil: all is well.
	tell func(error)
	// focused, if set, is called when the field gains the focus.
	focused func()
	// remarks, if set, tell more about what stands in the field.
	remarks *remarks
	// sizes, if set, shows standard sizes to choose from.
	sizes func()

	shown      string // the plan's value as last shown
	committing bool
	active     bool // it has the keys
	clicked    bool // the press of the mouse that gave it them
}

func newValueEntry(value func() string, read func(string) (func() error, error), tell func(error)) *valueEntry {
	e := &valueEntry{value: value, read: read, tell: tell}
	e.ExtendBaseWidget(e)
	e.shown = value()
	e.Text = e.shown
	e.OnChanged = func(text string) {
		if text == e.shown {
			e.tell(nil)
			e.remarks.clear()
			return
		}
		_, err := e.read(text)
		e.tell(err)
		e.remarks.typed(text, err)
	}
	e.OnSubmitted = func(string) { e.commit() }
	return e
}

// refresh shows the plan's value, unless somebody is typing another. What is
// typed was meant for the value it stands over: where that has become another,
// as when a stop takes the place of one removed, it is given up.
func (e *valueEntry) refresh() {
	if typing := e.Text != e.shown; typing && e.value() == e.shown {
		return
	}
	e.revert()
}

// revert shows the plan's value whatever stands in the field.
func (e *valueEntry) revert() {
	e.shown = e.value()
	if e.Text != e.shown {
		e.SetText(e.shown)
	}
	e.tell(nil)
	e.remarks.clear()
}

// commit hands the text back. What is refused stays in the field, explained.
func (e *valueEntry) commit() {
	if e.Text == e.shown || e.committing {
		return
	}
	e.committing = true
	defer func() { e.committing = false }()
	apply, err := e.read(e.Text)
	if err == nil {
		err = apply()
	}
	if err != nil {
		e.tell(err)
		return
	}
	e.revert()
}

// offer gives the field standard sizes to choose from: a button at its end, and
// Down. A nil show offers none.
func (e *valueEntry) offer(show func(under *valueEntry)) {
	if show == nil {
		return
	}
	e.sizes = func() { show(e) }
	e.ActionItem = newSizesButton(e.sizes)
}

// FocusGained selects the whole value, ready to be typed over.
func (e *valueEntry) FocusGained() {
	e.Entry.FocusGained()
	e.active = true
	e.TypedShortcut(&fyne.ShortcutSelectAll{})
	if e.focused != nil {
		e.focused()
	}
	e.remarks.entered()
}

// FocusLost hands back what was typed.
func (e *valueEntry) FocusLost() {
	e.Entry.FocusLost()
	e.active = false
	e.commit()
	e.remarks.clear()
}

// TypedKey takes Escape to bring back the plan's value, and Down to show
// standard sizes where there are any.
func (e *valueEntry) TypedKey(k *fyne.KeyEvent) {
	switch {
	case k.Name == fyne.KeyEscape:
		e.revert()
		return
	case k.Name == fyne.KeyDown && e.sizes != nil:
		e.sizes()
		return
	}
	e.Entry.TypedKey(k)
}
