package stock_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/stock"
)

func TestEquilibriumMoisture(t *testing.T) {
	const (
		celsius = (70 - 32) / 1.8 // 70 °F, the row of the table
		printed = 0.005           // %: the formula's values are given to two decimals
		table   = 0.05            // %: the table is given to one
	)
	for _, k := range []struct{ humidity, table, formula float64 }{
		{30, 6.2, 6.17},
		{40, 7.7, 7.70},
		{50, 9.2, 9.24},
		{65, 12.0, 11.96},
		{80, 16.0, 15.99},
	} {
		got := stock.EquilibriumMoisture(k.humidity, celsius)
		assert.InDelta(t, k.formula, got, printed, "%g %%", k.humidity)
		assert.InDelta(t, k.table, got, table, "%g %%", k.humidity)
	}
}

func TestEquilibriumMoistureAtTheEnds(t *testing.T) {
	assert.Zero(t, stock.EquilibriumMoisture(0, 20), "dry air leaves no water")
	assert.Zero(t, stock.EquilibriumMoisture(-5, 20))
	assert.Equal(t, stock.EquilibriumMoisture(100, 20), stock.EquilibriumMoisture(180, 20))
	assert.Equal(t, stock.EquilibriumMoisture(50, -1.1), stock.EquilibriumMoisture(50, -40))
	assert.Equal(t, stock.EquilibriumMoisture(50, 132.2), stock.EquilibriumMoisture(50, 400))
	const saturated = 30 // %: fibres hold no more than about this
	assert.Less(t, stock.EquilibriumMoisture(100, 20), float64(saturated))
}

func TestDamperIsWetterAndWarmerIsDrier(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		humidity := rapid.Float64Range(1, 99).Draw(t, "humidity")
		celsius := rapid.Float64Range(20, 100).Draw(t, "celsius")
		here := stock.EquilibriumMoisture(humidity, celsius)
		require.Greater(t, stock.EquilibriumMoisture(humidity+1, celsius), here)
		require.Less(t, stock.EquilibriumMoisture(humidity, celsius+5), here)
	})
}

func TestMovementOfTheHandbook(t *testing.T) {
	const printed = 0.0005 // mm: the example is given to three decimals
	assert.InDelta(t, 1.705, stock.Movement(232, 0.00245, 11-8), printed, "white fir from 8 to 11 %")
	assert.InDelta(t, -1.705, stock.Movement(232, 0.00245, 8-11), printed, "and back")
}

func TestSwelling(t *testing.T) {
	for _, k := range []struct {
		why, material  string
		size, from, to float64
		want           float64
	}{
		{"plywood: 0.0002 of its size for 10 %", "birch-plywood", 260, 35, 70, 260 * 0.0002 * 3.5},
		{"MDF: 0.3 % from 30 to 90 %", "mdf", 1000, 30, 90, 3},
		{"metal does not move", "aluminium", 260, 35, 70, 0},
		{"nothing without a change", "beech", 260, 50, 50, 0},
		{
			"solid wood: along the rings, where it moves most", "beech", 260, 35, 70,
			260 * 0.00431 * (stock.EquilibriumMoisture(70, 20) - stock.EquilibriumMoisture(35, 20)),
		},
	} {
		t.Run(k.why, func(t *testing.T) {
			v := material(t, k.material).Swelling(k.size, k.from, k.to, 20)
			require.True(t, v.Known())
			assert.InDelta(t, k.want, v.Typical, rounding*k.size)
		})
	}
	assert.False(t, material(t, "acrylic").Swelling(260, 35, 70, 20).Known(), "no source for acrylic")
}

func TestSwellingTakesTheLargerDirection(t *testing.T) {
	m := material(t, "beech")
	m.Radial, m.Tangential = m.Tangential, m.Radial
	assert.Equal(t, material(t, "beech").Swelling(260, 35, 70, 20), m.Swelling(260, 35, 70, 20))
}

func TestWarmGrowth(t *testing.T) {
	aluminium := material(t, "aluminium").PerKelvin
	assert.InDelta(t, 0.0693, 300*aluminium.Typical*1e-6*10, rounding, "300 mm, 10 K")
	for id, k := range map[string][2]float64{"aluminium": {21, 24}, "mild-steel": {11, 13}, "acrylic": {68, 75}, "hdpe": {120, 200}} {
		v := material(t, id).PerKelvin
		assert.Equal(t, k, [2]float64{v.Low, v.High}, id)
	}
}
