package ui

import (
	"os"
	"path/filepath"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
	"stopwright/ui/diskfile"
)

// planSuffix ends the names of plan files.
const planSuffix = ".stopwright"

// showTitle names the plan and its file in the window's title.
func (w *Window) showTitle() {
	file := w.words.Text("file.new")
	if path := w.store.Path(); path != "" {
		file = filepath.Base(path)
	}
	if p := w.store.Plan(); p.IsTrial() {
		file = w.words.Text("trial.in", words.Args{"File": file, "Scale": w.words.Decimal(drawing.ScaleText(p.Scale))})
	}
	key := "app.title"
	readOnly, unsaved := w.filing.file.ReadOnly, w.store.Unsaved()
	switch {
	case readOnly && unsaved:
		key = "app.title.readonly.unsaved"
	case readOnly:
		key = "app.title.readonly"
	case unsaved:
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
		w.take(plan.NewPlan(), diskfile.File{})
		w.focus(w.stops.add)
	})
}

// OpenFile opens a plan file, once changes are saved or given up.
func (w *Window) OpenFile(path string) { w.openThen(path, func() {}) }

// openThen opens a plan file and, if that can be done, goes on. Of one that
// cannot be read that is told before anything is asked.
func (w *Window) openThen(path string, then func()) {
	if _, _, err := diskfile.Read(path); err != nil {
		w.tellError(err)
		return
	}
	w.unlessUnsaved(func() {
		p, f, err := diskfile.Read(path) // as it is now: the plan may have been saved to it
		if err != nil {
			w.tellError(err)
			return
		}
		w.take(p, f)
		then()
	})
}

// open asks for a plan file.
func (w *Window) open() {
	w.askFile(w.words.Text("open.title"), w.folder(), planSuffix, w.OpenFile)
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

// save writes the plan to its file, asking for one if it has none or one that
// is not to be written.
func (w *Window) save(then func()) {
	path := w.store.Path()
	if path != "" {
		w.filing.file.ReadOnly = diskfile.ReadOnly(path) // it may be otherwise now
		w.showTitle()
	}
	if path == "" || w.filing.file.ReadOnly {
		w.saveAs(then)
		return
	}
	w.unlessChanged(func() { w.saveTo(path, then) })
}

// saveAs asks where to save the plan.
func (w *Window) saveAs(then func()) {
	name, title := w.fileName(), "save.title"
	if w.filing.file.ReadOnly {
		name, title = w.words.Text("file.copy", words.Args{"Name": name}), "save.title.readonly"
	}
	w.askPath(w.words.Text(title), filepath.Join(w.folder(), name+planSuffix), func(path string) {
		if filepath.Ext(path) != planSuffix {
			path += planSuffix
		}
		switch {
		case diskfile.ReadOnly(path):
			w.cannotSave(w.words.Text("save.readonly", words.Args{"File": path}), then)
			return
		case path == w.store.Path():
			w.unlessChanged(func() { w.saveTo(path, then) })
			return
		}
		w.unlessThere([]string{path}, func() { w.saveTo(path, then) })
	})
}

func (w *Window) saveTo(path string, then func()) {
	f, err := diskfile.Save(path, w.store.Plan())
	if err != nil {
		w.cannotSave(w.inWords(err), then)
		return
	}
	w.filing.file, w.filing.gone = f, false
	w.store.Saved(f.Path)
	w.remember(f.Path)
	w.say(w.words.Text("save.done", words.Args{"File": f.Path}))
	if then != nil {
		then()
	}
}

// cannotSave says why the plan could not be saved, and offers another place.
func (w *Window) cannotSave(reason string, then func()) {
	w.ask(w.words.Text("ask.failed"), reason,
		answer{text: w.words.Text("ask.cancel")},
		answer{text: w.words.Text("menu.saveas"), then: func() { w.saveAs(then) }, main: true},
	)
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

// Quit ends the program, once changes are saved or given up. A question that is
// open, as when the window is closed over it, is put aside first.
func (w *Window) Quit() {
	w.closeQuestions()
	w.unlessUnsaved(func() {
		w.filing.keeper.Close()
		w.app.Quit()
	})
}

// Opened says that the plan the window began with is that of a file.
func (w *Window) Opened(f diskfile.File) { w.take(w.store.Plan(), f) }
