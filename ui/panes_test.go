package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"github.com/stretchr/testify/assert"
)

// A display of 1600 × 1000 at 200 % leaves 800 × 500 px of layout: the window
// fits, in every look, and nothing reaches over its edge.
func TestTheWindowFitsASmallScreenAtTwiceTheSize(t *testing.T) {
	small := fyne.NewSize(800, 500)
	for look := range palettes {
		w := newWindow(test.NewTempApp(t), fullParts(), look)
		w.Show()
		// The toolkit keeps its padding free all round, and the menu bar above.
		const menuBar = 30
		least := w.win.Content().MinSize().AddWidthHeight(2*theme.Padding(), 2*theme.Padding()+menuBar)
		assert.LessOrEqual(t, least.Width, small.Width, look)
		assert.LessOrEqual(t, least.Height, small.Height, look)
		w.win.Resize(small)
		w.startGuide()
		for i := range guideSteps {
			w.guide.show(i)
			c := w.guide.card
			assert.LessOrEqual(t, c.Position().Y+c.Size().Height, w.win.Content().Size().Height, guideSteps[i].key)
		}
	}
}

func TestTheBarBetweenPlateAndChecksIsDragged(t *testing.T) {
	w := opened(t, withStops(0))
	bars := find[*splitBar](w.win.Content())
	assert.Len(t, bars, 1)
	bar := bars[0]
	height := w.findings.object.Size().Height
	bar.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(0, -50)})
	assert.Equal(t, height+50, w.findings.object.Size().Height)
	bar.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(0, 5000)})
	assert.GreaterOrEqual(t, w.findings.object.Size().Height, w.findings.object.MinSize().Height, "the checks stay in sight")
	bar.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(0, -5000)})
	assert.GreaterOrEqual(t, w.pages.Size().Height, w.pages.MinSize().Height, "so does the plate")
	bar.DragEnd()
}

func TestALargerWindowGivesItsHeightToThePlate(t *testing.T) {
	w := opened(t, withStops(0))
	w.win.Resize(fyne.NewSize(1600, 1000))
	plate, checks := w.pages.Size().Height, w.findings.object.Size().Height
	w.win.Resize(fyne.NewSize(1600, 1200))
	assert.InDelta(t, 200, w.pages.Size().Height-plate, 0.5, "all of it")
	assert.InDelta(t, checks, w.findings.object.Size().Height, 0.5)
	w.win.Resize(fyne.NewSize(1024, 500))
	assert.Less(t, w.findings.object.Size().Height, checks, "a low one takes from both")

	w.win.Resize(fyne.NewSize(1600, 1000))
	bar := find[*splitBar](w.win.Content())[0]
	bar.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(0, -150)})
	w.win.Resize(fyne.NewSize(1600, 1200))
	assert.InDelta(t, checks+150, w.findings.object.Size().Height, 0.5, "what was dragged to stays")
}
