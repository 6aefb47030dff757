package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/preset"
)

// fullParts returns a plan with every section of the parts panel in use.
func fullParts() plan.Plan {
	p := withStops(0)
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	reference := 0.0
	p.Shop.Reference = &reference
	for _, kind := range []plan.Kind{plan.Hole, plan.Slot, plan.ArcSlot} {
		f := plan.Feature{Part: plan.PartBase, Kind: kind, X: 20, Y: 20, X2: 40, Y2: 40, Diameter: 5, Radius: 50, From: 100, To: 120, Width: 6}
		p.Features = append(p.Features, f)
	}
	return p
}

func TestEveryFieldIsExplained(t *testing.T) {
	discBase := fullParts()
	discBase.Base.Shape = plan.Disc
	for _, p := range []plan.Plan{fullParts(), discBase} {
		w := opened(t, p)
		for _, f := range w.fieldOrder {
			if f.Generic == "format" || f.Generic == "version" {
				continue // what the file is, not what the plate is
			}
			assert.True(t, w.words.Has("explain."+f.Generic), f.Generic)
			assert.True(t, w.words.Has("field."+f.Generic), f.Generic)
		}
	}
}

func TestComingToAFieldExplainsIt(t *testing.T) {
	w := opened(t, fullParts())
	strip := w.parts.explain
	assert.False(t, strip.object.Visible(), "nobody has asked yet")

	w.focus(w.field(t, "seat.depth"))
	require.True(t, strip.object.Visible())
	assert.Equal(t, w.words.Text("field.seat.depth"), strip.name.Text)
	assert.Equal(t, w.words.Text("explain.seat.depth"), strip.text.Text)
	assert.True(t, strip.figure.Visible(), "words are not enough for it")

	w.focus(w.field(t, "title"))
	assert.False(t, strip.figure.Visible(), "words are enough for a title")

	w.focus(find[*choice](w.fieldObject(t, "seat.form"))[0])
	assert.Equal(t, w.words.Text("explain.seat.form"), strip.text.Text, "a choice too")

	w.choose(t, "menu.view", "menu.explain")
	assert.False(t, strip.object.Visible(), "put away")
	w.focus(w.field(t, "seat.depth"))
	assert.False(t, strip.object.Visible(), "for good")
}

// A field that Tab leads to is brought into sight.
func TestTheFieldOneComesToIsInSight(t *testing.T) {
	w := opened(t, fullParts())
	w.win.Resize(fyne.NewSize(800, 500))
	for i := range w.parts.sections {
		w.parts.accordion.Open(i)
	}
	d := fyne.CurrentApp().Driver()
	for _, path := range []string{"catches[0].azimuth", "shop.humidity.high", "seat.diameter", "collar.screws.start"} {
		e := w.field(t, path)
		w.focus(e)
		top := d.AbsolutePositionForObject(e).Y
		from := d.AbsolutePositionForObject(w.parts.scroll).Y
		assert.GreaterOrEqual(t, top, from, path)
		assert.LessOrEqual(t, top+e.Size().Height, from+w.parts.scroll.Size().Height, path)
	}
}

func TestPresetsAreTakenAsOneEdit(t *testing.T) {
	w := opened(t, withStops(0))
	before := w.store.Plan()
	items := w.presetItems(preset.Catches())
	assert.Contains(t, items[0].Label, w.words.Text("preset.measure"), "said to be typical only")
	assert.True(t, items[0].Disabled)
	last := items[len(items)-1]
	assert.Equal(t, "Threaded plunger M12, 8 mm ball", last.Label)
	last.Action()
	assert.Equal(t, 8.0, w.store.Plan().Catch.BallDiameter)
	assert.Contains(t, w.status.Text, w.words.Text("preset.measure"))
	assert.Equal(t, "8", w.field(t, "catch.ball_diameter").Text)

	seats := w.presetItems(w.seatPresets())
	assert.Contains(t, seats[2].Label, "6 mm", "three quarters of the ball that is now in")
	w.store.Undo()
	assert.True(t, plan.Equal(before, w.store.Plan()))
}
