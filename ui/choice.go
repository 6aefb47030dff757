package ui

import "fyne.io/fyne/v2/widget"

// choice is a choice of words that tells when it gains the focus.
type choice struct {
	widget.Select
	focused func()
}

func newChoice(options []string, focused func()) *choice {
	c := &choice{focused: focused}
	c.Options = options
	c.ExtendBaseWidget(c)
	return c
}

// FocusGained marks the choice and tells.
func (c *choice) FocusGained() {
	c.Select.FocusGained()
	c.focused()
}
