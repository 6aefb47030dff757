package ui

import (
	"os"
	"path/filepath"
	"strings"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// pickName selects the name of the file in a path, ready to be typed over: not
// its folder and not its ending. The cursor comes to the end of the name, and of
// the path where that names a folder only.
func (e *sheetEntry) pickName() {
	from, to := nameIn(e.Text)
	e.CursorRow, e.CursorColumn = 0, from
	shift := &fyne.KeyEvent{Name: desktop.KeyShiftLeft}
	e.KeyDown(shift)
	for range to - from {
		e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight}) // the toolkit selects by its keys only
	}
	e.KeyUp(shift)
}

// nameIn returns where the name of the file in a path begins and ends, in
// characters.
func nameIn(path string) (from, to int) {
	at := strings.LastIndexFunc(path, func(r rune) bool { return r == '/' || r == os.PathSeparator }) + 1
	name := path[at:]
	ending := filepath.Ext(name)
	if strings.ContainsFunc(strings.TrimPrefix(ending, "."), func(r rune) bool { return !unicode.IsLetter(r) }) {
		ending = "" // 2 of table-1.2
	}
	from = len([]rune(path[:at]))
	return from, from + len([]rune(strings.TrimSuffix(name, ending)))
}

// TypedShortcut pastes a whole path over all that stands in the field: behind the
// folder proposed it would name nothing.
func (e *sheetEntry) TypedShortcut(s fyne.Shortcut) {
	if paste, ok := s.(*fyne.ShortcutPaste); ok && filepath.IsAbs(strings.TrimSpace(paste.Clipboard.Content())) {
		e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	e.Entry.TypedShortcut(s)
}
