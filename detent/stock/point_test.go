package stock_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/stock"
)

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
