package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

const (
	primary  = desktop.MouseButtonPrimary
	tertiary = desktop.MouseButtonTertiary // the wheel, pressed
)

func TestASeatSlidesAlongItsRingAsOneEdit(t *testing.T) {
	p := withStops(0, 40)
	p.Stops[1].BothSides = true
	w := opened(t, p)
	w.drag(primary, w.onPlate(onRing(40)), w.onPlate(onRing(42)), w.onPlate(onRing(47.3)), w.onPlate(onRing(55.2)))
	assert.Equal(t, []float64{0, 55}, w.angles(), "in the steps chosen")
	assert.Equal(t, []int{1}, w.store.Selection().Stops)

	w.drag(primary, w.onPlate(onRing(-55)), w.onPlate(onRing(-60)), w.onPlate(onRing(-70)))
	assert.Equal(t, []float64{0, 70}, w.angles(), "the other side takes its stop along")
	w.store.Undo()
	assert.Equal(t, []float64{0, 55}, w.angles())
	w.store.Undo()
	assert.Equal(t, []float64{0, 40}, w.angles())
	assert.Empty(t, w.undoName(), "two edits, however far each went")
}

// A drag that ends where it began is no edit; a drag off the ring follows the
// pointer's azimuth.
func TestADragThatComesBackIsNoEdit(t *testing.T) {
	w := opened(t, withStops(0, 40))
	at := w.onPlate(onRing(40))
	w.drag(primary, at, w.onPlate(onRing(60)), w.onPlate(onRing(60).Scale(0.5)), at)
	assert.Equal(t, []float64{0, 40}, w.angles())
	assert.Empty(t, w.undoName())
	assert.False(t, w.store.Unsaved())
}

// A seat that serves two stops, each with its own catch, is dragged for one of
// them, and that one's catch is meant.
func TestASeatSharedByTwoCatchesDoesNotJump(t *testing.T) {
	p := withStops(0, -90)
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 90, Radius: 105})
	p.Stops[1].Catches = []string{"B"}
	w := opened(t, p)
	require.Len(t, w.store.Report().Plate.Seats, 1)
	w.drag(primary, w.onPlate(onRing(0)), w.onPlate(onRing(3)), w.onPlate(onRing(5)))
	moved := 0
	for i, was := range []float64{0, -90} {
		if now := w.angles()[i]; now != was {
			assert.Equal(t, was+5, now)
			moved++
		}
	}
	assert.Equal(t, 1, moved)
}

func TestARingIsDraggedInAndOut(t *testing.T) {
	p := withStops(0)
	p.Catches = append(p.Catches,
		plan.Placement{Name: "B", Azimuth: 90, Radius: 105}, plan.Placement{Name: "C", Azimuth: 0, Radius: 60})
	w := opened(t, p)
	from := onRing(-120)
	w.drag(primary, w.onPlate(from), w.onPlate(from.Scale(100.0/105)), w.onPlate(from.Scale(95.2/105)))
	radii := []float64{}
	for _, c := range w.store.Plan().Catches {
		radii = append(radii, c.Radius)
	}
	assert.Equal(t, []float64{95, 95, 60}, radii, "every catch of the ring, in half millimetres")
	w.store.Undo()
	assert.Empty(t, w.undoName())
}

func TestEdgesAreDragged(t *testing.T) {
	collar := plan.NewCollar(plan.Default().Turntable)
	for _, c := range []struct {
		why      string
		change   func(*plan.Plan)
		from, to geom.Point
		want     func(plan.Plan) (got, want float64)
	}{
		{
			"the turntable", func(*plan.Plan) {},
			geom.Point{X: 130},
			geom.Point{X: 140},
			func(p plan.Plan) (float64, float64) { return p.Turntable.Diameter, 280 },
		},
		{
			"the collar", func(p *plan.Plan) { p.Collar = &collar },
			geom.Point{Y: -155},
			geom.Point{Y: -158},
			func(p plan.Plan) (float64, float64) { return p.Collar.OutsideDiameter, 316 },
		},
		{
			"the base's right side", func(*plan.Plan) {},
			geom.Point{X: 170, Y: 20},
			geom.Point{X: 175, Y: 20},
			func(p plan.Plan) (float64, float64) { return p.Base.Width, 350 },
		},
		{
			"the base's near side", func(*plan.Plan) {},
			geom.Point{X: 20, Y: -160},
			geom.Point{X: 20, Y: -150},
			func(p plan.Plan) (float64, float64) { return p.Base.Depth, 300 },
		},
		{
			"a round base", func(p *plan.Plan) { p.Base.Shape = plan.Disc },
			geom.Point{X: 170},
			geom.Point{X: 160},
			func(p plan.Plan) (float64, float64) { return p.Base.Diameter, 320 },
		},
	} {
		p := withStops(0)
		c.change(&p)
		w := opened(t, p)
		from, to := w.onPlate(c.from), w.onPlate(c.to)
		w.drag(primary, from, fyne.NewPos((from.X+to.X)/2, (from.Y+to.Y)/2), to)
		got, want := c.want(w.store.Plan())
		assert.InDelta(t, want, got, 1, "%s, to the mm", c.why)
		w.store.Undo()
		assert.Equal(t, p, w.store.Plan(), "%s: one edit", c.why)
	}
}

// A size can be dragged to nothing and beyond; what the plan refuses is told
// and not done.
func TestADragBeyondAllBounds(t *testing.T) {
	w := opened(t, withStops(0))
	for _, from := range []geom.Point{{X: 130}, {X: 170, Y: 20}, onRing(-120)} {
		at := w.onPlate(from)
		w.drag(primary, at, w.onPlate(geom.Point{}), w.onPlate(from.Scale(-3)), w.onPlate(from.Scale(1000)))
		assert.NoError(t, plan.Validate(w.store.Plan()))
		w.win.Canvas().Capture()
		w.store.Load(withStops(0), "")
	}
}

func TestFeaturesAreDragged(t *testing.T) {
	for _, c := range []struct {
		why      string
		was, now plan.Feature
		from, to geom.Point
	}{
		{
			"a hole",
			plan.Feature{Kind: plan.Hole, X: 40, Y: 10, Diameter: 8},
			plan.Feature{Kind: plan.Hole, X: 50, Y: -5, Diameter: 8},
			geom.Point{X: 40, Y: 10},
			geom.Point{X: 50, Y: -5},
		},
		{
			"a slot, both ends together",
			plan.Feature{Kind: plan.Slot, X: 40, Y: 10, X2: 60, Y2: 10, Width: 8},
			plan.Feature{Kind: plan.Slot, X: 40, Y: 20, X2: 60, Y2: 20, Width: 8},
			geom.Point{X: 50, Y: 10},
			geom.Point{X: 50, Y: 20},
		},
		{
			"a curved slot, round and out",
			plan.Feature{Kind: plan.ArcSlot, Radius: 60, From: -30, To: 30, Width: 8},
			plan.Feature{Kind: plan.ArcSlot, Radius: 70, From: 0, To: 60, Width: 8},
			onRing(0).Scale(60.0 / 105),
			onRing(30).Scale(70.0 / 105),
		},
	} {
		for _, part := range []plan.Part{plan.PartBase, plan.PartTurntable} {
			c.was.Part, c.now.Part = part, part
			p := plan.Default()
			p.Features = []plan.Feature{c.was}
			w := opened(t, p)
			w.drag(primary, w.onPlate(c.from), w.onPlate(c.from.Add(geom.Point{X: 3})), w.onPlate(c.to))
			assert.Equal(t, c.now, w.store.Plan().Features[0], "%s of the %s", c.why, part)
			w.store.Undo()
			assert.Equal(t, c.was, w.store.Plan().Features[0], "%s: one edit", c.why)
		}
	}
}

// Along its rim the table turns, with the pointer: not an edit.
func TestTheTableIsTurnedByItsRim(t *testing.T) {
	for sense, want := range map[plan.Sense]float64{plan.Clockwise: 20, plan.Counterclockwise: -20} {
		p := withStops(0)
		p.Arrangement.PositiveTurn = sense
		w := opened(t, p)
		rim := func(az float64) fyne.Position { return w.onPlate(onRing(az).Scale(130.0 / 105)) }
		w.drag(primary, rim(90), rim(95), rim(103), rim(110))
		assert.InDelta(t, want, w.store.Turn().Degrees(), 1e-3, sense)
		assert.Empty(t, w.undoName())
		w.drag(primary, rim(170), rim(175), rim(-175))
		assert.InDelta(t, want*1.75, w.store.Turn().Degrees(), 1e-3, "on over half a turn")
	}
}

func TestThePaperIsDraggedAbout(t *testing.T) {
	w := opened(t, withStops(0, 40))
	for why, from := range map[string]geom.Point{"beside everything": {X: 30, Y: 30}, "by the wheel's button, on a seat": onRing(40)} {
		button := primary
		if from != (geom.Point{X: 30, Y: 30}) {
			button = tertiary
		}
		before := w.onPlate(from)
		w.drag(button, before, before.AddXY(10, 5), before.AddXY(60, -20))
		after := w.onPlate(from)
		assert.InDelta(t, before.X+60, after.X, 0.01, why)
		assert.InDelta(t, before.Y-20, after.Y, 0.01, why)
		assert.Equal(t, []float64{0, 40}, w.angles(), why)
		assert.Empty(t, w.undoName(), why)
	}
	w.plate.fit()
	assert.Equal(t, w.onPlate(geom.Point{}), w.plate.position(geom.Point{}))
	assert.Equal(t, fyne.Delta{}, w.plate.pan)
}
