package ui

import (
	"slices"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/check"
	"stopwright/detent/plan"
)

// listGroup is a list of the plan that the parts panel shows one item of at a
// time.
type listGroup struct {
	path   string // of the list
	edit   string // key of the name of adding and removing
	names  func(w *Window) []string
	add    func(*plan.Plan)
	remove func(*plan.Plan, int)
	least  int                // items that must stay
	chosen func(*Window, int) // also marks the item on the plate; nil: there is nothing to mark
}

var catchList = listGroup{
	path: "catches", edit: "edit.catches", least: 1,
	names: func(w *Window) []string {
		var out []string
		for _, c := range w.store.Plan().Catches {
			out = append(out, w.words.Text("catch.name", words.Args{"Name": c.Name}))
		}
		return out
	},
	add: func(p *plan.Plan) { p.Catches = append(p.Catches, plan.NewPlacement(*p)) },
	remove: func(p *plan.Plan, i int) {
		name := p.Catches[i].Name
		p.Catches = slices.Delete(p.Catches, i, i+1)
		for k := range p.Stops { // no stop may name a catch that is gone
			s := &p.Stops[k]
			s.Catches = slices.DeleteFunc(s.Catches, func(n string) bool { return n == name })
		}
	},
}

var featureList = listGroup{
	path: "features", edit: "edit.features",
	names: func(w *Window) []string {
		var out []string
		for _, f := range w.store.Report().Plate.Features {
			if f.Own() {
				out = append(out, strconv.Itoa(f.Index+1)+" "+check.FeatureName(w.words, f))
			}
		}
		return out
	},
	add:    func(p *plan.Plan) { p.Features = append(p.Features, plan.NewFeature(*p)) },
	remove: func(p *plan.Plan, i int) { p.Features = slices.Delete(p.Features, i, i+1) },
	chosen: func(w *Window, i int) { w.store.SelectFeature(i) },
}

// chooser picks one item of a list of the plan, adds one and removes one.
type chooser struct {
	w      *Window
	list   *listGroup
	item   int // -1: the list is empty
	pick   *widget.Select
	remove *widget.Button
	object fyne.CanvasObject
	picked func()
}

func newChooser(w *Window, l *listGroup, picked func()) *chooser {
	c := &chooser{w: w, list: l, picked: picked, pick: widget.NewSelect(nil, nil)}
	c.pick.PlaceHolder = w.words.Text("list.none")
	c.pick.OnChanged = func(string) {
		c.item = c.pick.SelectedIndex()
		c.tell()
	}
	add := iconButton(theme.ContentAddIcon(), func() {
		w.report(c.edit(l.add))
		c.item = len(l.names(w)) - 1
		c.refresh()
		c.tell()
	})
	c.remove = iconButton(theme.DeleteIcon(), func() {
		w.report(c.edit(func(p *plan.Plan) { l.remove(p, c.item) }))
	})
	c.object = container.NewBorder(nil, nil, nil, container.NewHBox(add, c.remove), c.pick)
	c.refresh()
	return c
}

// tell says that another item is chosen.
func (c *chooser) tell() {
	if c.list.chosen != nil {
		c.list.chosen(c.w, c.item)
	}
	c.picked()
}

func (c *chooser) edit(change func(*plan.Plan)) error {
	return c.w.store.Edit(c.w.words.Text(c.list.edit), change)
}

// prefix returns the path with which the fields of the chosen item begin.
func (c *chooser) prefix() string { return c.list.fieldPath(c.item) }

// fieldPath returns the path with which the fields of an item begin.
func (l *listGroup) fieldPath(item int) string { return l.path + "[" + strconv.Itoa(item) + "]." }

// refresh shows the list as the plan has it.
func (c *chooser) refresh() {
	names := c.list.names(c.w)
	c.item = min(max(c.item, 0), len(names)-1)
	shown := ""
	if c.item >= 0 {
		shown = names[c.item]
	}
	showChoice(c.pick, names, shown)
	if len(names) > c.list.least {
		c.remove.Enable()
	} else {
		c.remove.Disable()
	}
}
