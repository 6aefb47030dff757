package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/ui/ink"
)

// wheel turns the wheel by notches at a position.
func (w *Window) wheel(at fyne.Position, notches float32) {
	w.plate.Scrolled(&fyne.ScrollEvent{
		PointEvent: fyne.PointEvent{Position: at}, Scrolled: fyne.NewDelta(0, 25*notches),
	})
}

func TestTheWheelZoomsAboutThePointer(t *testing.T) {
	const slack = 1e-3 // mm: positions are of single precision
	w := opened(t, withStops(0, 40))
	for _, at := range []fyne.Position{{X: 100, Y: 80}, w.onPlate(onRing(40)), {}} {
		w.plate.fit()
		under, scale := w.plate.place(at), w.plate.view().Scale
		for _, notches := range []float32{1, 5, -2, 0.3} {
			w.wheel(at, notches)
			assert.InDelta(t, 0, w.plate.place(at).Distance(under), slack, "what lies under the pointer stays there")
		}
		assert.Greater(t, w.plate.view().Scale, scale)
	}
}

func TestZoomHasItsLimits(t *testing.T) {
	w := opened(t, withStops(0))
	at := w.onPlate(onRing(0))
	w.wheel(at, 500)
	assert.InDelta(t, maxZoom, w.plate.zoom, 1e-9)
	under := w.plate.place(at)
	w.wheel(at, 500)
	assert.Equal(t, under, w.plate.place(at), "at the limit nothing moves")
	w.win.Canvas().Capture()
	w.wheel(at, -1000)
	assert.InDelta(t, minZoom, w.plate.zoom, 1e-9)
	w.win.Canvas().Capture()
}

func TestKeysZoom(t *testing.T) {
	w := opened(t, withStops(0))
	fit := w.plate.view()
	w.focus(w.plate)
	w.typeText("++")
	assert.Greater(t, w.plate.view().Scale, fit.Scale)
	w.typeText("---")
	assert.Less(t, w.plate.view().Scale, fit.Scale)
	w.typeText("0x")
	assert.Equal(t, fit, w.plate.view())
}

func TestKeysOnThePlate(t *testing.T) {
	w := opened(t, withStops(0, 40, 80))
	w.focus(w.plate)
	for _, c := range []struct {
		why    string
		key    fyne.KeyName
		angles []float64
		lead   int
	}{
		{"to the first", fyne.KeyDown, []float64{0, 40, 80}, 0},
		{"no further up", fyne.KeyUp, []float64{0, 40, 80}, 0},
		{"down", fyne.KeyDown, []float64{0, 40, 80}, 1},
		{"a step on", fyne.KeyRight, []float64{0, 40.5, 80}, 1},
		{"and back", fyne.KeyLeft, []float64{0, 40, 80}, 1},
		{"further back", fyne.KeyLeft, []float64{0, 39.5, 80}, 1},
		{"off the list: the next is selected", fyne.KeyDelete, []float64{0, 80}, 1},
		{"no further down", fyne.KeyDown, []float64{0, 80}, 1},
		{"off the list: the one before is selected", fyne.KeyBackspace, []float64{0}, 0},
		{"nothing selected", fyne.KeyEscape, []float64{0}, -1},
		{"nothing to nudge", fyne.KeyRight, []float64{0}, -1},
		{"nothing to remove", fyne.KeyDelete, []float64{0}, -1},
		{"up from nothing: the first", fyne.KeyUp, []float64{0}, 0},
		{"the last one", fyne.KeyDelete, []float64{}, -1},
		{"no list to go down", fyne.KeyDown, []float64{}, -1},
		{"no list to go up", fyne.KeyUp, []float64{}, -1},
	} {
		w.press(c.key)
		require.Equal(t, c.angles, w.angles(), c.why)
		require.Equal(t, c.lead, w.store.Selection().Lead, c.why)
	}
}

func TestNudgingMovesAllThatAreSelected(t *testing.T) {
	p := withStops(0.1, 40)
	w := opened(t, p)
	w.oneSided(0.1)
	w.store.SelectAllStops()
	w.focus(w.plate)
	w.press(fyne.KeyRight)
	w.press(fyne.KeyRight)
	assert.Equal(t, []float64{0.3, 40.2}, w.angles(), "no rounding of sums left over")
	w.store.Undo()
	assert.Equal(t, []float64{0.2, 40.1}, w.angles(), "each step is an edit")

	w.oneSided(0)
	w.press(fyne.KeyLeft)
	assert.Equal(t, []float64{0.1, 40}, w.angles(), "clicks that are free have a step for keys")
}

func TestANudgeOutOfRangeIsRefused(t *testing.T) {
	w := opened(t, withStops(0, 360))
	w.store.SelectStop(1)
	w.focus(w.plate)
	w.press(fyne.KeyRight)
	assert.Equal(t, []float64{0, 360}, w.angles())
	assert.Contains(t, w.status.Text, "360")
}

func TestKeysTurnTheTable(t *testing.T) {
	w := opened(t, withStops(-20, 0, 40))
	w.focus(w.plate)
	for _, c := range []struct {
		key  fyne.KeyName
		want geom.Angle
	}{
		{fyne.KeyPageDown, 40},
		{fyne.KeyPageDown, 40},
		{fyne.KeyPageUp, 0},
		{fyne.KeyPageUp, -20},
		{fyne.KeyHome, 0},
	} {
		w.press(c.key)
		assert.Equal(t, c.want, w.store.Turn())
	}
	w.typeText("..")
	assert.Equal(t, geom.Angle(1), w.store.Turn())
	w.typeText(",")
	assert.Equal(t, geom.Angle(0.5), w.store.Turn())
	assert.Equal(t, 0.5, w.turnbar.slider.Value)
	assert.Contains(t, w.turnbar.said.Text, "0.5°")
	w.turnbar.slider.SetValue(40)
	assert.Equal(t, geom.Angle(40), w.store.Turn())
	assert.Contains(t, w.turnbar.said.Text, "40°")
	assert.Empty(t, w.undoName(), "turning is no edit")
}

func TestAFalseClickIsTold(t *testing.T) {
	p := withStops(0, 40)
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 90, Radius: 105})
	w := opened(t, p)
	w.store.SetTurn(-50) // catch B stands over the seat of 40 degrees, cut for catch A
	assert.Contains(t, w.turnbar.said.Text, "A2")
	assert.Contains(t, w.turnbar.said.Text, "B")
	w.win.Canvas().Capture()
}

func TestThePlateShowsThatItHasTheKeys(t *testing.T) {
	w := opened(t, withStops(0))
	w.focus(w.plate)
	assert.Equal(t, ink.Light.Accent, w.plate.border.StrokeColor)
	w.focus(w.stops.add)
	assert.NotEqual(t, ink.Light.Accent, w.plate.border.StrokeColor)
}
