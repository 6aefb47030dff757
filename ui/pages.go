package ui

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// pageID names a page beside the stops. Its name in the words is "page." and it.
type pageID string

// The pages.
const (
	platePage   pageID = "plate"
	clickPage   pageID = "click"
	truthPage   pageID = "truth"
	roomPage    pageID = "room"
	chartPage   pageID = "chart"
	workPage    pageID = "work"
	settingPage pageID = "setting"
	stockPage   pageID = "stock"
)

// page is a page beside the stops.
type page struct {
	id      pageID
	object  fyne.CanvasObject
	refresh func()         // brings it up to date when it can be seen; nil: it follows the store by itself
	keys    fyne.Focusable // what has the keys when it is turned to; nil: what had them before
}

// makePages lists the pages in order. Tabs, menu entries, shortcuts and pictures
// follow from this list.
func (w *Window) makePages() []page {
	return []page{
		{platePage, container.NewBorder(w.tools.object, w.turnbar.object, nil, nil, w.plate), nil, w.plate},
		{clickPage, w.clicks.object, w.clicks.refresh, nil},
		{truthPage, w.truth.object, w.truth.refresh, nil},
		{roomPage, w.room.object, w.room.refresh, nil},
		{chartPage, w.chart.object, w.chart.refresh, nil},
		{workPage, w.work.object, w.work.refresh, w.work.list},
		{settingPage, w.setting.object, w.setting.refresh, nil},
		{stockPage, w.stock.object, w.stock.refresh, w.stock.search},
	}
}

// tabs makes the tabs of the pages.
func (w *Window) tabs() *container.AppTabs {
	var items []*container.TabItem // all at once: each that is appended lays all pages out anew
	for _, p := range w.pageList {
		items = append(items, container.NewTabItem(w.words.Text("page."+string(p.id)), narrowed(p.object)))
	}
	tabs := container.NewAppTabs(items...)
	tabs.OnSelected = func(*container.TabItem) {
		if w.page() != platePage {
			w.say("") // what was said of the plate under the pointer
		}
		w.refreshPage()
	}
	return tabs
}

// page returns the page that can be seen.
func (w *Window) page() pageID { return w.pageList[w.pages.SelectedIndex()].id }

// showPage turns to a page.
func (w *Window) showPage(id pageID) {
	for i, p := range w.pageList {
		if p.id == id {
			w.pages.SelectIndex(i)
			return
		}
	}
}

// refreshPage brings the page that can be seen up to date; the others are when
// they are turned to.
func (w *Window) refreshPage() {
	if refresh := w.pageList[w.pages.SelectedIndex()].refresh; refresh != nil {
		refresh()
	}
}

// pageCommands returns the menu entries that turn to the pages, the first with
// Ctrl+1 and so on.
func (w *Window) pageCommands() []*fyne.MenuItem {
	var items []*fyne.MenuItem
	for i, p := range w.pageList {
		items = append(items, w.command(w.words.Text("page."+string(p.id)), fyne.KeyName(fmt.Sprint(i+1)), ctrl, func() {
			w.showPage(p.id)
			if p.keys != nil {
				w.focus(p.keys)
			}
		}))
	}
	return items
}
