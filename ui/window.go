package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/ui/ink"
	"stopwright/ui/store"
)

// Window is the program's one window: it makes the views, tells them when the
// store has changed, and carries out what they call back for.
type Window struct {
	app   fyne.App
	win   fyne.Window
	store *store.Store
	words *words.Catalogue
	theme benchTheme

	language string // chosen; empty: the system's

	filing filing
	sheets []*sheet // that lie over the window, the topmost last

	// sheetWords letter charts and drawings, which are in mm whatever the
	// window shows.
	sheetWords *words.Catalogue

	fieldOrder []plan.Field          // of the plan but its stops and its log
	fields     map[string]plan.Field // the same by path

	stops    *stopList
	plate    *plateView
	tools    *plateTools
	turnbar  *turnBar
	clicks   *clickView
	truth    *truthView
	room     *roomView
	chart    *chartView
	work     *workView
	setting  *settingView
	stock    *stockView
	pageList []*page            // beside the stops, in order
	pages    *container.AppTabs // their tabs
	studies  studies
	parts    *partsPanel
	findings *findingList
	status   *widget.Label
	guide    *guide
	handbook *handbook    // nil: not open
	router   *routerSheet // nil: not open
	greets   bool         // shows the guide at the first start of all

	menuNames [2]string // the edits that the menu names, to undo and to redo
}

// NewWindow makes the window, holding a plan that [plan.Validate] accepts as
// one not yet saved. It is not shown yet.
func NewWindow(a fyne.App, p plan.Plan) *Window {
	w := newWindow(a, p, AsDesktop)
	w.recall()
	w.greets = true
	return w
}

func newWindow(a fyne.App, p plan.Plan, look Look) *Window {
	w := &Window{app: a, store: store.New(p), theme: benchTheme{look}, filing: newFiling(), studies: behind()}
	w.language = english
	w.words, w.sheetWords = w.windowWords(english), sheetWords(english)
	a.Settings().SetTheme(w.theme)
	fontsRead := readFonts()
	w.win = a.NewWindow(w.words.Text("app.name"))
	w.readFields()
	fontsRead()
	w.build()
	w.win.SetCloseIntercept(w.Quit)
	w.win.SetOnDropped(w.dropped)
	a.Lifecycle().SetOnEnteredForeground(w.lookAtDisk)
	w.win.SetMainMenu(w.mainMenu())
	w.win.Resize(fyne.NewSize(1180, 780))

	w.store.OnChange(w.changed)
	w.showTitle()
	return w
}

// build makes the views and puts them into the window.
func (w *Window) build() {
	w.status = widget.NewLabel("")
	w.status.Truncation = fyne.TextTruncateEllipsis
	w.stops = newStopList(w)
	w.plate = newPlateView(w)
	w.tools = newPlateTools(w)
	w.turnbar = newTurnBar(w)
	w.parts = newPartsPanel(w)
	w.findings = newFindingList(w)
	w.pageList = w.makePages()
	w.pages = w.tabs()

	w.guide = newGuide(w)
	panes := newPanes(w.stops.object, w.pages, w.parts.object, w.findings.object)
	w.win.SetContent(container.NewStack(container.NewBorder(nil, w.status, nil, nil, panes), w.guide.card.overlay))
}

// Show shows the window and begins with the line that adds stops.
func (w *Window) Show() {
	w.win.Show()
	w.focus(w.stops.add)
	w.greet()
}

// changed brings every view that shows what has changed up to date.
func (w *Window) changed(c store.Change) {
	if c&store.PlanChanged != 0 {
		w.studies.stop()
		w.readFields()
		w.parts.refresh()
		w.findings.refresh()
		w.router.refresh()
	}
	if c&(store.PlanChanged|store.ViewChanged) != 0 {
		w.stops.refresh()
		w.tools.refresh()
	}
	if c == store.SelectionChanged {
		w.stops.showSelection()
		w.findings.showSelection()
	}
	if c&(store.PlanChanged|store.ViewChanged|store.TurnChanged) != 0 {
		w.turnbar.refresh()
	}
	if c&^(store.FileChanged|store.StudyChanged) != 0 {
		w.plate.changed()
	}
	if c&store.PlanChanged != 0 {
		w.chart.forget()
	}
	if c&(store.PlanChanged|store.ViewChanged|store.TurnChanged|store.StudyChanged) != 0 || c&store.SelectionChanged != 0 && w.page() == truthPage {
		w.refreshPage()
	}
	if c&(store.PlanChanged|store.FileChanged) != 0 {
		w.showTitle()
		w.refreshMenu()
	}
}

// readFields reads the fields that the parts panel shows. The stops and the log
// have places of their own.
func (w *Window) readFields() {
	p := w.store.Plan()
	p = p.WithLogOf(plan.Plan{})
	p.Stops = nil
	p.Router = nil // shown in a sheet of its own
	w.fieldOrder = plan.Fields(p)
	w.fields = make(map[string]plan.Field, len(w.fieldOrder))
	for _, f := range w.fieldOrder {
		w.fields[f.Path] = f
	}
	for _, f := range w.routerFields() {
		w.fields[f.Path] = f
	}
}

// palette returns the colours of paper and ink in use.
func (w *Window) palette() ink.Palette { return w.theme.palette(w.app.Settings().ThemeVariant()) }

// setLook makes the bench light, dark, or as the desktop has it.
func (w *Window) setLook(l Look) {
	w.theme.look = l
	w.app.Settings().SetTheme(w.theme)
	w.plate.changed()
	w.refreshPage()
	w.parts.explain.refresh()
}

// say writes in the line at the foot of the window.
func (w *Window) say(text string) { w.status.SetText(text) }

// report says why something could not be done; nil clears the line.
func (w *Window) report(err error) {
	if err != nil {
		w.say(w.inWords(err))
		return
	}
	w.say("")
}

// focus gives the keys to an object.
func (w *Window) focus(o fyne.Focusable) { w.win.Canvas().Focus(o) }
