package ui

import (
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// onRing returns the place on the default ring at an azimuth.
func onRing(azimuth float64) geom.Point {
	s, c := math.Sincos(azimuth * math.Pi / 180)
	return geom.Point{X: 105 * s, Y: 105 * c}
}

// oneSided rounds clicks to a step, 0 to none, and adds one side only.
func (w *Window) oneSided(step float64) {
	v := w.store.View()
	v.BothSides, v.Snap = false, step
	w.store.SetView(v)
}

// A click on the ring adds the stop whose seat comes to lie under the pointer.
// Where that is on the paper follows from how each face is laid: from above as
// azimuths go, the turntable's underside mirrored.
func TestAClickOnTheRingAddsTheStopUnderThePointer(t *testing.T) {
	const azimuth = 40 // where a stop's seat is clicked, as it is drawn
	for _, c := range []struct {
		catchIn plan.Part
		sense   plan.Sense
		face    plan.Part // "": from above
		want    float64
	}{
		// The seats are in the base: the ball goes over it the way the table turns.
		{plan.PartTurntable, plan.Clockwise, "", 40},
		{plan.PartTurntable, plan.Clockwise, plan.PartBase, 40},
		{plan.PartTurntable, plan.Counterclockwise, "", -40},
		{plan.PartTurntable, plan.Counterclockwise, plan.PartBase, -40},
		// The seats are in the turntable, and come back to a ball that stays.
		{plan.PartBase, plan.Clockwise, "", -40},
		{plan.PartBase, plan.Counterclockwise, "", 40},
		// On its underside left and right change places.
		{plan.PartBase, plan.Clockwise, plan.PartTurntable, 40},
		{plan.PartBase, plan.Counterclockwise, plan.PartTurntable, -40},
	} {
		p := plan.Default()
		p.Arrangement = plan.Arrangement{CatchIn: c.catchIn, PositiveTurn: c.sense}
		w := opened(t, p)
		w.oneSided(0.5)
		v := w.store.View()
		v.Part = c.face
		w.store.SetView(v)
		at := w.onPlate(onRing(azimuth))
		w.click(at.AddXY(0.3, 0.3), 0) // a little beside: it is rounded to the step
		assert.Equal(t, []float64{c.want}, w.angles(), "catch in %s, %s, face %q", c.catchIn, c.sense, c.face)
		assert.Equal(t, 0, w.store.Selection().Lead, "the new stop is selected")

		// Its seat is drawn where the click was.
		w.plate.refreshScene()
		seat := w.plate.scene.fromPart(w.plate.scene.plate.SeatsPart, w.plate.scene.plate.Seats[0].Centre)
		assert.InDelta(t, 0, seat.Distance(onRing(azimuth)), 1e-6, "catch in %s, %s, face %q", c.catchIn, c.sense, c.face)
		w.store.Undo()
		assert.Empty(t, w.angles())
	}
}

// With the table turned on screen the seats of the turntable are turned with it.
func TestAClickOnTheRingOfATurnedTable(t *testing.T) {
	for _, catchIn := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		for _, sense := range []plan.Sense{plan.Clockwise, plan.Counterclockwise} {
			p := plan.Default()
			p.Arrangement = plan.Arrangement{CatchIn: catchIn, PositiveTurn: sense}
			w := opened(t, p)
			w.oneSided(0.5)
			w.store.SetTurn(25)
			w.click(w.onPlate(onRing(70)), 0)
			require.Len(t, w.angles(), 1)
			w.plate.refreshScene()
			sc := w.plate.scene
			seat := sc.fromPart(sc.plate.SeatsPart, sc.plate.Seats[0].Centre)
			assert.InDelta(t, 0, seat.Distance(onRing(70)), 1e-6, "%s %s", catchIn, sense)
		}
	}
}

func TestAClickIsRoundedToTheStepChosen(t *testing.T) {
	for _, c := range []struct{ step, want float64 }{{0.5, 33.5}, {5, 35}, {7.5, 30}} {
		w := opened(t, plan.Default())
		w.oneSided(c.step)
		w.click(w.onPlate(onRing(33.4)), 0)
		assert.Equal(t, []float64{c.want}, w.angles())
	}
	w := opened(t, plan.Default())
	w.oneSided(0)
	w.click(w.onPlate(onRing(33.4)), 0)
	assert.InDelta(t, 33.4, w.angles()[0], 1e-3, "free: as near as a position on the screen tells")
}

func TestAClickAddsTheOtherSideToo(t *testing.T) {
	w := opened(t, plan.Default())
	w.click(w.onPlate(onRing(40)), 0)
	w.click(w.onPlate(onRing(0)), 0)
	w.click(w.onPlate(onRing(180)), 0)
	both := map[float64]bool{}
	for _, s := range w.store.Plan().Stops {
		both[s.Angle] = s.BothSides
	}
	assert.Equal(t, map[float64]bool{40: true, 0: false, 180: false}, both)
}

func TestAClickOnAnotherRingIsForItsCatch(t *testing.T) {
	p := plan.Default()
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 180, Radius: 70})
	w := opened(t, p)
	w.oneSided(0.5)
	w.click(w.onPlate(onRing(-150).Scale(70.0/105)), 0)
	require.Len(t, w.store.Plan().Stops, 1)
	assert.Equal(t, plan.Stop{Angle: 30, Catches: []string{"B"}}, w.store.Plan().Stops[0])
}

func TestAClickOnASeatSelectsItsStop(t *testing.T) {
	w := opened(t, withStops(0, 40, 80))
	w.click(w.onPlate(onRing(40)), 0)
	assert.Equal(t, []int{1}, w.store.Selection().Stops)
	w.click(w.onPlate(onRing(80)), fyne.KeyModifierShift)
	w.click(w.onPlate(onRing(0)), fyne.KeyModifierShortcutDefault)
	assert.Equal(t, []int{0, 1, 2}, w.store.Selection().Stops)
	w.click(w.onPlate(onRing(40)), fyne.KeyModifierShift)
	assert.Equal(t, []int{0, 2}, w.store.Selection().Stops)
	assert.Len(t, w.angles(), 3, "nothing is added where a seat is")

	w.click(w.onPlate(geom.Point{X: 30, Y: 30}), 0)
	assert.Empty(t, w.store.Selection().Stops, "a click beside everything selects nothing")
}

// Zoomed in, a click well beside a seat may still be rounded to its stop. That
// one is meant, not a second like it.
func TestAClickRoundedToAStopThereIsSelectsIt(t *testing.T) {
	w := opened(t, withStops(0, 40))
	w.oneSided(5)
	w.wheel(w.onPlate(onRing(40)), 10)
	at := w.onPlate(onRing(42))
	w.click(at, 0)
	assert.Equal(t, []float64{0, 40}, w.angles())
	assert.Equal(t, []int{1}, w.store.Selection().Stops)
	w.plate.MouseMoved(mouse(at, 0, 0))
	assert.Contains(t, w.status.Text, "A2")
}

func TestOnlyTheMainButtonClicks(t *testing.T) {
	w := opened(t, plan.Default())
	at := w.onPlate(onRing(40))
	for _, b := range []desktop.MouseButton{desktop.MouseButtonSecondary, desktop.MouseButtonTertiary} {
		w.plate.MouseDown(mouse(at, b, 0))
		w.plate.MouseUp(mouse(at, b, 0))
	}
	w.plate.MouseDown(mouse(at, desktop.MouseButtonPrimary, 0))
	w.plate.MouseUp(mouse(at, desktop.MouseButtonSecondary, 0))
	assert.Empty(t, w.angles())
}

// The face without seats takes no clicks for stops.
func TestTheOtherPartsFaceHasNoRing(t *testing.T) {
	w := opened(t, withStops(0))
	v := w.store.View()
	v.Part = plan.PartTurntable
	w.store.SetView(v)
	w.click(w.onPlate(onRing(40)), 0)
	assert.Equal(t, []float64{0}, w.angles())
	assert.Empty(t, w.store.Selection().Stops)

	v = store.DefaultView()
	v.Layers = store.BasePart
	w.store.SetView(v)
	w.click(w.onPlate(onRing(40)), 0)
	assert.Equal(t, []float64{0}, w.angles(), "nor has a part that is hidden")
}

func TestAClickOnAFeatureShowsItsSizes(t *testing.T) {
	p := withStops(0)
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.Hole, X: -40, Diameter: 5},
		{Part: plan.PartBase, Kind: plan.Hole, X: 40, Diameter: 8, Label: "here"},
	}
	w := opened(t, p)
	w.click(w.onPlate(geom.Point{X: 40}), 0)
	assert.Equal(t, "here", w.field(t, "features[1].label").Text)
}

func TestThePointerIsToldWhatItPointsAt(t *testing.T) {
	p := withStops(0, 40)
	p.Features = []plan.Feature{{Part: plan.PartBase, Kind: plan.Hole, X: 40, Diameter: 8}}
	w := opened(t, p)
	w.oneSided(0.5)
	point := func(at geom.Point) string {
		w.plate.MouseMoved(mouse(w.onPlate(at), 0, 0))
		return w.status.Text
	}
	assert.Contains(t, point(onRing(40)), "A2", "a seat by its tag")
	assert.Contains(t, point(onRing(-30)), "−30°", "what a click would add")
	assert.True(t, w.plate.hover.angle.Visible())
	assert.Equal(t, "−30°", w.plate.hover.angle.Text)
	assert.Contains(t, point(geom.Point{X: 30, Y: 20}), "30", "the place")
	assert.False(t, w.plate.hover.angle.Visible())
	seen := map[string]bool{}
	for _, at := range []geom.Point{{X: 40}, {X: 130}, {X: 170, Y: 100}, {X: 20, Y: 20}} {
		seen[w.plateWords(point(at))] = true
	}
	assert.Len(t, seen, 4, "a feature, the rim, an edge and nothing are told apart")
	w.plate.MouseOut()
	assert.Empty(t, w.status.Text)
	w.plate.MouseIn(mouse(w.onPlate(onRing(-30)), 0, 0))
	assert.NotEmpty(t, w.status.Text)
	assert.Equal(t, desktop.CrosshairCursor, w.plate.Cursor())
}

// plateWords is a reading without its numbers.
func (w *Window) plateWords(reading string) string {
	out := []rune{}
	for _, r := range reading {
		if r < '0' || r > '9' {
			out = append(out, r)
		}
	}
	return string(out)
}

func TestAPlateThatIsNotLaidOutYetTakesClicks(t *testing.T) {
	w := opened(t, plan.Default())
	w.plate.Resize(fyne.NewSize(0, 0))
	assert.NotPanics(t, func() { w.click(fyne.NewPos(0, 0), 0) })
	assert.NotPanics(t, func() { w.plate.paint(0, 0) })
}
