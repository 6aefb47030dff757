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

// page is a page beside the stops. It is made when it is first turned to: most
// of them never are.
type page struct {
	id   pageID
	make func() shownPage
	shownPage
}

// shownPage is a page once it is made.
type shownPage struct {
	object  fyne.CanvasObject // nil: not made
	refresh func()            // brings it up to date when it can be seen; nil: it follows the store by itself
	keys    fyne.Focusable    // what has the keys when it is turned to; nil: what had them before
}

// makePages lists the pages in order. Tabs, menu entries, shortcuts and pictures
// follow from this list.
func (w *Window) makePages() []*page {
	// None is made yet; after a change of language none is the old one.
	w.clicks, w.truth, w.room, w.chart, w.work, w.setting, w.stock = nil, nil, nil, nil, nil, nil, nil
	return []*page{
		{id: platePage, make: func() shownPage {
			return shownPage{container.NewBorder(w.tools.object, w.turnbar.object, nil, nil, w.plate), nil, w.plate}
		}},
		{id: clickPage, make: func() shownPage {
			w.clicks = newClickView(w)
			return shownPage{w.clicks.object, w.clicks.refresh, nil}
		}},
		{id: truthPage, make: func() shownPage {
			w.truth = newTruthView(w)
			return shownPage{w.truth.object, w.truth.refresh, nil}
		}},
		{id: roomPage, make: func() shownPage {
			w.room = newRoomView(w)
			return shownPage{w.room.object, w.room.refresh, nil}
		}},
		{id: chartPage, make: func() shownPage {
			w.chart = newChartView(w)
			return shownPage{w.chart.object, w.chart.refresh, nil}
		}},
		{id: workPage, make: func() shownPage {
			w.work = newWorkView(w)
			return shownPage{w.work.object, w.work.refresh, w.work.list}
		}},
		{id: settingPage, make: func() shownPage {
			w.setting = newSettingView(w)
			return shownPage{w.setting.object, w.setting.refresh, nil}
		}},
		{id: stockPage, make: func() shownPage {
			w.stock = newStockView(w)
			return shownPage{w.stock.object, w.stock.refresh, w.stock.search}
		}},
	}
}

// tabs makes the tabs of the pages, and the first page.
func (w *Window) tabs() *container.AppTabs {
	var items []*container.TabItem // all at once: each that is appended lays all pages out anew
	for _, p := range w.pageList {
		items = append(items, container.NewTabItem(w.words.Text("page."+string(p.id)), container.NewStack()))
	}
	made := func(i int) {
		p, place := w.pageList[i], items[i].Content.(*fyne.Container)
		if p.object == nil {
			p.shownPage = p.make()
			place.Add(narrowed(p.object))
		}
	}
	made(0)
	tabs := container.NewAppTabs(items...)
	tabs.OnSelected = func(*container.TabItem) {
		made(tabs.SelectedIndex())
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
