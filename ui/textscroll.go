package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// textScroll is a long text on a sheet: keys scroll it, and Enter and Escape
// answer the sheet.
type textScroll struct {
	container.Scroll
	sheet *sheet
}

func newTextScroll(content fyne.CanvasObject, height float32) *textScroll {
	s := &textScroll{}
	s.ExtendBaseWidget(s)
	s.Direction, s.Content = container.ScrollVerticalOnly, content
	s.SetMinSize(fyne.NewSize(0, height))
	return s
}

// FocusGained does nothing: there is no place in the text to mark.
func (*textScroll) FocusGained() {}

// FocusLost does nothing.
func (*textScroll) FocusLost() {}

// TypedRune does nothing.
func (*textScroll) TypedRune(rune) {}

// TypedKey scrolls by a line, by a page, or to either end.
func (s *textScroll) TypedKey(k *fyne.KeyEvent) {
	const line = 32 // px of layout
	page := s.Size().Height - line
	switch k.Name {
	case fyne.KeyUp:
		s.scrollBy(-line)
	case fyne.KeyDown:
		s.scrollBy(line)
	case fyne.KeyPageUp:
		s.scrollBy(-page)
	case fyne.KeyPageDown, fyne.KeySpace:
		s.scrollBy(page)
	case fyne.KeyHome:
		s.ScrollToTop()
	case fyne.KeyEnd:
		s.ScrollToBottom()
	default:
		s.sheet.typedKey(k)
	}
}

func (s *textScroll) scrollBy(dy float32) {
	s.Scrolled(&fyne.ScrollEvent{Scrolled: fyne.NewDelta(0, -dy)}) // stops at either end
}
