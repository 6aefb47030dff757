package stock_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/stock"
)

func TestPointDepth(t *testing.T) {
	const printed = 0.5e-6 // of the diameter: half the last digit of the table
	for angle, depth := range map[float64]float64{
		60: 0.866025, 82: 0.575184, 90: 0.5, 100: 0.419550, 118: 0.300430, 120: 0.288675, 135: 0.207107,
	} {
		assert.InDelta(t, depth, stock.PointDepth(1, angle), printed, "%g°", angle)
		assert.InDelta(t, 4.5*depth, stock.PointDepth(4.5, angle), 4.5*printed, "%g°", angle)
	}
	assert.InDelta(t, 0, stock.PointDepth(10, 180), rounding, "a flat floor")
	const thousandth = 0.0005 // inch: the worked example is given to three decimals
	assert.InDelta(t, 0.031, stock.PointDepth(0.104, 118), thousandth)
}

func TestAngles(t *testing.T) {
	angles := func(points []stock.Point) (out []float64) {
		for _, p := range points {
			assert.NotEmpty(t, p.ID)
			out = append(out, p.Angle)
		}
		return out
	}
	assert.Equal(t, []float64{82, 90, 100}, angles(stock.Countersinks()))
	assert.Equal(t, []float64{60, 90, 118, 120, 135, 180}, angles(stock.DrillPoints()))
}
