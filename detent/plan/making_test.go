package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// A file says nothing of what is as usual, and a file that says nothing has it
// as usual.
func TestMakingIsLeftOutOfAFileAsUsual(t *testing.T) {
	p := plan.Default()
	assert.NotContains(t, encoded(t, p), "making", "nothing is asked for")
	assert.Equal(t, p.Making, decoded(t, encoded(t, p)).Making)

	p.Making.Dust.Width = 6
	text := encoded(t, p)
	assert.Contains(t, text, `"dust"`)
	assert.NotContains(t, text, "end_stops", "a group as usual")
	assert.Equal(t, p, decoded(t, text))

	partial := edited(t, encoded(t, plan.Default()), "making", `{"clamp": {"diameter": 8}}`)
	got := decoded(t, partial).Making
	assert.Equal(t, 8.0, got.Clamp.Diameter)
	assert.Equal(t, plan.Default().Making.Clamp.Beyond, got.Clamp.Beyond, "a key left out has its default")

	ps := problemsOf(t, edited(t, encoded(t, plan.Default()), "making", `{"clamp": {"diameter": -1}, "pins": 2}`))
	require.Len(t, ps, 2)
	assert.Equal(t, "making.pins", ps[0].Path)
	assert.Equal(t, "making.clamp.diameter", ps[1].Path)
}

// A form shows the fittings that are not made: there is nowhere else to ask for
// one.
func TestMakingHasFieldsAsUsual(t *testing.T) {
	fields := byPath(t, plan.Default())
	require.Contains(t, fields, "making.carrier.width")
	assert.Equal(t, []string{"collar", "turntable", "both"}, fields["making.clearance_from"].Choices)

	p := plan.Default()
	f := fields["making.fence.width"]
	f.Number = 6.6
	require.True(t, plan.SetField(&p, f))
	assert.Equal(t, 6.6, p.Making.Fence.Width)
}

// The two diameters differ by the clearance, whichever part it is cut from.
func TestClearanceIsCutFromTheChosenPart(t *testing.T) {
	for _, c := range []struct {
		from        plan.ClearanceFrom
		table, bore float64 // mm
	}{
		{plan.FromCollar, 260, 260.5},
		{plan.FromTurntable, 259.5, 260},
		{plan.FromBoth, 259.75, 260.25},
	} {
		p := plan.Default()
		collar := plan.NewCollar(p.Turntable)
		p.Collar, p.Making.ClearanceFrom = &collar, c.from
		assert.Equal(t, c.table, p.TableDiameter(), c.from)
		assert.Equal(t, c.bore, p.CollarBore(), c.from)
		p.Collar = nil
		assert.Equal(t, 260.0, p.TableDiameter(), "without a collar nothing is cut from the table")
		assert.Zero(t, p.CollarBore())
	}
}
