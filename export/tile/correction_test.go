package tile_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export/tile"
)

func TestStretch(t *testing.T) {
	for _, c := range []struct {
		why  string
		bars tile.Correction
		x, y float64
	}{
		{"not measured", tile.Correction{}, 1, 1},
		{"true", tile.Correction{X: 150, Y: 200}, 1, 1},
		{"each direction for itself", tile.Correction{X: 149, Y: 201}, 150.0 / 149, 200.0 / 201},
		{"just 2 % short and long", tile.Correction{X: 147, Y: 204}, 150.0 / 147, 200.0 / 204},
	} {
		s, err := c.bars.Stretch()
		require.NoError(t, err, c.why)
		assert.InDelta(t, c.x, s.X, 1e-15, c.why)
		assert.InDelta(t, c.y, s.Y, 1e-15, c.why)
	}
	for _, c := range []struct {
		why  string
		bars tile.Correction
		says string
	}{
		{"fitted to the page", tile.Correction{X: 142.5, Y: 190}, "The bar across the paper is 150 mm long and measures 142.5 mm."},
		{"the other bar", tile.Correction{Y: 204.01}, "The bar up the paper is 200 mm long and measures 204.01 mm."},
		{"less than nothing", tile.Correction{X: -150}, "measures -150 mm"},
		{"no number", tile.Correction{X: math.NaN()}, "NaN"},
		{"no end", tile.Correction{Y: math.Inf(1)}, "Inf"},
	} {
		_, err := c.bars.Stretch()
		var off *tile.OffError
		require.ErrorAs(t, err, &off, c.why)
		assert.Contains(t, err.Error(), c.says, c.why)
		assert.Contains(t, err.Error(), "not fitted to the page", "it says what to do")
	}
}
