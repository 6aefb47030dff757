package ui

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// askPath asks for the path of a file to write. The toolkit's own question
// would empty the file before it is written, so that a failure lost it.
func (w *Window) askPath(title, path string, then func(path string)) {
	entry := newSheetEntry(path)
	entry.sheet = w.newSheet(title, container.NewBorder(nil, nil, nil, w.folderButton(entry), entry),
		answer{text: w.words.Text("ask.cancel")},
		answer{
			text: w.words.Text("ask.save"), main: true,
			able: entry.filled,
			then: func() { then(filepath.Clean(strings.TrimSpace(entry.Text))) },
		},
	)
	w.showAt(entry)
}

// filled reports whether there is a path in the field.
func (e *sheetEntry) filled() bool { return strings.TrimSpace(e.Text) != "" }

// showAt shows a field's sheet, ready to type over the name that stands there.
func (w *Window) showAt(entry *sheetEntry) {
	entry.sheet.dialog.Show()
	w.focus(entry)
	entry.pickName()
}

// folderButton makes a button that puts the path in an entry into a folder
// chosen from those there are.
func (w *Window) folderButton(entry *sheetEntry) *widget.Button {
	return widget.NewButton(w.words.Text("ask.folder"), func() {
		w.askFolder(filepath.Dir(filepath.Clean(entry.Text)), func(folder string) {
			entry.SetText(filepath.Join(folder, filepath.Base(entry.Text)))
			w.focus(entry)
			entry.pickName()
		})
	})
}
