package ui

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
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
