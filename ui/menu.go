package ui

import (
	"bytes"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/plans"
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/ui/diskfile"
	"stopwright/ui/store"
)

// mainMenu makes the menus. Every action of the window is here, with its keys:
// a focused field keeps keys of its own from all but the main menu.
func (w *Window) mainMenu() *fyne.MainMenu {
	return fyne.NewMainMenu(w.fileMenu(), w.editMenu(), w.viewMenu(), w.helpMenu())
}

// refreshMenu makes the menus anew where they name other edits to undo and redo.
// The toolkit builds all of a menu again, which is much for a nudge.
func (w *Window) refreshMenu() {
	undone, _ := w.store.CanUndo()
	redone, _ := w.store.CanRedo()
	if named := [2]string{undone, redone}; named != w.menuNames {
		w.menuNames = named
		w.win.SetMainMenu(w.mainMenu())
	}
}

// command makes a menu item. Keys of 0 length: none. What is being typed in a
// field is handed in first. While a question lies over the window only that is
// answered: the toolkit takes the menu's keys all the same.
func (w *Window) command(text string, key fyne.KeyName, mods fyne.KeyModifier, do func()) *fyne.MenuItem {
	m := fyne.NewMenuItem(text, func() {
		if w.win.Canvas().Overlays().Top() != nil {
			return
		}
		if e, ok := w.win.Canvas().Focused().(*valueEntry); ok {
			e.commit()
		}
		do()
	})
	if key != "" {
		m.Shortcut = &desktop.CustomShortcut{KeyName: key, Modifier: mods}
	}
	return m
}

const (
	ctrl  = fyne.KeyModifierShortcutDefault
	shift = fyne.KeyModifierShift
)

func (w *Window) fileMenu() *fyne.Menu {
	t := w.words.Text
	examples := fyne.NewMenuItem(t("menu.examples"), nil)
	examples.ChildMenu = fyne.NewMenu("")
	for _, d := range plans.List() {
		examples.ChildMenu.Items = append(examples.ChildMenu.Items,
			w.command(t(d.Title), "", 0, func() { w.openExample(d.Name) }))
	}
	quit := w.command(t("menu.quit"), fyne.KeyQ, ctrl, w.Quit)
	quit.IsQuit = true // else the toolkit adds one that does not ask
	return fyne.NewMenu(t("menu.file"),
		w.command(t("menu.new"), fyne.KeyN, ctrl, w.New),
		w.trialCommand(),
		w.command(t("menu.open"), fyne.KeyO, ctrl, w.open),
		w.recentMenu(),
		examples,
		w.command(t("menu.recover"), "", 0, w.askRecovery),
		fyne.NewMenuItemSeparator(),
		w.command(t("menu.save"), fyne.KeyS, ctrl, func() { w.save(nil) }),
		w.command(t("menu.saveas"), fyne.KeyS, ctrl|shift, func() { w.saveAs(nil) }),
		w.command(t("menu.export"), fyne.KeyE, ctrl, w.askExport),
		w.bundleCommand(), w.routerCommand(),
		w.benchMenu(),
		fyne.NewMenuItemSeparator(),
		quit,
	)
}

func (w *Window) editMenu() *fyne.Menu {
	t := w.words.Text
	undone, _ := w.store.CanUndo()
	undo := fyne.NewMenuItem(w.naming("menu.undo", "menu.undo.none", undone), w.undo)
	redone, _ := w.store.CanRedo()
	redo := fyne.NewMenuItem(w.naming("menu.redo", "menu.redo.none", redone), w.redo)
	// The toolkit knows these two keys by names of its own. They stay enabled
	// with nothing to undo in the plan, for the text being typed.
	undo.Shortcut, redo.Shortcut = &fyne.ShortcutUndo{}, &fyne.ShortcutRedo{}
	return fyne.NewMenu(t("menu.edit"), append([]*fyne.MenuItem{
		undo, redo,
		fyne.NewMenuItemSeparator(),
		w.command(t("menu.add"), fyne.KeyL, ctrl, func() { w.focus(w.stops.add) }),
		w.setCommand(), w.pasteCommand(), w.springCommand(),
		w.command(t("menu.remove"), fyne.KeyDelete, ctrl, func() { w.removeStops(w.store.Selection().Stops...) }),
		w.command(t("menu.all"), fyne.KeyA, ctrl|shift, w.store.SelectAllStops),
		w.command(t("menu.sort"), "", 0, func() { w.report(w.store.SortStops(t("menu.sort"))) }),
		fyne.NewMenuItemSeparator(),
		w.settingMenu(),
		w.missesCommand(), w.drilledCommand(),
		fyne.NewMenuItemSeparator(),
	}, w.roomCommands()...)...)
}

func (w *Window) viewMenu() *fyne.Menu {
	t := w.words.Text
	return fyne.NewMenu(t("menu.view"), append(w.pageCommands(),
		w.command(t("menu.checks"), fyne.KeyG, ctrl, func() { w.focus(w.findings.list) }),
		w.command(t("menu.parts"), fyne.Key9, ctrl, w.parts.focus),
		fyne.NewMenuItemSeparator(),
		w.command(t("plate.fit"), fyne.Key0, ctrl, w.plate.fit),
		w.layersMenu(),
		fyne.NewMenuItemSeparator(),
		w.lengthsMenu(), w.anglesMenu(),
		w.command(t("menu.units.next"), fyne.KeyU, ctrl, w.nextUnits),
		w.explainItem(),
		w.lookMenu(), w.languageMenu(),
	)...)
}

// naming returns a text that names an edit, or another where there is none.
func (w *Window) naming(key, none, edit string) string {
	if edit == "" {
		return w.words.Text(none)
	}
	return w.words.Text(key, words.Args{"Edit": edit})
}

// layersMenu hides and shows what is drawn on the plate.
func (w *Window) layersMenu() *fyne.MenuItem {
	m := fyne.NewMenuItem(w.words.Text("menu.layers"), nil)
	m.ChildMenu = fyne.NewMenu("")
	for _, l := range []struct {
		key   string
		layer store.Layers
	}{
		{"layer.angles", store.Angles},
		{"layer.dimensions", store.Dimensions},
		{"layer.construction", store.Construction},
		{"layer.base", store.BasePart},
		{"layer.turntable", store.TurntablePart},
		{"layer.collar", store.CollarPart},
	} {
		item := fyne.NewMenuItem(w.words.Text(l.key), func() {
			w.store.ToggleLayer(l.layer)
			w.win.SetMainMenu(w.mainMenu())
		})
		item.Checked = !w.store.View().Layers.Hides(l.layer)
		m.ChildMenu.Items = append(m.ChildMenu.Items, item)
	}
	return m
}

func (w *Window) helpMenu() *fyne.Menu {
	t := w.words.Text
	return fyne.NewMenu(t("menu.help"),
		w.command(t("menu.handbook"), fyne.KeyH, ctrl, w.showHandbook),
		w.command(t("menu.guide"), "", 0, w.startGuide),
		w.command(t("menu.keys"), fyne.KeyF1, ctrl, w.showKeys),
		w.command(t("menu.cautions"), "", 0, func() { w.tell("menu.cautions", "help.cautions") }),
		w.command(t("menu.about"), "", 0, w.showAbout),
	)
}

// tell shows a text of the catalogue over the window.
func (w *Window) tell(title, text string) {
	w.ask(w.words.Text(title), w.words.Text(text), answer{text: w.words.Text("ask.ok"), main: true})
}

// openExample opens a demonstration plan as a new one.
func (w *Window) openExample(name string) {
	w.unlessUnsaved(func() {
		p, err := Example(name)
		if err != nil {
			w.tellError(err)
			return
		}
		w.take(p, diskfile.File{})
	})
}

// Example returns a demonstration plan, or an error naming those there are.
func Example(name string) (plan.Plan, error) {
	data, err := plans.Open(name)
	if err != nil {
		return plan.Plan{}, err
	}
	return plan.Decode(bytes.NewReader(data))
}

// typing returns the field that has the focus and holds text not handed in.
func (w *Window) typing() *widget.Entry {
	switch e := w.win.Canvas().Focused().(type) {
	case *valueEntry:
		if e.Text != e.shown {
			return &e.Entry
		}
	case *sheetEntry:
		return &e.Entry
	case *searchEntry:
		if e.Text != "" {
			return &e.Entry
		}
	case *addEntry:
		if e.Text != "" {
			return &e.Entry
		}
	}
	return nil
}

// undo takes back what is being typed, else the last edit.
func (w *Window) undo() { w.takeBack((*widget.Entry).Undo, w.store.Undo) }

// redo is the other way.
func (w *Window) redo() { w.takeBack((*widget.Entry).Redo, w.store.Redo) }

// takeBack does something to the text being typed, else to the plan, which
// stays as it is while a question about it lies over the window.
func (w *Window) takeBack(typed func(*widget.Entry), edit func()) {
	if e := w.typing(); e != nil {
		typed(e)
		return
	}
	if w.win.Canvas().Overlays().Top() == nil {
		edit()
	}
}
