package ui

import (
	"path/filepath"
	"slices"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/check"
	"stopwright/export"
	"stopwright/export/drawing"
)

// askExport asks what to export and where to, and does it.
func (w *Window) askExport() {
	t := w.words.Text
	entry := newSheetEntry(filepath.Join(w.folder(), w.fileName()))
	wanted := make([]*widget.Check, len(export.Formats))
	boxes := container.NewVBox()
	for i, f := range export.Formats {
		wanted[i] = widget.NewCheck(t("export."+f.Name), nil)
		wanted[i].Checked = true
		boxes.Add(wanted[i])
		w.refuse(f, wanted[i], boxes)
	}
	depths := widget.NewCheck(t("export.depths"), nil)
	paper := widget.NewSelect(paperNames(), nil)
	last, bars := w.printer()
	paper.SetSelectedIndex(paperNamed(last.Name))

	do := func() {
		base := strings.TrimSpace(entry.Text)
		q := export.Request{
			Plan: w.store.Path(), Words: w.sheetWords, Paper: drawing.Papers[paper.SelectedIndex()], Printer: bars,
			Date: time.Now().Format(time.DateOnly), LayerDepths: depths.Checked,
		}
		for i, f := range export.Formats {
			if wanted[i].Checked {
				*f.Path(&q) = base + f.Ending
			}
		}
		w.export(q)
	}
	content := container.NewVBox(
		widget.NewLabel(t("export.where")),
		container.NewBorder(nil, nil, nil, w.folderButton(entry), entry),
		boxes, depths,
		container.NewHBox(widget.NewLabel(t("export.paper")), paper),
		w.exportWarning(),
	)
	entry.sheet = w.newSheet(t("export.title"), content,
		answer{text: t("ask.cancel")},
		answer{
			text: t("export.do"), then: do, main: true,
			able: func() bool { return entry.filled() && anyChecked(wanted) },
		},
	)
	w.showAt(entry)
}

func anyChecked(boxes []*widget.Check) bool {
	return slices.ContainsFunc(boxes, func(c *widget.Check) bool { return c.Checked })
}

// exportWarning says that the plan still has errors, where it has: the files
// are written all the same.
func (w *Window) exportWarning() fyne.CanvasObject {
	n := 0
	for _, f := range w.store.Report().Findings {
		if f.Severity == check.Error {
			n++
		}
	}
	p := newProblem(w)
	if n > 0 {
		p.label.SetText(w.words.Text("export.errors", words.Args{"N": n}))
		p.object.Show()
	}
	return p.object
}

// export writes the files that are asked for, first asking before any is
// replaced.
func (w *Window) export(q export.Request) {
	r := w.store.Report()
	w.unlessThere(export.Paths(r, q), func() {
		written, err := export.Export(r, q)
		if err != nil {
			w.tellError(err)
			return
		}
		w.ask(w.words.Text("export.title"), w.words.Text("export.done", words.Args{
			"Files": strings.Join(written, "\n"),
		}), answer{text: w.words.Text("ask.ok"), main: true})
	})
}

// refuse takes a format off the choice that cannot be made of the plan, and says
// below it why.
func (w *Window) refuse(f export.Format, wanted *widget.Check, boxes *fyne.Container) {
	err := f.Refuses(w.store.Report(), export.Request{Words: w.words})
	if err == nil {
		return
	}
	wanted.Checked = false
	wanted.Disable()
	p := newProblem(w)
	p.tell(w.refusalInWords(err, fewReasons))
	boxes.Add(p.object)
}
