package stock_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/stock"
)

func TestDrillSpeed(t *testing.T) {
	for _, c := range []struct {
		why      string
		mm       float64
		material string
		want     float64 // rpm
	}{
		{"a small drill in wood: as fast as the machine is run", 4.5, "birch-plywood", 3000},
		{"25 mm in wood: 60 m/min over a girth of 78.5 mm", 25, "beech", 750},
		{"10 mm in aluminium", 10, "aluminium", 1900},
		{"10 mm in steel", 10, "mild-steel", 800},
		{"an unknown material is treated as a metal", 10, "something", 800},
		{"very large: never 0", 10000, "mild-steel", 50},
	} {
		got := stock.DrillSpeed(c.mm, c.material)
		assert.Equal(t, c.want, got.RPM, c.why)
		assert.Equal(t, stock.CommonPractice, got.Certainty, "no standard stands behind it")
	}
}

// Within the rounding, the rim of any drill that is not held back by the
// machine runs at one speed.
func TestDrillSpeedKeepsTheRimsSpeed(t *testing.T) {
	for d := 8.0; d < 60; d += 1.5 {
		rpm := stock.DrillSpeed(d, "beech").RPM
		assert.InDelta(t, 60, rpm*math.Pi*d/1000, 25*math.Pi*d/1000+1e-9, "%v mm: half a step of 50 rpm", d)
	}
}
