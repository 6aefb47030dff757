package ui

import (
	"os"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export"
)

// planSuffix ends the names of plan files.
const planSuffix = ".stopwright"

// showTitle names the plan and its file in the window's title.
func (w *Window) showTitle() {
	file := w.words.Text("file.new")
	if path := w.store.Path(); path != "" {
		file = filepath.Base(path)
	}
	key := "app.title"
	if w.store.Unsaved() {
		key = "app.title.unsaved"
	}
	w.win.SetTitle(w.words.Text(key, words.Args{"File": file, "App": w.words.Text("app.name")}))
}

// unlessUnsaved does something that would lose the plan, first asking what to
// do with changes that are not saved.
func (w *Window) unlessUnsaved(then func()) {
	if !w.store.Unsaved() {
		then()
		return
	}
	w.ask(w.words.Text("ask.unsaved"), w.words.Text("ask.unsaved.text"),
		answer{text: w.words.Text("ask.cancel")},
		answer{text: w.words.Text("ask.discard"), then: then},
		answer{text: w.words.Text("ask.save"), then: func() { w.save(then) }, main: true},
	)
}

// New begins a plan of the default sizes, without stops.
func (w *Window) New() {
	w.unlessUnsaved(func() {
		w.store.Load(plan.Default(), "")
		w.focus(w.stops.add)
	})
}

// OpenFile opens a plan file, once changes are saved or given up.
func (w *Window) OpenFile(path string) {
	w.unlessUnsaved(func() {
		p, err := export.ReadPlan(path)
		if err != nil {
			w.tellError(err)
			return
		}
		w.store.Load(p, path)
	})
}

// open asks for a plan file.
func (w *Window) open() {
	d := dialog.NewFileOpen(func(r fyne.URIReadCloser, err error) {
		if err != nil {
			w.tellError(err)
			return
		}
		if r == nil {
			return
		}
		path := r.URI().Path()
		_ = r.Close() // only its name was wanted
		w.OpenFile(path)
	}, w.win)
	d.SetFilter(storage.NewExtensionFileFilter([]string{planSuffix}))
	if here, err := storage.ListerForURI(storage.NewFileURI(w.folder())); err == nil {
		d.SetLocation(here)
	}
	d.Resize(w.win.Canvas().Size())
	d.Show()
}

// folder returns where files are looked for: beside the plan, else at home.
func (w *Window) folder() string {
	if path := w.store.Path(); path != "" {
		return filepath.Dir(path)
	}
	if home, err := os.UserHomeDir(); err == nil {
		return home
	}
	return "."
}

// save writes the plan to its file, asking for one if it has none.
func (w *Window) save(then func()) {
	if path := w.store.Path(); path != "" {
		w.saveTo(path, then)
		return
	}
	w.saveAs(then)
}

// saveAs asks where to save the plan.
func (w *Window) saveAs(then func()) {
	w.askPath(w.words.Text("save.title"), filepath.Join(w.folder(), w.fileName()+planSuffix), func(path string) {
		if filepath.Ext(path) != planSuffix {
			path += planSuffix
		}
		if path == w.store.Path() {
			w.saveTo(path, then)
			return
		}
		w.unlessThere([]string{path}, func() { w.saveTo(path, then) })
	})
}

func (w *Window) saveTo(path string, then func()) {
	if err := export.SavePlan(path, w.store.Plan()); err != nil {
		w.tellError(err)
		return
	}
	w.store.Saved(path)
	w.say(w.words.Text("save.done", words.Args{"File": path}))
	if then != nil {
		then()
	}
}

// unlessThere goes on at once where none of the files exists, and else asks
// whether to replace them.
func (w *Window) unlessThere(paths []string, then func()) {
	var there []string
	for _, p := range paths {
		if _, err := os.Stat(p); err == nil {
			there = append(there, filepath.Base(p))
		}
	}
	if len(there) == 0 {
		then()
		return
	}
	w.ask(w.words.Text("ask.replace"), w.words.Text("ask.replace.text", words.Args{"Files": strings.Join(there, ", ")}),
		answer{text: w.words.Text("ask.cancel")},
		answer{text: w.words.Text("ask.replace.do"), then: then, main: true},
	)
}

// fileName returns what to call the plan's files: the name of its file, else
// its title in letters every system allows.
func (w *Window) fileName() string {
	if path := w.store.Path(); path != "" {
		return strings.TrimSuffix(filepath.Base(path), filepath.Ext(path))
	}
	name := strings.Trim(strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= '0' && r <= '9':
			return r
		case r >= 'A' && r <= 'Z':
			return r + 'a' - 'A'
		}
		return '-'
	}, w.store.Plan().Title), "-")
	for strings.Contains(name, "--") {
		name = strings.ReplaceAll(name, "--", "-")
	}
	if name == "" {
		return w.words.Text("file.name")
	}
	return name
}

// Quit ends the program, once changes are saved or given up.
func (w *Window) Quit() { w.unlessUnsaved(w.app.Quit) }

// Opened says that the plan the window began with is that of a file.
func (w *Window) Opened(path string) { w.store.Load(w.store.Plan(), path) }
