package ui

import (
	"fyne.io/fyne/v2"

	"stopwright/assets/words"
)

// guideStep is one card of the guide: what it says and which pane it is about.
type guideStep struct {
	key  string                            // of its words
	pane func(w *Window) fyne.CanvasObject // nil: the window as a whole
}

// guideSteps begin with the cautions, so that nobody misses them, and then go
// once round the window.
var guideSteps = []guideStep{
	{"cautions", nil},
	{"stops", func(w *Window) fyne.CanvasObject { return w.stops.object }},
	{"plate", func(w *Window) fyne.CanvasObject { return w.pages }},
	{"parts", func(w *Window) fyne.CanvasObject { return w.parts.object }},
	{"checks", func(w *Window) fyne.CanvasObject { return w.findings.object }},
	{"files", nil},
}

// guide leads a new maker round the window, card by card. The cards lie over
// the window and stop nobody from working in it.
type guide struct {
	w    *Window
	at   int // into guideSteps; -1: put away
	card *guideCard
}

func newGuide(w *Window) *guide {
	g := &guide{w: w, at: -1}
	g.card = newGuideCard(g)
	return g
}

// startGuide begins with the first card.
func (w *Window) startGuide() {
	w.guide.show(0)
	w.focus(w.guide.card.next)
}

// turn goes a card on or back. A button that is tapped gives up the keys, so
// they are brought back.
func (g *guide) turn(by int) {
	g.show(g.at + by)
	if g.at >= 0 {
		g.w.focus(g.card.next)
	}
}

// greet shows the guide at the first start of all, unless the maker came with a
// plan of their own: then it waits for a start without one.
func (w *Window) greet() {
	if !w.greets || w.store.Path() != "" || w.app.Preferences().Bool(guideSetting) {
		return
	}
	w.app.Preferences().SetBool(guideSetting, true)
	w.startGuide()
}

// show shows a card, or puts the guide away after the last.
func (g *guide) show(i int) {
	if i >= len(guideSteps) {
		g.end()
		return
	}
	g.at = i
	if g.step().pane != nil {
		g.w.showPage(platePage)
	}
	g.card.fill()
	g.card.Show()
	g.card.overlay.Refresh()
}

// end puts the guide away.
func (g *guide) end() {
	g.at = -1
	g.card.overlay.Refresh()
	g.w.focus(g.w.stops.add)
}

func (g *guide) step() guideStep { return guideSteps[g.at] }

// pane returns the pane that the card is about, or nil.
func (g *guide) pane() fyne.CanvasObject {
	if g.at < 0 || g.step().pane == nil {
		return nil
	}
	return g.step().pane(g.w)
}

// text returns the heading and the words of the card.
func (g *guide) text() (title, body string) {
	t := g.w.words.Text
	key := g.step().key
	title = t("guide.step", words.Args{"N": g.at + 1, "Of": len(guideSteps), "Title": t("guide.title." + key)})
	if g.at == 0 {
		return title, t("help.cautions")
	}
	return title, t("guide.text." + key)
}
