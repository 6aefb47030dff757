package ui

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/export"
	"stopwright/ui/diskfile"
)

// fileSheet asks for a file or a folder that is there: a path to be typed, and
// below it what lies in its folder. The toolkit's own question speaks another
// language than the window may and cannot be left by Escape.
type fileSheet struct {
	w      *Window
	entry  *sheetEntry
	list   *keyList
	wrong  *problem
	suffix string // files shown; "": only folders are chosen
	folder string // listed
	items  []diskfile.Item
	then   func(path string)
}

// askFile asks for a file with an ending in a folder to begin with.
func (w *Window) askFile(title, folder, suffix string, then func(path string)) *fileSheet {
	s := &fileSheet{w: w, suffix: suffix, folder: folder, then: then}
	w.showFileSheet(title, "ask.open", s)
	return s
}

// askFolder asks for a folder.
func (w *Window) askFolder(folder string, then func(path string)) {
	w.showFileSheet(w.words.Text("ask.folder"), "ask.choose", &fileSheet{w: w, folder: folder, then: then})
}

func (w *Window) showFileSheet(title, do string, s *fileSheet) {
	s.entry = newSheetEntry("")
	s.wrong = newProblem(w)
	s.list = newFileList(s)
	up := widget.NewButtonWithIcon(w.words.Text("ask.up"), theme.MoveUpIcon(), s.up)
	content := container.NewBorder(
		container.NewVBox(container.NewBorder(nil, nil, nil, up, s.entry), s.wrong.object), nil, nil, nil, s.list,
	)
	s.entry.sheet = w.newSheet(title, content,
		answer{text: w.words.Text("ask.cancel")},
		answer{text: w.words.Text(do), main: true, able: s.enter, then: func() { s.then(s.path()) }},
	)
	s.list.other = s.entry.sheet.typedKey
	s.entry.down = func() { w.enter(s.list) }
	s.show(s.folder)
	const margin = 80 // px of layout round the sheet
	size := w.win.Canvas().Size()
	s.entry.sheet.dialog.Resize(fyne.NewSize(min(size.Width-margin, 680), min(size.Height-margin, 560)))
	w.showAt(s.entry)
}

// path returns what stands in the field, as a path from the folder shown.
func (s *fileSheet) path() string {
	path := strings.TrimSpace(s.entry.Text)
	if !filepath.IsAbs(path) {
		path = filepath.Join(s.folder, path)
	}
	return filepath.Clean(path)
}

// enter reports whether the answer is given. A folder where a file is asked for,
// or another folder than the one shown, is looked into first.
func (s *fileSheet) enter() bool {
	path := s.path()
	if !diskfile.IsFolder(path) {
		return s.suffix != ""
	}
	if s.suffix == "" && path == filepath.Clean(s.folder) {
		return true
	}
	s.show(path)
	return false
}

// up looks into the folder that holds the one shown.
func (s *fileSheet) up() {
	s.show(filepath.Dir(s.folder))
	s.w.focus(s.entry)
}

// show lists a folder; one that cannot be read is named, and the old one stays.
func (s *fileSheet) show(folder string) {
	items, err := diskfile.List(folder, s.suffix)
	if err != nil {
		s.wrong.tell(&words.Error{Saying: export.Reason(err)})
		return
	}
	s.wrong.tell(nil)
	s.folder, s.items = filepath.Clean(folder), items
	text := s.folder
	if !strings.HasSuffix(text, string(filepath.Separator)) {
		text += string(filepath.Separator)
	}
	s.entry.SetText(text)
	s.entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEnd})
	s.list.renew()
}

// pick puts an item of the list into the field.
func (s *fileSheet) pick(i int) {
	s.entry.SetText(filepath.Join(s.folder, s.items[i].Name))
	s.entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEnd})
}

// newFileList lists what lies in a folder. Up and Down put an item into the field
// above; a click does too, and looks into a folder.
func newFileList(s *fileSheet) *keyList {
	create := func() fyne.CanvasObject {
		name := widget.NewLabel("")
		name.Truncation = fyne.TextTruncateEllipsis
		return container.NewBorder(nil, nil, widget.NewIcon(theme.FolderIcon()), nil, name)
	}
	update := func(i widget.ListItemID, o fyne.CanvasObject) {
		row := o.(*fyne.Container).Objects
		row[0].(*widget.Label).SetText(s.items[i].Name)
		icon := theme.FileIcon()
		if s.items[i].Folder {
			icon = theme.FolderIcon()
		}
		row[1].(*widget.Icon).SetResource(icon)
	}
	return newKeyList(func() int { return len(s.items) }, create, update, func(i int) {
		s.pick(i)
		if s.items[i].Folder && !s.list.byKeys {
			s.enter()
		}
	})
}
