package ui

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/detent/room"
	"stopwright/ui/ink"
)

// mitred is a 240 mm table with mitres that do not fit on one ring.
func mitred() plan.Plan {
	p := plan.NewPlan()
	p.Turntable.Diameter, p.Catches[0].Radius = 240, 100
	p.Travel = plan.Span{From: -60, To: 60}
	p.Stops = []plan.Stop{{Angle: 0}}
	for _, a := range []float64{15, 22.5, 30, 31.6, 45} {
		p.Stops = append(p.Stops, plan.Stop{Angle: a, BothSides: true})
	}
	return p
}

// roomy opens the room page of a plan.
func roomy(t *testing.T, p plan.Plan) *Window {
	t.Helper()
	w := opened(t, p)
	w.choose(t, "menu.view", "page.room")
	require.Equal(t, roomPage, w.page())
	return w
}

// card returns the first card of a kind.
func (w *Window) card(t *testing.T, k room.Kind) *roomCard {
	t.Helper()
	i := slices.IndexFunc(w.room.all, func(c *roomCard) bool { return c.room.Kind == k })
	require.GreaterOrEqual(t, i, 0, "there is a card for %s", k)
	return w.room.all[i]
}

// wrong reports whether a check finds an error in the plan as it is.
func (w *Window) wrong() bool {
	worst, _ := w.store.Report().Worst()
	return worst == check.Error
}

func TestAnAnswerIsTakenWithOneClick(t *testing.T) {
	for _, take := range map[string]func(c *roomCard){
		"a click": func(c *roomCard) { test.Tap(c) },
		"Enter":   func(c *roomCard) { c.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) },
	} {
		w := roomy(t, mitred())
		require.True(t, w.wrong())
		before := w.store.Plan()
		take(w.card(t, room.SharedRing))
		assert.False(t, w.wrong())
		assert.Len(t, w.store.Plan().Catches, 2)
		assert.Contains(t, w.status.Text, "Shared ring")
		assert.Contains(t, texts(w.card(t, room.SharedRing).object), "the plan as it is")
		name, _ := w.store.CanUndo()
		assert.Equal(t, "Make room: Shared ring", name)
		w.store.Undo()
		assert.True(t, plan.Equal(before, w.store.Plan()), "one edit")
	}
}

func TestPointingAtAnAnswerShowsIt(t *testing.T) {
	w := roomy(t, mitred())
	picture := func() []uint8 {
		w.room.picture.generate(300, 240)
		return slices.Clone(w.room.picture.canvas.Img.Pix)
	}
	asItIs := picture()
	assert.Contains(t, w.room.detail.Text, "The plan as it is: 1 catch, 11 seats")
	c := w.card(t, room.Rings)
	c.MouseIn(&desktop.MouseEvent{})
	assert.NotEqual(t, asItIs, picture())
	assert.Contains(t, w.room.detail.Text, "Catch B at azimuth 180°, ring 93.5 mm.")
	assert.Equal(t, mitred().Catches, w.store.Plan().Catches, "nothing is changed yet")
	c.MouseOut()
	assert.Equal(t, asItIs, picture())
	w.focus(c)
	assert.NotEqual(t, asItIs, picture(), "by keys as well")
}

func TestWhatDoesNotFitIsToldAndNotTaken(t *testing.T) {
	w := roomy(t, mitred())
	c := w.card(t, room.OneRing)
	assert.Contains(t, texts(c.object), "Needs a ring of 233 mm; the parts have room for 111 mm.")
	before := w.store.Plan()
	test.Tap(c)
	assert.True(t, plan.Equal(before, w.store.Plan()))
	c.MouseIn(nil)
	assert.NotPanics(t, func() { w.room.picture.generate(200, 200) })

	p := mitred()
	p.Features = []plan.Feature{{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 60, From: -180, To: 180, Width: 118}}
	w = roomy(t, p)
	assert.Contains(t, w.room.said.Text, "Nothing these parts can hold makes room")
	w = roomy(t, plan.NewPlan())
	assert.Contains(t, w.room.said.Text, "no stops yet")
	p = mitred()
	p.Travel = plan.Span{From: -360, To: 360}
	w = roomy(t, p)
	assert.Contains(t, w.room.said.Text, "turns all the way round")
}

// While the answers are worked out the window goes on; an answer for a plan that
// has changed since is not taken.
func TestAnswersForAnotherPlanAreNotTaken(t *testing.T) {
	w := roomy(t, mitred())
	c := w.card(t, room.Rings)
	var later []func()
	w.studies.run = func(work func()) { later = append(later, work) }
	require.NoError(t, w.addStops(plan.Stop{Angle: 50}))
	assert.Contains(t, w.room.said.Text, "Working out")
	before := w.store.Plan()
	test.Tap(c)
	assert.True(t, plan.Equal(before, w.store.Plan()))
	require.NotEmpty(t, later)
	later[len(later)-1]()
	assert.Contains(t, w.room.said.Text, "ways to make room")
	assert.NotSame(t, c, w.card(t, room.Rings))
}

func TestAStopIsDraggedToAnotherCatch(t *testing.T) {
	p := mitred()
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 180, Radius: 90})
	w := roomy(t, p)
	w.win.Canvas().Capture() // lays the board out
	chip := func(stop int) *stopChip {
		for _, c := range find[*stopChip](w.room.board.object) {
			if c.stop == stop {
				return c
			}
		}
		require.Fail(t, "no chip")
		return nil
	}
	at := func(o fyne.CanvasObject) fyne.Position {
		return fyne.CurrentApp().Driver().AbsolutePositionForObject(o)
	}
	to := at(w.room.board.columns[1]).AddXY(5, 40)
	c := chip(4)
	c.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{AbsolutePosition: to}, Dragged: fyne.NewDelta(100, 0)})
	c.DragEnd()
	assert.Equal(t, []string{"B"}, w.store.Plan().Stops[4].Catches)
	assert.True(t, w.store.Plan().Stops[4].BothSides)
	w.store.Undo()
	assert.Empty(t, w.store.Plan().Stops[4].Catches)

	c = chip(4)
	c.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{AbsolutePosition: fyne.NewPos(1, 1)}, Dragged: fyne.NewDelta(-400, 0)})
	c.DragEnd()
	assert.Empty(t, w.store.Plan().Stops[4].Catches, "dropped nowhere it stays")

	test.Tap(chip(3))
	assert.Equal(t, 3, w.store.Selection().Lead)
	w.press(fyne.KeyRight)
	assert.Equal(t, []string{"B"}, w.store.Plan().Stops[3].Catches)
	w.press(fyne.KeyRight)
	assert.Equal(t, []string{"B"}, w.store.Plan().Stops[3].Catches, "there is no third")
	w.press(fyne.KeyLeft)
	assert.Equal(t, []string{"A"}, w.store.Plan().Stops[3].Catches)
}

func TestCatchesByHand(t *testing.T) {
	w := opened(t, mitred())
	w.store.SelectStop(4)
	w.choose(t, "menu.edit", "menu.catch.next")
	assert.Contains(t, w.status.Text, "only one catch")
	w.choose(t, "menu.edit", "menu.ring.add")
	c := w.store.Plan().Catches
	require.Len(t, c, 2)
	assert.Equal(t, 93.5, c[1].Radius, "a seat and a web inside the first")
	w.choose(t, "menu.edit", "menu.catch.next")
	assert.Equal(t, []string{"B"}, w.store.Plan().Stops[4].Catches)
	w.choose(t, "menu.edit", "menu.catch.next")
	assert.Equal(t, []string{"A"}, w.store.Plan().Stops[4].Catches)
	w.choose(t, "menu.edit", "menu.catch.add")
	assert.Len(t, w.store.Plan().Catches, 3)
}

func TestATurnIsDivided(t *testing.T) {
	w := roomy(t, mitred())
	d := w.room.divider
	assert.Contains(t, d.seats.Text, "No equal divisions")
	d.pick.SetSelected("360")
	assert.Contains(t, d.holes.Text, "6 catches and 60 seats, on a ring of 62.5 mm or more.")
	d.pick.SetSelected("24")
	d.take()
	assert.Len(t, w.store.Plan().Stops, 24)
	assert.Equal(t, []string{"2", "3", "4", "6", "8", "12", "24"}, d.serves.Options)
	d.serves.SetSelected("4")
	assert.Equal(t, "0° (A1), 90° (A7), 180° (A13), 270° (A19)", d.seats.Text)
	test.Tap(w.card(t, room.Divided))
	assert.Len(t, w.store.Report().Plate.Seats, 12, "each hole for two stops")
	assert.False(t, w.wrong())
	name, _ := w.store.CanUndo()
	assert.Equal(t, "Make room: Shared holes", name)
}

func TestAPairIsExplained(t *testing.T) {
	p := mitred()
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 180, Radius: 100})
	p.Stops = []plan.Stop{{Angle: 0, Catches: []string{"A", "B"}}}
	w := roomy(t, p)
	assert.Contains(t, w.room.pairs.Text, "180° apart")
	assert.Contains(t, w.room.pairs.Text, "disagree by 0.1 mm", "twice the play of the pivot")
}

// False clicks stand on the bar that turns the table, before the table is turned
// there.
func TestTheTurningBarShowsFalseClicks(t *testing.T) {
	p := mitred()
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 70, Radius: 100})
	w := opened(t, p)
	require.NotEmpty(t, w.turnbar.strip.false)
	fault := w.palette().Fault
	count := func() int { return colours(w.turnbar.strip.generate(200, stripHeight))[fault] }
	assert.Positive(t, count())
	require.NoError(t, w.store.Edit("away", func(p *plan.Plan) { p.Catches[1].Radius = 80 }))
	assert.Empty(t, w.turnbar.strip.false)
	assert.Zero(t, count())
	assert.Greater(t, len(colours(w.turnbar.strip.generate(200, stripHeight))), 1, "the stops are there")
}

// Catches are told apart by the shape of their marks, not by colour alone: in
// high contrast there is no other colour.
func TestCatchesHaveMarksOfTheirOwn(t *testing.T) {
	p := mitred()
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 180, Radius: 100})
	p.Stops[0].Catches = []string{"B"}
	w := opened(t, p)
	w.plate.paint(400, 400)
	light := colours(w.plate.canvas.Img)
	assert.Positive(t, light[catchInk(w.palette(), 1)])
	w.setLook(BlackOnWhiteLook)
	assert.Equal(t, w.palette().Ink, catchInk(w.palette(), 1))
	pictures := map[string]int{}
	for k := range 2 * len(catchShapes) {
		s := newSketch(w, fyne.NewSize(20, 20), nil)
		s.canvas.Resize(20, 20)
		s.canvas.Clear(w.palette().Paper)
		drawCatchMark(s.canvas, ink.Px{X: 10, Y: 10}, 6, k, w.palette().Ink, 1)
		pictures[string(s.canvas.Img.Pix)]++
	}
	assert.Len(t, pictures, 2*len(catchShapes), "eight shapes")
}

func TestTheRoomPageOfManyStops(t *testing.T) {
	p := plan.NewPlan()
	for i := range 500 {
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(i) * 0.7})
	}
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 180, Radius: 60})
	w := roomy(t, p)
	assert.Contains(t, texts(w.room.board.object), "too many stops")
	assert.NotPanics(t, func() { w.win.Canvas().Capture() })
}
