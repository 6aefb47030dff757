package ui

import (
	"image"
	"image/color"
	"strconv"
	"testing"

	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/ink"
)

// colours returns how many pixels of a picture have each colour.
func colours(img image.Image) map[color.RGBA]int {
	out := map[color.RGBA]int{}
	b := img.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			r, g, bl, a := img.At(x, y).RGBA()
			out[color.RGBA{uint8(r >> 8), uint8(g >> 8), uint8(bl >> 8), uint8(a >> 8)}]++
		}
	}
	return out
}

// chartButtons returns the buttons that turn the sheets of the chart.
func (w *Window) chartButtons(t testing.TB) (back, on *widget.Button) {
	t.Helper()
	var b []*widget.Button
	for _, button := range find[*widget.Button](w.chart.object) {
		if button.Text == "" {
			b = append(b, button)
		}
	}
	require.Len(t, b, 2)
	return b[0], b[1]
}

func TestSheetsOfTheChartAreTurned(t *testing.T) {
	w := opened(t, many(200))
	w.choose(t, "menu.view", "page.chart")
	require.Equal(t, chartPage, w.page())
	n := len(w.chart.pages)
	require.Greater(t, n, 2, "200 seats take several sheets")
	back, on := w.chartButtons(t)
	tap(back)
	assert.Equal(t, 0, w.chart.at, "there is none before the first")
	seen := []image.Image{}
	for range n + 2 {
		seen = append(seen, w.chart.paint(400, 600))
		w.chart.canvas = ink.New(0, 0) // else the next is painted over this one
		tap(on)
	}
	assert.Equal(t, n-1, w.chart.at, "nor one after the last")
	assert.NotEqual(t, seen[0], seen[1])
	assert.Contains(t, w.chart.number.Text, strconv.Itoa(n))

	// A plan that needs fewer sheets shows the last it has.
	require.NoError(t, w.store.Edit("few", func(p *plan.Plan) { p.Stops = p.Stops[:2] }))
	assert.Less(t, w.chart.at, len(w.chart.pages))
	w.chart.paint(400, 600)
	w.choose(t, "menu.view", "page.plate")
	assert.Equal(t, platePage, w.page())
	assert.Same(t, w.plate, w.win.Canvas().Focused())
}

func TestTheChartIsOnThePaperChosen(t *testing.T) {
	w := opened(t, withStops(0, 36))
	w.showPage(chartPage)
	selects := find[*widget.Select](w.chart.object)
	require.Len(t, selects, 1)
	tall := w.chart.pages[0]
	selects[0].SetSelected("Letter")
	assert.InDelta(t, 215.9, w.chart.pages[0].Width, 1e-9, "mm, ANSI Y14.1")
	assert.NotEqual(t, tall.Height, w.chart.pages[0].Height)
}

func TestTheChartFollowsThePlan(t *testing.T) {
	w := opened(t, withStops(0, 36))
	w.showPage(chartPage)
	before := w.chart.pages
	require.NoError(t, w.addStops(plan.Stop{Angle: 50}))
	assert.NotEqual(t, before, w.chart.pages, "it is made anew while it is looked at")
	w.showPage(platePage)
	require.NoError(t, w.addStops(plan.Stop{Angle: 60}))
	assert.Nil(t, w.chart.pages, "and not before it is looked at again")
	w.showPage(chartPage)
	assert.NotNil(t, w.chart.pages)
}

func TestAPageIsMadeWhenItIsFirstTurnedTo(t *testing.T) {
	w := opened(t, withStops(0, 36))
	made := func() (ids []pageID) {
		for _, p := range w.pageList {
			if p.object != nil {
				ids = append(ids, p.id)
			}
		}
		return ids
	}
	require.Equal(t, []pageID{platePage}, made(), "at the start only what is seen")

	require.NoError(t, w.store.Edit("drill", func(p *plan.Plan) { p.Shop.Method = plan.MethodRouterTight }))
	w.showPage(truthPage)
	require.Equal(t, []pageID{platePage, truthPage}, made())
	assert.Contains(t, w.truth.method.Text, w.words.Text("choice."+plan.MethodRouterTight), "the plan as it is now")
	assert.Equal(t, w.pages.Selected().Content.Size(), w.truth.object.Size(), "as large as its place")
	first := w.truth

	w.speak("de")
	require.Equal(t, []pageID{platePage, truthPage}, made(), "made anew in the other language, and only what was seen")
	assert.NotSame(t, first, w.truth)
	assert.Contains(t, w.truth.method.Text, w.words.Text("choice."+plan.MethodRouterTight))
	for _, p := range w.pageList {
		w.showPage(p.id)
	}
	assert.Len(t, made(), len(w.pageList))
}

func TestAPageMadeLateShowsThePlanAsItIs(t *testing.T) {
	w := opened(t, withStops(0, 15, 30))
	require.NoError(t, w.store.Edit("wider", func(p *plan.Plan) { p.Seat.Diameter = 4.8 }))
	w.showPage(clickPage)
	assert.InDelta(t, 2.4, w.clicks.click.Contour().Mouth(), 1e-9, "half of what was typed before it was made")
	require.NoError(t, w.store.Replace("another", withStops(0, 45)))
	w.showPage(truthPage)
	assert.Contains(t, w.truth.says.Text, "Stop 45°, the least true")
	w.showPage(chartPage)
	assert.NotEmpty(t, w.chart.pages)
	w.store.Undo()
	assert.Contains(t, w.truth.says.Text, "Stop 45°", "what is out of sight waits")
	w.showPage(truthPage)
	assert.NotContains(t, w.truth.says.Text, "45°")
}
