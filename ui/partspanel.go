package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent/plan"
	"stopwright/ui/preset"
)

// group is one section of the parts panel: the plan's keys that begin with one
// of its prefixes, in the order the plan has them.
type group struct {
	key      string // of its heading
	prefixes []string
	list     *listGroup                    // nil: not a list
	open     bool                          // at first
	presets  func(*Window) []preset.Preset // nil: there are none
}

// groups lists the sections from what is changed most to what is seldom.
var groups = []group{
	{key: "group.ring", list: &catchList, open: true},
	{key: "group.seat", prefixes: []string{"seat."}, open: true, presets: (*Window).seatPresets},
	{key: "group.rules", prefixes: []string{"rules."}, open: true},
	{key: "group.turning", prefixes: []string{"arrangement.", "travel."}},
	{key: "group.turntable", prefixes: []string{"turntable."}},
	{key: "group.base", prefixes: []string{"base."}},
	{key: "group.collar", prefixes: []string{"collar."}},
	{key: "group.catch", prefixes: []string{"catch.", "face_gap"}, presets: (*Window).catchPresets},
	{key: "group.fits", prefixes: []string{"making.clearance_from", "making.knock_out", "making.pivot.", "making.screws."}},
	{key: "group.sliders", prefixes: []string{"making.end_stops.", "making.clamp."}},
	{key: "group.slots", prefixes: []string{"making.dust.", "making.fence.", "making.registration."}},
	{key: "group.inserts", prefixes: []string{"making.wear_ring.", "making.carrier."}},
	{key: "group.shop", prefixes: []string{"shop."}},
	{key: "group.features", list: &featureList},
	{key: "group.title", prefixes: []string{"title", "notes", "scale"}},
}

// partsPanel shows every decision of the plan but the stops, in sections.
type partsPanel struct {
	w         *Window
	accordion *widget.Accordion
	sections  []*section
	scroll    *container.Scroll
	explain   *explainer
	object    fyne.CanvasObject
}

// section is one section with the rows it shows now.
type section struct {
	group
	choose *chooser // nil: not a list
	head   *fyne.Container
	box    *fyne.Container
	rows   []fieldRow
	made   []string // the paths of the fields the rows were made for
	extra  func()   // refreshes what else the head holds
	detail *late    // head and box in the panel, hidden while the section is closed
}

func newPartsPanel(w *Window) *partsPanel {
	p := &partsPanel{w: w}
	var items []*widget.AccordionItem // all at once: each that is appended draws all anew
	for _, g := range groups {
		s := newSection(w, g)
		s.detail = newLate(container.NewVBox(s.head, s.box), func() { s.refresh(w) })
		p.sections = append(p.sections, s)
		item := widget.NewAccordionItem(w.words.Text(g.key), s.detail)
		item.Open = g.open
		items = append(items, item)
	}
	p.accordion = widget.NewAccordion(items...)
	p.accordion.MultiOpen = true
	// An accordion in a box of its own keeps to its height and does not stretch.
	p.scroll = container.NewVScroll(container.NewVBox(p.accordion))
	p.explain = newExplainer(w)
	p.object = container.NewBorder(nil, p.explain.object, nil, nil, underWheel(p.scroll))
	p.explain.refresh()
	return p
}

// focus gives the keys to the first section's choice of item, from where Tab
// leads through the rest.
func (p *partsPanel) focus() { p.w.focus(p.sections[0].choose.pick) }

// showFeature opens the section of features at one of them.
func (p *partsPanel) showFeature(i int) {
	for k, s := range p.sections {
		if s.list == &featureList {
			s.choose.item = i
			s.refresh(p.w)
			p.accordion.Open(k)
			p.scroll.Content.Resize(p.scroll.Content.MinSize().Max(p.scroll.Size())) // as tall as it is now
			p.reveal(s.box)
			p.reveal(s.head) // above all
		}
	}
}

// refresh shows the plan. A closed section waits until it is opened.
func (p *partsPanel) refresh() {
	for _, s := range p.sections {
		if s.detail.Visible() {
			s.refresh(p.w)
		}
	}
	p.explain.refresh()
}

// reveal scrolls the panel so that an object in it is in sight.
func (p *partsPanel) reveal(o fyne.CanvasObject) {
	driver := fyne.CurrentApp().Driver()
	from := driver.AbsolutePositionForObject(p.scroll.Content)
	top := driver.AbsolutePositionForObject(o).Y - from.Y
	bottom := top + o.Size().Height
	switch at := &p.scroll.Offset.Y; {
	case top < *at:
		*at = top
	case bottom > *at+p.scroll.Size().Height:
		*at = bottom - p.scroll.Size().Height
	default:
		return
	}
	p.scroll.Refresh()
}

func newSection(w *Window, g group) *section {
	s := &section{group: g, head: container.NewVBox(), box: container.NewVBox(), extra: func() {}}
	if g.list != nil {
		s.choose = newChooser(w, g.list, func() { s.refresh(w) })
		s.head.Add(s.choose.object)
		s.extra = s.choose.refresh
	}
	if g.presets != nil {
		s.head.Add(container.NewHBox(layout.NewSpacer(), w.presetButton(func() []preset.Preset { return g.presets(w) })))
	}
	if g.key == "group.catch" {
		s.head.Add(container.NewHBox(layout.NewSpacer(), widget.NewButton(w.words.Text("menu.spring"), w.askSpring)))
	}
	if g.key == "group.collar" {
		check := w.collarCheck()
		s.head.Add(check.object)
		s.extra = check.refresh
	}
	return s
}

// refresh shows the plan, making rows anew where the plan has other fields than
// before.
func (s *section) refresh(w *Window) {
	s.extra()
	fields := s.fields(w)
	paths := make([]string, len(fields))
	for i, f := range fields {
		paths[i] = f.Path
	}
	if slices.Equal(paths, s.made) {
		for _, r := range s.rows {
			r.refresh()
		}
		return
	}
	s.made, s.rows = paths, s.rows[:0]
	s.box.RemoveAll()
	for _, f := range fields {
		row := w.newFieldRow(f)
		s.rows = append(s.rows, row)
		s.box.Add(row.object)
	}
}

// fields returns the plan's fields that the section shows.
func (s *section) fields(w *Window) []plan.Field {
	prefixes := s.prefixes
	if s.choose != nil {
		prefixes = []string{s.choose.prefix()}
	}
	var out []plan.Field
	for _, f := range w.fieldOrder {
		if slices.ContainsFunc(prefixes, func(prefix string) bool { return strings.HasPrefix(f.Path, prefix) }) {
			out = append(out, f)
		}
	}
	return out
}

// collarCheck makes the box that gives the plan a collar or takes it away.
func (w *Window) collarCheck() fieldRow {
	c := widget.NewCheck(w.words.Text("collar.has"), nil)
	refresh := func() {
		if has := w.store.Plan().Collar != nil; c.Checked != has {
			c.Checked = has
			c.Refresh()
		}
	}
	refresh()
	c.OnChanged = func(on bool) {
		w.report(w.store.Edit(w.words.Text("edit.collar"), func(p *plan.Plan) {
			p.Collar = nil
			if on {
				collar := plan.NewCollar(p.Turntable)
				p.Collar = &collar
			}
		}))
	}
	return fieldRow{c, refresh}
}

// iconButton makes a small button with a picture, and words for those who ask.
func iconButton(icon fyne.Resource, tapped func()) *widget.Button {
	b := widget.NewButtonWithIcon("", icon, tapped)
	b.Importance = widget.LowImportance
	return b
}
