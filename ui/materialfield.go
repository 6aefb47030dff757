package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// namesMaterial reports whether a field says what a part is made of.
func namesMaterial(f plan.Field) bool { return strings.HasSuffix(f.Generic, ".material") }

// materialText returns a material of the plan in the window's language; as it
// stands if nothing is known of it.
func (w *Window) materialText(id string) string {
	if m, ok := stock.FindMaterial(id); ok {
		return w.words.Text(m.WordKey())
	}
	return id
}

// readMaterial returns a material as plans write it: one typed in the window's
// language or as in a plan, or as it is typed if nothing is known of it.
func (w *Window) readMaterial(text string) string {
	text = strings.TrimSpace(text)
	for _, m := range stock.Materials() {
		if strings.EqualFold(text, w.words.Text(m.WordKey())) {
			return m.ID
		}
	}
	if m, ok := stock.FindMaterial(text); ok {
		return m.ID
	}
	return text
}

// materialRemarks say below a field where nothing is known of its material.
func (w *Window) materialRemarks(f plan.Field, note *widget.Label) *remarks {
	note.Wrapping = fyne.TextWrapWord
	return &remarks{
		say:        sayIn(note),
		understood: w.materialUnknown,
		kept:       func() string { return w.materialUnknown(w.fieldAt(f).Text) },
	}
}

// materialUnknown says what is left out of the reckoning for a material of which
// nothing is known; "" of one that is, and of none.
func (w *Window) materialUnknown(text string) string {
	id := w.readMaterial(text)
	if _, ok := stock.FindMaterial(id); ok || id == "" {
		return ""
	}
	return w.words.Text("field.material.unknown", words.Args{"Text": id})
}

// materialsFor returns what shows the materials there are to choose from, with a
// tick at the present one.
func (w *Window) materialsFor(f plan.Field) func(*valueEntry) {
	return func(e *valueEntry) {
		e.commit()
		var items []*fyne.MenuItem
		for _, m := range stock.Materials() {
			name := w.words.Text(m.WordKey())
			item := fyne.NewMenuItem(name, func() {
				e.SetText(name)
				e.commit()
				w.focus(e)
			})
			item.Checked = w.readMaterial(w.fieldAt(f).Text) == m.ID
			items = append(items, item)
		}
		w.popUp(e, items)
	}
}
