package plate

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

func TestSeatDrills(t *testing.T) {
	const metric = 121 // from 1 to 13 mm by tenths
	for _, c := range []struct {
		why      string
		diameter float64
		own      stock.System
		more     int
	}{
		{"a metric drill", 4.5, stock.Metric, 0},
		{"3/16 inch", 3.0 / 16 * 25.4, stock.Fraction, 30}, // 32 sixty-fourths to 1/2, but for 1/64 and 1/32
		{"number 19", 0.166 * 25.4, stock.Number, 60},      // number 60, of 0.040 inch, is the first over 1 mm
		{"letter F", 0.257 * 25.4, stock.Letter, 26},
		{"no standard drill", 4.567, stock.Metric, 0},
		{"a millionth of a millimetre off a number drill is none", 0.166*25.4 + 2e-6, stock.Metric, 0},
	} {
		t.Run(c.why, func(t *testing.T) {
			count := map[stock.System]int{}
			for _, d := range seatDrills(plan.Seat{Diameter: c.diameter}) {
				count[d.System]++
				assert.GreaterOrEqual(t, d.MM, 1.0)
			}
			want := map[stock.System]int{stock.Metric: metric}
			want[c.own] += c.more
			assert.Equal(t, want, count)
		})
	}
}
