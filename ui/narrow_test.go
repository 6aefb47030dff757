package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"stopwright/assets/words"
)

// smallScreen is what the smallest screen leaves for the window's content, px:
// 800 by 600 less the menu, the title and a bar of the desktop's.
var smallScreen = fyne.NewSize(800, 520)

func TestTheWindowFitsTheSmallestScreen(t *testing.T) {
	w := opened(t, withStops(0, 22.5, 30, 45))
	for _, language := range words.Languages() {
		w.speak(language)
		for _, p := range w.pageList {
			w.showPage(p.id)
			least := w.win.Content().MinSize()
			assert.LessOrEqual(t, least.Width, smallScreen.Width, "%s %s", language, p.id)
			assert.LessOrEqual(t, least.Height, smallScreen.Height, "%s %s", language, p.id)
		}
	}
}
