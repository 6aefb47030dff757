package ui

import (
	"image"
	"math"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/ui/units"
)

// withHole returns a plan with a hole in the base beside the seat at 0.
func withHole() plan.Plan {
	p := withStops(0, 40)
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.Hole, X: 60, Y: -40, Diameter: 5},
		{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 60, From: 100, To: 140, Width: 8},
	}
	return p
}

// A feature is selected by a click, by choosing it among the parts and by
// dragging it; then the plate marks and measures it instead of a stop.
func TestAFeatureIsSelectedAndMeasured(t *testing.T) {
	w := opened(t, withHole())
	w.store.SelectStop(0)
	without := slices.Clone(w.plate.paint(600, 600).(*image.RGBA).Pix)
	at := w.onPlate(geom.Point{X: 60, Y: -40})

	w.click(at, 0)
	assert.Equal(t, 0, w.store.Selection().Feature)
	assert.Empty(t, w.store.Selection().Stops, "one thing is selected at a time")
	assert.True(t, w.store.Marks().Selected.Features[0])
	assert.False(t, slices.Equal(without, w.plate.paint(600, 600).(*image.RGBA).Pix))

	s := w.section(t, "group.features")
	s.choose.pick.SetSelectedIndex(1)
	assert.Equal(t, 1, w.store.Selection().Feature)
	assert.Equal(t, map[int]bool{1: true}, w.store.Marks().Selected.Features)

	w.drag(desktop.MouseButtonPrimary, at, at.AddXY(8, 0), at.AddXY(16, 0))
	assert.Equal(t, 0, w.store.Selection().Feature)
	w.store.Undo()
	assert.InDelta(t, 60, w.store.Plan().Features[0].X, 1e-9)

	s.choose.item = 0
	s.choose.remove.OnTapped()
	s.choose.remove.OnTapped()
	assert.Equal(t, -1, w.store.Selection().Feature, "none is left to be selected")
}

// The figures are those of the plan, whichever way the part lies and in whatever
// units the window shows.
func TestFiguresOfAFeature(t *testing.T) {
	w := opened(t, withHole())
	figures := func(i int) []string {
		pl := w.store.Report().Plate
		var said []string
		for _, d := range featureDims(pl, pl.Features[i], w.words) {
			said = append(said, d.text)
		}
		return said
	}
	// The seat at 40 is at 67.49, 80.43 on the ring of 105; the bore is 8 wide.
	web := math.Hypot(105*math.Sin(40*math.Pi/180)-60, 105*math.Cos(40*math.Pi/180)+40) - 2.5 - w.store.Plan().Seat.Mouth()/2
	assert.Equal(t, []string{"X 60 mm", "Y −40 mm", w.words.Text("dim.web", words.Args{"Web": words.MM(web)}), "bore 65.61 mm"}, figures(0))
	assert.Equal(t, "R 60 mm", figures(1)[0])
	w.setUnits(units.Style{Lengths: units.Inches})
	assert.Equal(t, "X 2.3622 in", figures(0)[0])
	w.speak("de")
	assert.Equal(t, "X 2,3622 in", figures(0)[0])
}

// A click on a feature brings its sizes into sight.
func TestTheSizesOfAFeatureAreBroughtIntoSight(t *testing.T) {
	w := opened(t, withHole())
	w.win.Resize(fyne.NewSize(1024, 700))
	w.click(w.onPlate(geom.Point{X: 60, Y: -40}), 0)
	s := w.section(t, "group.features")
	driver := w.app.Driver()
	top := driver.AbsolutePositionForObject(w.parts.scroll).Y
	bottom := top + w.parts.scroll.Size().Height
	head := driver.AbsolutePositionForObject(s.head).Y
	assert.GreaterOrEqual(t, head, top)
	assert.Less(t, head+s.head.Size().Height, bottom)
}
