package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/diskfile"
)

// begun returns the window of a program started with a plan, as [NewWindow]
// makes it, in an application that has been started before or not.
func begun(t *testing.T, a fyne.App, p plan.Plan) *Window {
	t.Helper()
	w := NewWindow(a, p)
	w.Show()
	w.win.Resize(fyne.NewSize(1180, 780))
	return w
}

func TestTheGuideIsShownOnce(t *testing.T) {
	a := test.NewTempApp(t)
	w := begun(t, a, withStops(0, 36))
	require.True(t, w.guide.card.Visible(), "at the first start")
	assert.Contains(t, texts(w.guide.card), w.words.Text("help.cautions"), "the cautions come first")
	for range guideSteps {
		w.press(fyne.KeySpace)
	}
	assert.False(t, w.guide.card.Visible(), "put away after the last card")
	assert.Same(t, w.stops.add, w.win.Canvas().Focused(), "ready for the first stop")
	assert.False(t, begun(t, a, withStops(0)).guide.card.Visible(), "not at the second start")
}

func TestTheGuideCanBeSkippedAndAskedFor(t *testing.T) {
	w := opened(t, withStops(0))
	assert.False(t, w.guide.card.Visible())
	w.choose(t, "menu.help", "menu.guide")
	require.True(t, w.guide.card.Visible())
	w.press(fyne.KeyEscape)
	assert.False(t, w.guide.card.Visible())
}

func TestTheGuideWaitsForAStartWithoutAPlanOfOnesOwn(t *testing.T) {
	a := test.NewTempApp(t)
	w := NewWindow(a, withStops(0))
	w.Opened(diskfile.File{Path: "/plans/mine" + planSuffix})
	w.Show()
	assert.False(t, w.guide.card.Visible())
	assert.True(t, begun(t, a, withStops(0)).guide.card.Visible())
}

// Each card lies within the window, off the pane it points at where there is
// room, and the pane is framed.
func TestCardsPointAtTheirPanes(t *testing.T) {
	for _, size := range []fyne.Size{{Width: 1024, Height: 700}, {Width: 1600, Height: 1000}} {
		w := opened(t, withStops(0))
		w.win.Resize(size)
		w.startGuide()
		d := fyne.CurrentApp().Driver()
		for i, step := range guideSteps {
			w.guide.show(i)
			c := w.guide.card
			at := d.AbsolutePositionForObject(c)
			assert.GreaterOrEqual(t, at.X, float32(0), step.key)
			assert.GreaterOrEqual(t, at.Y, float32(0), step.key)
			assert.LessOrEqual(t, at.X+c.Size().Width, w.win.Canvas().Size().Width, step.key)
			assert.LessOrEqual(t, at.Y+c.Size().Height, w.win.Canvas().Size().Height, step.key)
			assert.Equal(t, step.pane != nil, c.frame.Visible(), step.key)
			if step.pane == nil {
				continue
			}
			pane := step.pane(w)
			assert.Equal(t, d.AbsolutePositionForObject(pane), d.AbsolutePositionForObject(c.frame), step.key)
			assert.Equal(t, pane.Size(), c.frame.Size(), step.key)
			if pane.Size().Width < w.win.Canvas().Size().Width/3 {
				from := d.AbsolutePositionForObject(pane)
				apart := at.X >= from.X+pane.Size().Width || at.X+c.Size().Width <= from.X
				assert.True(t, apart, "the card of %s covers its pane", step.key)
			}
		}
	}
}

// The window can be worked in while a card lies on it.
func TestTheGuideStopsNobody(t *testing.T) {
	w := opened(t, withStops(0))
	w.startGuide()
	w.typeInto(w.stops.add, "36")
	w.press(fyne.KeyReturn)
	assert.Contains(t, w.angles(), 36.0)
	assert.True(t, w.guide.card.Visible())
	assert.Nil(t, w.overlay(), "nothing is asked")
}
