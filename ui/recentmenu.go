package ui

import (
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"

	"fyne.io/fyne/v2"

	"stopwright/assets/words"
	"stopwright/ui/recent"
)

// maxFolder is how much of a folder's path a menu shows, in letters.
const maxFolder = 48

// recentMenu lists the recent files. Those that are not there are marked.
func (w *Window) recentMenu() *fyne.MenuItem {
	t := w.words.Text
	m := fyne.NewMenuItem(t("menu.recent"), nil)
	files := w.filing.recent.Files()
	m.Disabled = len(files) == 0
	m.ChildMenu = fyne.NewMenu("")
	for _, file := range files {
		key := "recent.file"
		if w.filing.missing[file] {
			key = "recent.missing"
		}
		text := t(key, words.Args{"File": filepath.Base(file), "Folder": shortFolder(filepath.Dir(file))})
		m.ChildMenu.Items = append(m.ChildMenu.Items, w.command(text, "", 0, func() { w.openRecent(file) }))
	}
	m.ChildMenu.Items = append(m.ChildMenu.Items,
		fyne.NewMenuItemSeparator(),
		w.command(t("recent.clear"), "", 0, func() { w.listRecent((*recent.List).Clear) }),
	)
	return m
}

// shortFolder leaves out the beginning of a long path.
func shortFolder(path string) string {
	letters := []rune(path)
	if len(letters) <= maxFolder {
		return path
	}
	return "…" + string(letters[len(letters)-maxFolder+1:])
}

// openRecent opens a file of the list, or offers to take it off if it is not
// there: the disk it lies on may only be unplugged.
func (w *Window) openRecent(file string) {
	if !absent(file) {
		w.OpenFile(file)
		return
	}
	w.lookAtRecent()
	t := w.words.Text
	w.ask(t("recent.gone"), t("recent.gone.text", words.Args{"File": file}),
		answer{text: t("recent.keep"), main: true},
		answer{text: t("recent.remove"), then: func() {
			w.listRecent(func(l *recent.List) error { return l.Remove(file) })
		}},
	)
}

func absent(file string) bool {
	_, err := os.Stat(file)
	return errors.Is(err, fs.ErrNotExist)
}

// remember puts a file at the head of the list; "": there is none.
func (w *Window) remember(file string) {
	if file != "" {
		w.listRecent(func(l *recent.List) error { return l.Add(file) })
	}
}

// listRecent changes the list and shows it. That it cannot be kept for the next
// run is not worth a word: it serves while the program runs.
func (w *Window) listRecent(change func(*recent.List) error) {
	_ = change(w.filing.recent)
	w.showRecent()
}

// showRecent puts the list into the menu.
func (w *Window) showRecent() {
	w.win.SetMainMenu(w.mainMenu())
	w.lookAtRecent()
}

// lookAtRecent finds out which files of the list are not there. A disk far away
// may take its time to say.
func (w *Window) lookAtRecent() {
	files := slices.Clone(w.filing.recent.Files())
	missing := map[string]bool{}
	w.filing.behind(func() {
		for _, file := range files {
			if absent(file) {
				missing[file] = true
			}
		}
	}, func() {
		if !maps.Equal(missing, w.filing.missing) {
			w.filing.missing = missing
			w.win.SetMainMenu(w.mainMenu())
		}
	})
}
