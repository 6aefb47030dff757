package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Of a sheet's parts that are no fields and no buttons, these close it by Escape
// and leave Enter to its main answer.

// sheetSelect is a list of choices of a sheet.
type sheetSelect struct {
	widget.Select
	sheet *sheet
}

func newSheetSelect(options []string, chosen func(string)) *sheetSelect {
	s := &sheetSelect{}
	s.ExtendBaseWidget(s)
	s.Options, s.OnChanged = options, chosen
	return s
}

// TypedKey gives the sheet's answers by Enter and Escape.
func (s *sheetSelect) TypedKey(k *fyne.KeyEvent) {
	if !s.sheet.typedKey(k) {
		s.Select.TypedKey(k)
	}
}

// sheetCheck is a box to tick of a sheet.
type sheetCheck struct {
	widget.Check
	sheet *sheet
}

func newSheetCheck(text string, changed func(bool)) *sheetCheck {
	c := &sheetCheck{}
	c.ExtendBaseWidget(c)
	c.Text, c.OnChanged = text, changed
	return c
}

// TypedKey gives the sheet's answers by Enter and Escape.
func (c *sheetCheck) TypedKey(k *fyne.KeyEvent) {
	if !c.sheet.typedKey(k) {
		c.Check.TypedKey(k)
	}
}

// sheetList is a list of a sheet that is only looked at.
type sheetList struct {
	widget.List
	sheet *sheet
}

func newSheetList(length func() int, create func() fyne.CanvasObject, update func(widget.ListItemID, fyne.CanvasObject)) *sheetList {
	l := &sheetList{}
	l.Length, l.CreateItem, l.UpdateItem = length, create, update
	l.ExtendBaseWidget(l)
	return l
}

// TypedKey gives the sheet's answers by Enter and Escape.
func (l *sheetList) TypedKey(k *fyne.KeyEvent) {
	if !l.sheet.typedKey(k) {
		l.List.TypedKey(k)
	}
}
