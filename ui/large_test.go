package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// everything looks at a plan in every way and edits it.
func (w *Window) everything(t testing.TB) {
	t.Helper()
	for i := range w.tools.face.Options {
		w.tools.face.SetSelectedIndex(i)
		w.plate.paint(300, 300)
	}
	w.tools.face.SetSelectedIndex(0)
	w.showPage(chartPage)
	w.chart.paint(300, 424)
	w.showPage(platePage)
	w.store.SelectAllStops()
	w.win.Canvas().Capture()
	w.plate.MouseMoved(mouse(w.onPlate(onRing(33)), 0, 0))
	require.NoError(t, w.addStops(plan.Stop{Angle: 33.3}))
	w.win.Canvas().Capture()
	w.undo()
}

func TestFiveThousandStops(t *testing.T) {
	p := plan.Default()
	for i := range 5000 {
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(i)*360/5000 - 180})
	}
	w := opened(t, p)
	w.everything(t)
	w.stops.list.ScrollToBottom()
	w.typeInto(w.row(t, 4999).angle, "179.99")
	w.press(fyne.KeyReturn)
	assert.Equal(t, 179.99, w.angles()[4999])
}

func TestNoStops(t *testing.T) {
	w := opened(t, plan.Default())
	w.everything(t)
	assert.Empty(t, w.angles())
	assert.Empty(t, find[*stopRow](w.stops.list))
	w.choose(t, "menu.edit", "menu.remove")
	w.choose(t, "menu.edit", "menu.all")
	w.choose(t, "menu.edit", "menu.sort")
	assert.Empty(t, w.undoName())
}

func TestPlansAtTheEndsOfTheirRanges(t *testing.T) {
	for why, change := range map[string]func(*plan.Plan){
		"the least table": func(p *plan.Plan) {
			p.Turntable.Diameter, p.Turntable.PivotBore, p.Catches[0].Radius = 0.1, 0, 0.1
			p.Base.Width, p.Base.Depth = 0.1, 0.1
		},
		"the largest": func(p *plan.Plan) {
			p.Turntable.Diameter, p.Catches[0].Radius = 10000, 10000
			p.Base.Width, p.Base.Depth = 10000, 10000
		},
		"a ring beyond all edges":   func(p *plan.Plan) { p.Catches[0].Radius = 10000 },
		"a table that cannot turn":  func(p *plan.Plan) { p.Travel = plan.Span{} },
		"a travel without zero":     func(p *plan.Plan) { p.Travel = plan.Span{From: 350, To: 360} },
		"a seat larger than all":    func(p *plan.Plan) { p.Seat.Diameter, p.Seat.Chamfer = 100, 50 },
		"a slot across everything":  func(p *plan.Plan) { p.Features = []plan.Feature{slot()} },
		"a title of many languages": func(p *plan.Plan) { p.Title, p.Notes = "六角 ☃ ستة", "a\n\tb" },
	} {
		p := withStops(0, 36)
		change(&p)
		require.NoError(t, plan.Validate(p), why)
		assert.NotPanics(t, func() { opened(t, p).everything(t) }, why)
	}
}

// slot is as long as a plan may have it.
func slot() plan.Feature {
	return plan.Feature{
		Part: plan.PartBase, Kind: plan.Slot, X: -10000, Y: -10000, X2: 10000, Y2: 10000, Width: 10000,
	}
}

// The window fits the smallest screen it is meant for, and fills a large one.
func TestWindowsOfAnySize(t *testing.T) {
	w := opened(t, withStops(0, 36))
	least := w.win.Content().MinSize()
	assert.LessOrEqual(t, least.Width, float32(1024))
	assert.LessOrEqual(t, least.Height, float32(700))
	for _, size := range []fyne.Size{least, {Width: 3000, Height: 1800}} {
		w.win.Resize(size)
		w.win.Canvas().Capture()
		assert.GreaterOrEqual(t, w.plate.Size().Width, float32(240))
	}
}
