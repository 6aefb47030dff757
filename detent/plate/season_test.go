package plate_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// inCollar is a table of 260 mm in a collar, made at 50 % humidity.
func inCollar(table, collar string, clearance float64) plan.Plan {
	p := plan.Default()
	p.Turntable.Material = table
	c := plan.NewCollar(p.Turntable)
	c.Material, c.Clearance = collar, clearance
	p.Collar = &c
	p.Shop.Humidity = plan.Humidity{MadeAt: 50, Low: 30, High: 80}
	return p
}

// Moisture contents of Table 4-2 of the Wood Handbook, to a tenth of a per cent;
// movement by its coefficient for beech along the rings, 0.00431.
func TestSeason(t *testing.T) {
	const tenth = 0.1 // per cent: 20 °C here, 21.1 °C there, and the table's own rounding
	s := plate.NewSeason(inCollar("beech", "beech", 6))
	assert.InDelta(t, 6.2, s.Dry.Moisture, tenth)
	assert.InDelta(t, 16.0, s.Wet.Moisture, tenth)
	const perCent = 260 * 0.00431
	assert.InDelta(t, perCent*9.8, s.Growth.Typical, 2*tenth*perCent)
	assert.InDelta(t, 6+perCent*(9.2-6.2), s.Dry.Clearance, 2*tenth*perCent)
	assert.InDelta(t, 6-perCent*(16.0-9.2), s.Wet.Clearance, 2*tenth*perCent)
	assert.Equal(t, s.Wet.Clearance, s.Least())
	mended := plate.NewSeason(inCollar("beech", "beech", s.Choose))
	assert.GreaterOrEqual(t, mended.Least(), 0.2-1e-9, "what is chosen leaves the table free")
	assert.Less(t, mended.Least(), 0.3+1e-9, "and is no more than needed, to a tenth")
	assert.False(t, s.Tight(), "that binds")
	assert.False(t, mended.Tight())
	assert.True(t, plate.NewSeason(inCollar("mdf", "mdf", 0.1)).Tight())
	assert.False(t, s.Loose(s.Choose+0.5))
	assert.True(t, s.Loose(s.Choose+0.51))
}

func TestSeasonOfPanels(t *testing.T) {
	const mm = 1e-9 // rounding
	s := plate.NewSeason(inCollar("birch-plywood", "birch-plywood", 0.5))
	assert.InDelta(t, 260*0.0002*5, s.Growth.Typical, mm, "0.0002 for 10 % humidity")
	assert.InDelta(t, 0.5, s.Dry.Clearance, mm, "one material moves together")
	assert.InDelta(t, 0.5, s.Wet.Clearance, mm)
	assert.InDelta(t, 0.2, s.Choose, mm, "half a millimetre is common practice, and not too much")
	assert.False(t, s.Loose(0.5))
	s = plate.NewSeason(inCollar("mdf", "birch-plywood", 0.5))
	assert.InDelta(t, 0.5-260*(0.00005-0.00002)*30, s.Wet.Clearance, mm)
	s = plate.NewSeason(inCollar("aluminium", "mild-steel", 0.5))
	assert.InDelta(t, 0, s.Growth.Typical, mm, "metal drinks nothing")
	assert.InDelta(t, 0.5, s.Least(), mm)
}

func TestSeasonNotKnown(t *testing.T) {
	for why, p := range map[string]plan.Plan{
		"an unknown table":                inCollar("cherry", "beech", 0.5),
		"an unknown collar":               inCollar("beech", "cherry", 0.5),
		"a plastic of which no source is": inCollar("acrylic", "beech", 0.5),
		"a plastic collar round a panel":  inCollar("mdf", "acrylic", 0.5),
		"a table without a collar":        plan.Default(),
		"an unknown table without collar": func() plan.Plan { p := plan.Default(); p.Turntable.Material = ""; return p }(),
	} {
		s := plate.NewSeason(p)
		assert.False(t, s.HasCollar, why)
		assert.False(t, s.Loose(40), why)
		assert.Positive(t, s.Dry.Moisture, why)
	}
	assert.False(t, plate.NewSeason(inCollar("cherry", "beech", 0.5)).Growth.Known())
	assert.True(t, plate.NewSeason(plan.Default()).Growth.Known(), "a table grows with or without a collar")
}
