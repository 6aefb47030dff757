package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/ui/units"
)

// stockView shows what can be bought and what handbooks say of it, with where
// each figure is from and how sure it is. What is chosen can set a field of the
// plan.
type stockView struct {
	w       *Window
	search  *searchEntry
	kind    *widget.Select
	nearest *widget.Label
	list    *keyList
	title   *widget.Label
	facts   *widget.Label
	set     *widget.Label
	uses    *fyne.Container
	object  *fyne.Container

	all, found []stockItem
	made       units.Style // the units that all was made in
}

// searchEntry is the line that is searched by. Down goes to what was found, and
// Escape begins anew.
type searchEntry struct {
	widget.Entry
	down func()
}

// TypedKey takes Down and Escape.
func (e *searchEntry) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyDown:
		e.down()
	case fyne.KeyEscape:
		e.SetText("")
	default:
		e.Entry.TypedKey(k)
	}
}

// stockRow is a row of the list: a name, its figure, and how sure it is.
var stockRow = rowLayout{160, 120}

func newStockView(w *Window) *stockView {
	t := w.words.Text
	v := &stockView{w: w, search: &searchEntry{}, nearest: widget.NewLabel(""), facts: widget.NewLabel("")}
	v.search.ExtendBaseWidget(v.search)
	v.search.SetPlaceHolder(t("stock.search"))
	v.nearest.Wrapping, v.facts.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord
	kinds := []string{t("stock.all")}
	for _, k := range stockKinds {
		kinds = append(kinds, t("stock.kind."+k))
	}
	v.kind = widget.NewSelect(kinds, nil)
	v.kind.SetSelectedIndex(0)
	v.list = newKeyList(func() int { return len(v.found) },
		func() fyne.CanvasObject {
			return container.New(stockRow, shortLabel(""), shortLabel(""), shortLabel(""))
		},
		func(i widget.ListItemID, o fyne.CanvasObject) {
			item, row := v.found[i], o.(*fyne.Container).Objects
			row[0].(*widget.Label).SetText(item.name + "  (" + t("stock.kind."+item.kind) + ")")
			row[1].(*widget.Label).SetText(item.says)
			row[2].(*widget.Label).SetText(t("stock.certainty." + item.facts[0].Certainty.String()))
		},
		func(int) { v.show() },
	)
	v.title, v.set = heading(""), widget.NewLabel(t("stock.set"))
	v.uses = container.New(layout.NewRowWrapLayout())
	v.search.OnChanged = func(string) { v.find() }
	v.kind.OnChanged = func(string) { v.find() }
	v.search.down = func() { w.enter(v.list) }
	head := container.New(flow{}, container.NewBorder(nil, nil, nil, v.kind, v.search), v.nearest)
	foot := container.New(flow{}, widget.NewSeparator(), v.title, v.facts, container.NewBorder(nil, nil, v.set, nil, v.uses))
	v.object = container.New(flow{last: true}, head, container.New(footed{}, v.list, foot))
	return v
}

// refresh shows sizes in the units of the window, and the fields that there are.
// The items are made when the page is first turned to.
func (v *stockView) refresh() {
	if v.all == nil || v.made != v.w.units() {
		v.remake()
	}
	v.show()
}

// remake makes the items anew.
func (v *stockView) remake() {
	v.all, v.made = v.w.stockItems(), v.w.units()
	v.find()
}

// find shows what is searched for.
func (v *stockView) find() {
	kind := ""
	if i := v.kind.SelectedIndex(); i > 0 {
		kind = stockKinds[i-1]
	}
	v.found = v.w.matching(v.all, kind, v.search.Text)
	text := v.w.nearestDrills(v.search.Text)
	if v.nearest.SetText(text); text == "" {
		v.nearest.Hide()
	} else {
		v.nearest.Show()
	}
	v.list.renew()
	v.show()
}

// show shows the item that is selected, in full, and lays the page out for it.
func (v *stockView) show() {
	defer v.object.Refresh()
	t := v.w.words.Text
	v.uses.RemoveAll()
	v.set.Hide()
	if v.list.at < 0 || v.list.at >= len(v.found) {
		v.title.SetText(t("stock.count", words.Args{"N": len(v.found)}))
		v.facts.SetText(t("stock.pick"))
		return
	}
	item := v.found[v.list.at]
	v.title.SetText(item.name)
	var lines []string
	for _, f := range item.facts {
		lines = append(lines, t("stock.fact", words.Args{
			"Name": f.name, "Value": f.value, "Source": v.w.source(f.Source), "Certainty": t("stock.certainty." + f.Certainty.String()),
		}))
	}
	v.facts.SetText(strings.Join(lines, "\n"))
	for _, u := range item.uses {
		if f, ok := v.w.fieldOf(u); ok {
			v.uses.Add(widget.NewButton(t("stock.use."+u.field), func() { v.w.use(item, u, f) }))
			v.set.Show()
		}
	}
}

// source returns where a figure is from: standards and handbooks by their own
// names, what workshops reckon with in the window's language.
func (w *Window) source(name string) string {
	if key := "source." + name; w.words.Has(key) {
		return w.words.Text(key)
	}
	return name
}

// fieldOf returns the field of the plan that an item would set, and false if the
// plan has none: no collar, no hole selected.
func (w *Window) fieldOf(u stockUse) (plan.Field, bool) {
	path := u.field
	if u.field == selectedHole {
		i := w.store.Selection().Feature
		if i < 0 || w.store.Plan().Features[i].Kind != plan.Hole {
			return plan.Field{}, false
		}
		path = featureList.fieldPath(i) + "diameter"
	}
	f, ok := w.fields[path]
	return f, ok
}

// use sets a field of the plan, as one edit.
func (w *Window) use(item stockItem, u stockUse, f plan.Field) {
	f.Number, f.Text = u.number, u.text
	if err := w.setField(f); err != nil {
		w.report(err)
		return
	}
	w.say(w.words.Text("stock.used", words.Args{"Use": w.words.Text("stock.use." + u.field), "Item": item.name}))
}
