package ui

import (
	"path/filepath"
	"slices"
	"strings"
	"time"

	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/export"
)

// proofFormat is the name of the proof sheet among the formats.
const proofFormat = "proof"

// askProof asks where to write the proof sheet, and writes it.
func (w *Window) askProof() {
	t := w.words.Text
	i := slices.IndexFunc(export.Formats, func(f export.Format) bool { return f.Name == proofFormat })
	format := export.Formats[i]
	entry := newSheetEntry(filepath.Join(w.folder(), w.fileName()+format.Ending))
	do := func() {
		q := export.Request{Plan: w.store.Path(), Words: w.sheetWords, Date: time.Now().Format(time.DateOnly)}
		*format.Path(&q) = strings.TrimSpace(entry.Text)
		w.export(q)
	}
	content := container.NewVBox(
		widget.NewLabel(t("setting.print.where")),
		container.NewBorder(nil, nil, nil, w.folderButton(entry), entry),
		wrapped(t("setting.caution")),
	)
	entry.sheet = w.newSheet(t("proof.name"), content,
		answer{text: t("ask.cancel")},
		answer{text: t("export.do"), then: do, main: true, able: entry.filled},
	)
	w.showAt(entry)
}
