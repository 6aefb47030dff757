package ui

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
)

// answer is a button of a sheet.
type answer struct {
	text string
	then func()      // nil: only close
	main bool        // what Enter does
	able func() bool // whether it can be given yet; nil: always
}

// sheet is a question laid over the window. Enter gives its main answer and
// Escape its first, from the buttons and from a [sheetEntry].
type sheet struct {
	dialog *dialog.CustomDialog
	main   *sheetButton
	enter  func()
	escape func()
}

// newSheet makes a sheet with its answers below the content.
func (w *Window) newSheet(title string, content fyne.CanvasObject, answers ...answer) *sheet {
	s := &sheet{}
	row := container.NewHBox(layout.NewSpacer())
	for i, a := range answers {
		give := func() {
			if a.able != nil && !a.able() {
				return
			}
			s.dialog.Hide()
			if a.then != nil {
				a.then()
			}
		}
		b := newSheetButton(s, a.text, give)
		if i == 0 {
			s.escape = give
		}
		if a.main {
			b.Importance = widget.HighImportance
			s.enter, s.main = give, b
		}
		row.Add(b)
	}
	s.dialog = dialog.NewCustomWithoutButtons(title, container.NewBorder(nil, row, nil, nil, content), w.win)
	s.dialog.Resize(fyne.NewSize(520, 0))
	w.sheets = append(w.sheets, s)
	w.win.Canvas().SetOnTypedKey(w.keyAside)
	s.dialog.SetOnClosed(func() {
		w.sheets = slices.DeleteFunc(w.sheets, func(open *sheet) bool { return open == s })
	})
	return s
}

// closeQuestions puts aside what lies over the window, the topmost first: sheets
// are given the answer of Escape, which may bring up one more question but loses
// nothing, and lists go.
func (w *Window) closeQuestions() {
	for range len(w.sheets) {
		if n := len(w.sheets); n > 0 {
			w.sheets[n-1].escape()
		}
	}
	overlays := w.win.Canvas().Overlays()
	for overlays.Top() != nil {
		overlays.Remove(overlays.Top())
	}
}

// keyAside takes a key that nothing has the focus for: a click beside a sheet
// takes the keys from all of it, and its answers are still given by them.
func (w *Window) keyAside(k *fyne.KeyEvent) {
	if n := len(w.sheets); n > 0 && w.sheets[n-1].main != nil {
		w.sheets[n-1].typedKey(k)
	}
}

// ask puts a question over the window. Every answer closes it.
func (w *Window) ask(title, text string, answers ...answer) {
	label := widget.NewLabel(text)
	label.Wrapping = fyne.TextWrapWord
	s := w.newSheet(title, label, answers...)
	s.dialog.Show()
	w.focus(s.main)
}

// tellError shows that something could not be done.
func (w *Window) tellError(err error) {
	w.ask(w.words.Text("ask.failed"), w.inWords(err), answer{text: w.words.Text("ask.ok"), main: true})
}

// typedKey gives the answer that belongs to a key, and reports whether one does.
func (s *sheet) typedKey(k *fyne.KeyEvent) bool {
	switch k.Name {
	case fyne.KeyEscape:
		s.escape()
	case fyne.KeyReturn, fyne.KeyEnter:
		s.enter()
	default:
		return false
	}
	return true
}

// sheetEntry is a field of a sheet.
type sheetEntry struct {
	widget.Entry
	sheet *sheet
	down  func() // what Down does; nil: nothing
}

func newSheetEntry(text string) *sheetEntry {
	e := &sheetEntry{}
	e.ExtendBaseWidget(e)
	e.SetText(text)
	return e
}

// TypedKey gives the sheet's answers by Enter and Escape.
func (e *sheetEntry) TypedKey(k *fyne.KeyEvent) {
	switch {
	case e.sheet.typedKey(k):
	case k.Name == fyne.KeyDown && e.down != nil:
		e.down()
	default:
		e.Entry.TypedKey(k)
	}
}

// sheetButton is a button of a sheet.
type sheetButton struct {
	widget.Button
	sheet *sheet
}

func newSheetButton(s *sheet, text string, tapped func()) *sheetButton {
	b := &sheetButton{sheet: s}
	b.ExtendBaseWidget(b)
	b.Text, b.OnTapped = text, tapped
	return b
}

// TypedKey takes Enter as a press of this button, whichever is the main one.
func (b *sheetButton) TypedKey(k *fyne.KeyEvent) {
	if k.Name == fyne.KeyEscape {
		b.sheet.escape()
		return
	}
	if k.Name == fyne.KeyReturn || k.Name == fyne.KeyEnter {
		b.OnTapped()
		return
	}
	b.Button.TypedKey(k)
}
