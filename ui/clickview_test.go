package ui

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/units"
)

// clicking opens the click page of a plan.
func clicking(t *testing.T, change func(*plan.Plan)) *Window {
	t.Helper()
	p, err := Example("sanding-table")
	require.NoError(t, err)
	change(&p)
	w := opened(t, p)
	w.choose(t, "menu.view", "page.click")
	require.Equal(t, clickPage, w.page())
	return w
}

// The demonstration's ball by hand: it sinks 3 - √(3² - 2.25²) = 1.016 mm and
// touches at asin(2.25/3) = 48.59°.
func TestTheClickPageSaysWhatTheBallDoes(t *testing.T) {
	w := clicking(t, func(*plan.Plan) {})
	assert.Contains(t, w.clicks.numbers.Text, "sinks 1.02 mm")
	assert.Contains(t, w.clicks.numbers.Text, "48.59°")
	assert.Contains(t, w.clicks.numbers.Text, "a clamp locks")
}

func TestTheClickPageSaysWhyNothingClicks(t *testing.T) {
	for why, c := range map[string]struct {
		change func(*plan.Plan)
		want   string
	}{
		"a mouth as wide as the ball":          {func(p *plan.Plan) { p.Seat.Diameter, p.Seat.Depth = 6, 0 }, "falls into"},
		"a gap as wide as the ball stands out": {func(p *plan.Plan) { p.FaceGap = 2 }, "does not reach"},
	} {
		w := clicking(t, c.change)
		assert.Contains(t, w.clicks.numbers.Text, c.want, why)
		for _, s := range []*sketch{w.clicks.section, w.clicks.torque, w.clicks.travel} {
			assert.NotPanics(t, func() { s.generate(300, 240) }, why)
		}
	}
}

func TestADrillIsTakenFromTheTable(t *testing.T) {
	w := clicking(t, func(*plan.Plan) {})
	row := w.clicks.seats.rows[ladder+2]
	assert.Equal(t, "4.7 mm", row.take.Text)
	tap(row.take)
	assert.InDelta(t, 4.7, w.store.Plan().Seat.Diameter, 1e-12)
	assert.Equal(t, "4.7 mm", w.clicks.seats.rows[ladder].take.Text, "the chosen one is in the middle")
	w.store.Undo()
	assert.InDelta(t, 4.5, w.store.Plan().Seat.Diameter, 1e-12)
}

func TestASeatIsSuggested(t *testing.T) {
	w := clicking(t, func(p *plan.Plan) { p.Seat.Diameter = 5.94 })
	for _, b := range find[*widget.Button](w.clicks.object) {
		if b.Text == w.words.Text("click.suggest") {
			tap(b)
		}
	}
	assert.Less(t, w.store.Plan().Seat.Diameter, 5.94)
	assert.Contains(t, w.status.Text, "drill")
	for _, f := range w.store.Report().Findings {
		assert.False(t, f.Wrong(), f.ID)
	}
}

func TestTheSectionFollowsTheTable(t *testing.T) {
	w := clicking(t, func(*plan.Plan) {})
	picture := func() []uint8 {
		w.clicks.section.generate(300, 240)
		return slices.Clone(w.clicks.section.canvas.Img.Pix)
	}
	home := picture()
	w.clicks.turn.SetValue(0.5)
	assert.InDelta(t, 0.5, w.store.Turn().Degrees(), 0.02, "to a step of the slider")
	assert.NotEqual(t, home, picture())
	w.store.SetTurn(0)
	assert.Equal(t, home, picture())
}

func TestWhatMayComeOutOtherwiseIsDrawnBesides(t *testing.T) {
	w := clicking(t, func(*plan.Plan) {})
	before := w.clicks.click
	sliders := find[*widget.Slider](w.clicks.object)
	require.Len(t, sliders, 4)
	for _, s := range sliders[1:] {
		s.SetValue(s.Max)
	}
	assert.False(t, w.clicks.whatIf.None())
	assert.Equal(t, before.Seated, w.clicks.click.Seated, "the plan's own numbers stay")
	assert.Less(t, w.clicks.worse.Seated, before.Seated, "a weaker spring")
	w.clicks.torque.generate(300, 240)
}

// Turning the table repaints the section alone, and moves the line over the
// curves; another look or other units repaint and reword everything.
func TestTheClickPageRepaintsWhatHasChanged(t *testing.T) {
	w := clicking(t, func(*plan.Plan) {})
	v := w.clicks
	paint := func() {
		for _, s := range []*sketch{v.section, v.torque, v.travel} {
			s.generate(400, 240)
		}
	}
	paint()
	was := [2]fyne.Position{v.torque.mark.Position1, v.travel.mark.Position1}
	w.store.SetTurn(w.store.Turn() + 0.5)
	assert.True(t, v.section.stale)
	assert.False(t, v.torque.stale)
	assert.False(t, v.travel.stale)
	assert.Greater(t, v.torque.mark.Position1.X, was[0].X, "to the right as the turn grows")
	assert.Greater(t, v.travel.mark.Position1.X, was[1].X)
	assert.True(t, v.torque.mark.Visible())
	w.store.SetTurn(w.store.Turn() + 9)
	assert.False(t, v.torque.mark.Visible(), "beyond the curve there is no line")

	paint()
	v.ifs[2].SetValue(50)
	assert.True(t, v.torque.stale)
	assert.False(t, v.section.stale)

	paint()
	w.setLook(DarkLook)
	for _, s := range []*sketch{v.section, v.torque, v.travel} {
		assert.True(t, s.stale, "painted anew in other inks")
	}
	w.setUnits(units.Style{Lengths: units.Inches})
	assert.Contains(t, v.numbers.Text, "0.04 in", "1.016 mm")
}

// The picture of what the drills hold and give back marks the chosen one and the
// suggested one, and says so where no drill will do.
func TestTheChoicesArePainted(t *testing.T) {
	w := clicking(t, func(*plan.Plan) {})
	picture := func() []uint8 {
		w.clicks.choices.generate(500, 210)
		return slices.Clone(w.clicks.choices.canvas.Img.Pix)
	}
	before := picture()
	w.suggestSeat(0)
	assert.True(t, w.clicks.choices.stale, "another drill is chosen")
	assert.False(t, slices.Equal(before, picture()))
	before = picture()
	require.NoError(t, w.store.Edit("far", func(p *plan.Plan) { p.FaceGap = 3 }))
	assert.NotPanics(t, func() { assert.False(t, slices.Equal(before, picture())) })
}
