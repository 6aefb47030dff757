package stock_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/stock"
)

func TestWoods(t *testing.T) {
	for _, k := range []struct {
		id                                                 string
		gravity, compression, hardness, radial, tangential float64
		movement                                           stock.Certainty
	}{
		{"yellow-birch", 0.62, 6700, 5600, 0.00256, 0.00338, stock.Seen},
		{"paper-birch", 0.55, 4100, 4000, 0.00219, 0.00304, stock.Seen},
		{"sugar-maple", 0.63, 10100, 6400, 0.00165, 0.00353, stock.Seen},
		{"red-maple", 0.54, 6900, 4200, 0.00137, 0.00289, stock.Seen},
		{"red-oak", 0.63, 7000, 5700, 0.00158, 0.00369, stock.Seen},
		{"white-oak", 0.68, 7400, 6000, 0.00180, 0.00365, stock.Seen},
		{"beech", 0.64, 7000, 5800, 0.00190, 0.00431, stock.Seen},
		{"yellow-poplar", 0.42, 3400, 2400, 0.00158, 0.00289, stock.Transcribed},
		{"loblolly-pine", 0.51, 5400, 3100, 0.00165, 0.00259, stock.Transcribed},
		{"white-pine", 0.35, 3000, 1700, 0.00071, 0.00212, stock.Memory},
		{"engelmann-spruce", 0.35, 2800, 1750, 0.00130, 0.00248, stock.Transcribed},
		{"sitka-spruce", 0.40, 4000, 2300, 0.00148, 0.00263, stock.Memory},
	} {
		t.Run(k.id, func(t *testing.T) {
			m := material(t, k.id)
			assert.Equal(t, stock.Solid, m.Kind)
			assert.Equal(t, k.gravity, m.Gravity.Typical)
			assert.Equal(t, k.compression, m.Compression.Typical)
			assert.Equal(t, k.hardness, m.Hardness.Typical)
			assert.Equal(t, stock.Transcribed, m.Hardness.Certainty)
			assert.Equal(t, k.radial, m.Radial.Typical)
			assert.Equal(t, k.tangential, m.Tangential.Typical)
			assert.Equal(t, k.movement, m.Radial.Certainty)
			assert.Equal(t, k.movement, m.Tangential.Certainty)
			assert.False(t, m.PerHumidity.Known(), "a solid wood moves by its moisture content")
		})
	}
}

// TestShrinkageGivesTheCoefficient takes shrinkages, green to dry, and
// coefficients that the Wood Handbook prints in two tables.
func TestShrinkageGivesTheCoefficient(t *testing.T) {
	const printed = 0.5e-5 // half of the last decimal
	for _, k := range []struct {
		wood                string
		shrinkage, movement float64
	}{
		{"yellow birch, radial", 0.073, 0.00256},
		{"yellow birch, tangential", 0.095, 0.00338},
		{"sugar maple, radial", 0.048, 0.00165},
		{"sugar maple, tangential", 0.099, 0.00353},
		{"American beech, radial", 0.055, 0.00190},
		{"American beech, tangential", 0.119, 0.00431},
	} {
		assert.InDelta(t, k.movement, stock.CoefficientFromShrinkage(k.shrinkage), printed, k.wood)
	}
	for id, s := range map[string][2]float64{
		"yellow-poplar":    {0.046, 0.082},
		"loblolly-pine":    {0.048, 0.074},
		"engelmann-spruce": {0.038, 0.071},
	} {
		m := material(t, id)
		assert.InDelta(t, stock.CoefficientFromShrinkage(s[0]), m.Radial.Typical, printed, id)
		assert.InDelta(t, stock.CoefficientFromShrinkage(s[1]), m.Tangential.Typical, printed, id)
	}
}

func TestWhatIsNotSolidWoodIsMarkedAsAnEstimate(t *testing.T) {
	seen := map[stock.Kind]int{}
	for _, m := range stock.Materials() {
		seen[m.Kind]++
		if m.Kind == stock.Solid {
			continue
		}
		assert.GreaterOrEqual(t, m.Hardness.Certainty, stock.Memory, m.ID)
		assert.Less(t, m.Hardness.Low, m.Hardness.High, "%s: an estimate is a range", m.ID)
		assert.False(t, m.Radial.Known() || m.Tangential.Known(), m.ID)
	}
	assert.Equal(t, map[stock.Kind]int{stock.Solid: 12, stock.Panel: 5, stock.Other: 5}, seen)
}

// TestPlywoodIsAsHardAsItsFaces: the estimate spans the woods it is made of.
func TestPlywoodIsAsHardAsItsFaces(t *testing.T) {
	ply := material(t, "birch-plywood").Hardness
	assert.Equal(t, material(t, "paper-birch").Hardness.Typical, ply.Low)
	assert.Equal(t, material(t, "yellow-birch").Hardness.Typical, ply.High)
	soft := material(t, "softwood-plywood").Hardness
	assert.Equal(t, material(t, "engelmann-spruce").Hardness.Typical, soft.Low)
	assert.Equal(t, material(t, "loblolly-pine").Hardness.Typical, soft.High)
}

func TestFindMaterial(t *testing.T) {
	for _, k := range []struct{ why, name, want string }{
		{"as plans write it", "birch-plywood", "birch-plywood"},
		{"as people type it", "  Birch  Plywood", "birch-plywood"},
		{"with underscores", "sitka_spruce", "sitka-spruce"},
		{"the other spelling", "Aluminum", "aluminium"},
		{"another name", "hard maple", "sugar-maple"},
	} {
		t.Run(k.why, func(t *testing.T) { assert.Equal(t, k.want, material(t, k.name).ID) })
	}
	for _, name := range []string{"", "-", "unobtainium"} {
		_, ok := stock.FindMaterial(name)
		assert.False(t, ok, name)
	}
}

func TestAliasesLeadSomewhere(t *testing.T) {
	for _, name := range []string{
		"aluminum", "american-beech", "chipboard", "film-faced-plywood", "hard-maple",
		"northern-red-oak", "pmma", "pom", "steel",
	} {
		assert.NotEqual(t, name, material(t, name).ID)
	}
}

func TestEveryMaterialHasItsOwnNameInWords(t *testing.T) {
	catalogue := words.English()
	names := map[string]string{}
	for _, m := range stock.Materials() {
		require.True(t, catalogue.Has(m.WordKey()), m.WordKey())
		name := catalogue.Text(m.WordKey())
		assert.NotContains(t, names, name, "%s and %s", m.ID, names[name])
		names[name] = m.ID
		assert.Equal(t, m, material(t, m.ID), "an id is found as it stands")
	}
	for _, wire := range stock.Wires() {
		assert.True(t, catalogue.Has(wire.WordKey()), wire.ID)
	}
}
