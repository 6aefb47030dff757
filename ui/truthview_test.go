package ui

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// truly opens the trueness page of the demonstration.
func truly(t *testing.T, change func(*plan.Plan)) *Window {
	t.Helper()
	p, err := Example("sanding-table")
	require.NoError(t, err)
	change(&p)
	w := opened(t, p)
	w.choose(t, "menu.view", "page.truth")
	require.Equal(t, truthPage, w.page())
	return w
}

func TestTheTruenessPageSaysHowTrueAStopIs(t *testing.T) {
	w := truly(t, func(*plan.Plan) {})
	assert.Contains(t, w.truth.says.Text, "Stop 15°, the least true")
	assert.Contains(t, w.truth.says.Text, "within 0.186° of its angle once the table is set to zero at 0°")
	assert.Contains(t, w.truth.says.Text, "65 %, is where seats land")
	assert.Contains(t, w.truth.says.Text, "within the target of 0.25°")
	assert.Contains(t, w.truth.all.Text, "of plates had every stop within the target", "the study is done")
	assert.Contains(t, w.truth.jointly.Text, "gapes 0.55 mm at a corner and 2.21 mm at the last")
	assert.Contains(t, w.truth.yearly.Text, "the table turns all year")

	w.store.SelectStop(0)
	assert.Contains(t, w.truth.says.Text, "set to zero at stop 0°", "the stop selected is shown")
	w.store.SelectStop(3)
	assert.Contains(t, w.truth.says.Text, "Stop 30°, of those chosen")

	require.NoError(t, w.store.Edit("closer", func(p *plan.Plan) { p.Shop.Target = 0.1 }))
	assert.Contains(t, w.truth.says.Text, "The target is 0.1°.")
	assert.Contains(t, w.truth.says.Text, "reach the target with")
}

func TestTheTruenessPageHasAlwaysSomethingToSay(t *testing.T) {
	for why, c := range map[string]struct {
		change func(*plan.Plan)
		want   string
	}{
		"no stop":              {func(p *plan.Plan) { p.Stops = nil }, "no stop yet"},
		"a ball that falls in": {func(p *plan.Plan) { p.Seat.Diameter, p.Seat.Depth = 8, 0 }, "does not click"},
		"one stop":             {func(p *plan.Plan) { p.Stops = p.Stops[:1] }, "off by nothing"},
		"no collar":            {func(p *plan.Plan) { p.Collar = nil }, "no collar"},
		"a table that binds":   {func(p *plan.Plan) { p.Turntable.Material = "beech" }, "binds"},
		"an unknown wood":      {func(p *plan.Plan) { p.Turntable.Material = "bog oak" }, "No source says"},
		"hopeless cuts":        {func(p *plan.Plan) { p.Shop.SeatError = 30 }, "would not close"},
	} {
		w := truly(t, c.change)
		v := w.truth
		assert.Contains(t, v.says.Text+v.jointly.Text+v.yearly.Text, c.want, why)
		for _, s := range []*sketch{v.causes, v.spread, v.joint, v.season} {
			assert.NotPanics(t, func() { s.generate(300, 240) }, why)
			assert.NotPanics(t, func() { s.generate(1, 1) }, why)
		}
	}
}

func TestAFrameOfMoreSides(t *testing.T) {
	w := truly(t, func(p *plan.Plan) { p.Shop.StockWidth = 50 })
	w.truth.sides.SetSelectedIndex(8 - fewestSides)
	assert.Contains(t, w.truth.jointly.Text, "a frame of 8 sides from stock 50 mm wide")
	w.truth.wanted.SetText("0.4")
	assert.Contains(t, w.truth.jointly.Text, "within 0.4 mm each cut must be true to 0.026°", "0.4/54.1/16")
	w.truth.wanted.SetText("much")
	assert.Contains(t, w.truth.jointly.Text, "is no gap")
}

func TestAWayToPlaceHolesIsChosen(t *testing.T) {
	w := truly(t, func(*plan.Plan) {})
	items := w.methodItems()
	assert.True(t, items[0].Disabled, "what the figures are worth is said first")
	items[len(items)-1].Action()
	p := w.store.Plan()
	assert.Equal(t, plan.MethodRouterTight, p.Shop.Method)
	assert.Equal(t, 0.05, p.Shop.SeatError)
	assert.Equal(t, 0.05, p.Shop.CatchError)
	w.store.Undo()
	assert.Equal(t, 0.2, w.store.Plan().Shop.SeatError)
}

func TestExaggeration(t *testing.T) {
	for share, want := range map[float64]float64{0.3: 1, 0.2: 1, 0.15: 2, 0.05: 5, 0.01: 20, 0.0006: 500, 0: 1} {
		assert.InDelta(t, want, exaggeration(share), 1e-9, "%v", share)
	}
}

func TestPercent(t *testing.T) {
	for share, want := range map[float64]string{0: "0 %", 0.001: "< 1 %", 0.5: "50 %", 0.999: "> 99 %", 1: "100 %"} {
		assert.Equal(t, want, percent(share))
	}
	assert.Equal(t, "1\u00a0015\u00a0808", grouped(1015808))
	assert.Equal(t, "16", grouped(16))
}

// typedInto types into one of the fields of the sheet that is open.
func typedInto(t *testing.T, w *Window, n int, text string) {
	t.Helper()
	fields := find[*sheetEntry](w.overlay())
	require.Greater(t, len(fields), n)
	fields[n].SetText(text)
}

func TestOwnDrillingIsMeasured(t *testing.T) {
	w := truly(t, func(*plan.Plan) {})
	w.choose(t, "menu.edit", "menu.truth.coupon")
	typedInto(t, w, 0, "0.1 0.2")
	w.sheets[0].enter()
	assert.Len(t, w.sheets, 1, "two holes are too few")
	typedInto(t, w, 0, "0.3 0.3; 0.3 0,3")
	w.sheets[0].enter()
	assert.Empty(t, w.sheets)
	// √2·0.3 is more than 0.3·9/8.
	p := w.store.Plan()
	assert.InDelta(t, 0.42426, p.Shop.SeatError, 1e-5)
	assert.InDelta(t, 0.42426, p.Shop.CatchError, 1e-5)
	assert.Equal(t, plan.MethodMeasured, p.Shop.Method)
}

// typed is a length as it is typed, to a ten-thousandth.
func typed(mm float64) string { return measure.Trim(mm, 4) }

func TestASeatIsTakenDownAsDrilled(t *testing.T) {
	w := truly(t, func(*plan.Plan) {})
	seats := w.store.Report().Plate.Seats
	w.choose(t, "menu.edit", "menu.truth.drilled")
	at := geom.Polar(105.2, seats[0].Azimuth+0.3)
	typedInto(t, w, 0, typed(at.X))
	typedInto(t, w, 1, typed(at.Y))
	steps, _ := w.store.CanUndo()
	w.sheets[0].enter()
	require.Len(t, w.sheets, 1, "the next seat is asked about")
	w.sheets[0].escape()

	require.Len(t, w.store.Plan().AsDrilled, 1)
	d := w.store.Report().Plate.Drilled[0]
	assert.InDelta(t, 0.3, d.Off.Degrees(), 1e-3)
	assert.InDelta(t, 0.2, d.Radial, 1e-3)
	assert.Contains(t, w.truth.drilled.Text, "−54° (A): really −53.7°, 0.3° off, 0.2 mm off the ring")
	now, _ := w.store.CanUndo()
	assert.Equal(t, steps, now, "a log makes no step to undo")
	assert.Equal(t, seats[0].Centre, w.store.Report().Plate.Seats[0].Centre, "the plan stays")

	// Again: the entry is replaced.
	w.askDrilled(0)
	typedInto(t, w, 0, typed(at.X))
	w.sheets[0].enter()
	w.sheets[0].escape()
	assert.Len(t, w.store.Plan().AsDrilled, 1)
	w.askDrilled(1)
	w.answer(t, "drilled.clear")
	assert.Len(t, w.store.Plan().AsDrilled, 1, "there is nothing of this seat to forget")
	w.sheets[0].escape()
	w.askDrilled(0)
	w.answer(t, "drilled.clear")
	assert.Empty(t, w.store.Plan().AsDrilled)
}

func TestASeatIsMeasuredOverPins(t *testing.T) {
	w := truly(t, func(*plan.Plan) {})
	seats := w.store.Report().Plate.Seats
	s := w.askDrilled(1)
	require.NotNil(t, s)
	s.by.SetSelectedIndex(byPins)
	at := geom.Polar(105, seats[1].Azimuth+0.2)
	for key, mm := range map[string]float64{
		"drilled.pivotpin": 8, "drilled.pins": 4.5, "drilled.pivot": 105 + 6.25,
		"drilled.over": at.Distance(seats[0].Centre) + 4.5,
	} {
		s.entry[key].SetText(typed(mm))
	}
	assert.Contains(t, s.says.Text, "0.2° off its stop")
	s.entry["drilled.over"].SetText("500")
	assert.False(t, s.ready, "no place has both distances")
	assert.Contains(t, s.why.label.Text, "No place has both distances")
}

func TestATrialIsAPlanOfItsOwn(t *testing.T) {
	w := truly(t, func(*plan.Plan) {})
	w.choose(t, "menu.file", "menu.truth.trial")
	typedInto(t, w, 0, "1")
	w.sheets[0].enter()
	assert.Len(t, w.sheets, 1, "the plate itself is no trial")
	typedInto(t, w, 0, "1/2")
	w.sheets[0].enter()
	p := w.store.Plan()
	assert.Equal(t, 0.5, p.Scale)
	assert.Equal(t, 130.0, p.Turntable.Diameter)
	assert.Empty(t, w.store.Path())
	assert.True(t, w.store.Unsaved(), "no file holds it")
	assert.Contains(t, w.win.Title(), "trial at 1:2")
	assert.Contains(t, w.status.Text, "trial at 1:2")
	w.store.Undo()
	assert.Equal(t, 0.5, w.store.Plan().Scale, "there is nothing of the other plan to go back to")
}
