package ui

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/export"
	"stopwright/export/drawing"
)

// bundleCommand is the menu's item that writes everything there is to a plan.
func (w *Window) bundleCommand() *fyne.MenuItem {
	return w.command(w.words.Text("menu.bundle"), fyne.KeyB, ctrl, w.askBundle)
}

// zipEnding is what makes a bundle a zip file.
const zipEnding = ".zip"

// askBundle asks where a bundle is to go, as a folder or a zip file, and writes
// it.
func (w *Window) askBundle() {
	t := w.words.Text
	date := time.Now().Format(time.DateOnly)
	name := export.BundleName(w.fileName())
	entry := newSheetEntry(filepath.Join(w.folder(), export.Dated(name, date)))
	kind := newSheetSelect([]string{t("bundle.folder"), t("bundle.zip")}, nil)
	kind.Selected = kind.Options[0]
	kind.OnChanged = func(string) {
		path := strings.TrimSuffix(strings.TrimSpace(entry.Text), zipEnding)
		if kind.SelectedIndex() == 1 {
			path += zipEnding
		}
		entry.SetText(path)
	}
	paper := newSheetSelect(paperNames(), nil)
	last, bars := w.printer()
	paper.Selected = last.Name
	do := func() {
		w.bundle(export.BundleRequest{
			Request: export.Request{
				Plan: w.store.Path(), Words: w.sheetWords, Date: date, Paper: drawing.Papers[paper.SelectedIndex()], Printer: bars,
			},
			To: filepath.Clean(strings.TrimSpace(entry.Text)), Name: name,
		})
	}
	about := widget.NewLabel(t("bundle.about"))
	about.Wrapping = fyne.TextWrapWord
	content := container.NewVBox(
		about,
		widget.NewLabel(t("bundle.where")),
		container.NewBorder(nil, nil, nil, w.folderButton(entry), entry),
		container.NewHBox(widget.NewLabel(t("bundle.as")), kind, widget.NewLabel(t("export.paper")), paper),
		w.exportWarning(),
	)
	entry.sheet = w.newSheet(t("bundle.title"), content,
		answer{text: t("ask.cancel")},
		answer{text: t("bundle.do"), then: do, main: true, able: entry.filled},
	)
	kind.sheet, paper.sheet = entry.sheet, entry.sheet
	w.showAt(entry)
}

// bundle writes a bundle behind the window, asking before anything is replaced.
func (w *Window) bundle(q export.BundleRequest) {
	_, err := os.Lstat(q.To)
	q.Replace = err == nil // when it has been asked about
	w.unlessThere([]string{q.To}, func() { w.runBundle(q) })
}

// toldBundle says what became of a bundle.
func (w *Window) toldBundle(done export.Bundled, err error) {
	if err != nil {
		w.tellError(err)
		return
	}
	t := w.words.Text
	text := t("bundle.done") + "\n" + done.Path
	for _, l := range done.LeftOut {
		text += "\n\n" + t("bundle.left.out") + " " + t("export."+l.Format) + "\n" + w.reasons(l.Reason, fewReasons)
	}
	answers := []answer{{text: t("ask.ok"), main: true}}
	if !strings.HasSuffix(done.Path, zipEnding) {
		answers = append(answers, answer{text: t("bundle.open"), then: func() { w.openContents(done) }})
	}
	w.ask(t("bundle.title"), text, answers...)
}

// openContents opens a bundle's page of contents in the browser.
func (w *Window) openContents(done export.Bundled) {
	path, err := filepath.Abs(filepath.Join(done.Path, done.Files[0]))
	if err == nil {
		err = w.app.OpenURL(fileURL(path))
	}
	if err != nil {
		w.tellError(errors.New(w.words.Text("bundle.open.failed") + " " + err.Error()))
	}
}
