package ui

import (
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/export/drawing"
	"stopwright/export/tile"
)

// What the window keeps of the printer between runs: it belongs to the shop and
// not to the plan.
const (
	paperSetting = "printer.paper"
	barXSetting  = "printer.bar.x"
	barYSetting  = "printer.bar.y"
)

// printer returns the paper last chosen, and what the printer's bars measure.
// What was kept and cannot be is as if it were not.
func (w *Window) printer() (drawing.Paper, tile.Correction) {
	kept := w.app.Preferences()
	bars := tile.Correction{X: kept.Float(barXSetting), Y: kept.Float(barYSetting)}
	if _, err := bars.Stretch(); err != nil {
		bars = tile.Correction{}
	}
	return drawing.Papers[paperNamed(kept.String(paperSetting))], bars
}

// keepPrinter remembers the printer for the next time and the next run.
func (w *Window) keepPrinter(paper drawing.Paper, bars tile.Correction) {
	kept := w.app.Preferences()
	kept.SetString(paperSetting, paper.Name)
	kept.SetFloat(barXSetting, bars.X)
	kept.SetFloat(barYSetting, bars.Y)
}

// paperNamed returns where a paper stands in the list; the first where none has
// that name.
func paperNamed(name string) int {
	return max(0, slices.IndexFunc(drawing.Papers, func(p drawing.Paper) bool { return p.Name == name }))
}

// paperNames lists the papers.
func paperNames() []string {
	var names []string
	for _, p := range drawing.Papers {
		names = append(names, p.Name)
	}
	return names
}

// benchMenu is the menu of what is made beside the parts.
func (w *Window) benchMenu() *fyne.MenuItem {
	t := w.words.Text
	m := fyne.NewMenuItem(t("menu.bench"), nil)
	m.ChildMenu = fyne.NewMenu("",
		w.command(t("menu.template"), fyne.KeyP, ctrl, w.askTemplate),
		w.command(t("menu.scale"), "", 0, w.askScale),
		w.command(t("menu.coupon"), "", 0, w.askCoupon),
	)
	return m
}

// formLayout is a row of a sheet's form: a name and a field or a choice.
var formLayout = rowLayout{220}

// formRow makes a row of a sheet's form.
func (w *Window) formRow(key string, field fyne.CanvasObject, args ...words.Args) fyne.CanvasObject {
	return container.New(formLayout, widget.NewLabel(w.words.Text(key, args...)), field)
}

// fileEntry makes the field of a sheet for the file to write, beside the plan and
// called like it.
func (w *Window) fileEntry(ending string) *sheetEntry {
	return newSheetEntry(filepath.Join(w.folder(), w.fileName()+ending))
}

// fileRow makes the row of a file to write.
func (w *Window) fileRow(entry *sheetEntry) fyne.CanvasObject {
	return container.NewBorder(nil, nil, nil, w.folderButton(entry), entry)
}

// figureKinds are the kinds of file of a scale or a coupon, by their endings.
var figureKinds = []string{".dxf", ".svg", ".pdf"}

// newKindSelect makes the choice of a kind of file, which is what the name in a
// field ends in.
func (w *Window) newKindSelect(entry *sheetEntry, first string, changed func()) *sheetSelect {
	var names []string
	for _, ending := range figureKinds {
		names = append(names, w.words.Text("kind."+ending[1:]))
	}
	kind := newSheetSelect(names, nil)
	kind.SetSelectedIndex(slices.Index(figureKinds, first))
	kind.OnChanged = func(string) {
		path := strings.TrimSpace(entry.Text)
		if old := filepath.Ext(path); slices.Contains(figureKinds, strings.ToLower(old)) {
			path = strings.TrimSuffix(path, old)
		}
		entry.SetText(path + figureKinds[kind.SelectedIndex()])
		changed()
	}
	return kind
}

// readLength reads the length in a field of a sheet; 0 where it is blank.
func (w *Window) readLength(e *sheetEntry) (float64, error) {
	if strings.TrimSpace(e.Text) == "" {
		return 0, nil
	}
	return measure.ParseLength(e.Text, w.units().Unit())
}
