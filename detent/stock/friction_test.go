package stock_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/stock"
)

// friction returns the one record of a pair in a state.
func friction(t *testing.T, a, b string, s stock.Surface) stock.Friction {
	t.Helper()
	var found []stock.Friction
	for _, f := range stock.Frictions() {
		if f.A == a && f.B == b && f.Surface == s {
			found = append(found, f)
		}
	}
	require.Len(t, found, 1, "%s on %s, %s", a, b, s)
	return found[0]
}

func TestFrictions(t *testing.T) {
	for _, k := range []struct {
		a, b            string
		surface         stock.Surface
		static, sliding [2]float64 // from, to
	}{
		{"wood", "steel", stock.Dry, [2]float64{0.65, 0.65}, [2]float64{0.4, 0.4}},
		{"wood", "steel", stock.Wet, [2]float64{0.7, 0.7}, [2]float64{0.15, 0.15}},
		{"wood", "metal", stock.Dry, [2]float64{0.50, 0.65}, [2]float64{0.20, 0.50}},
		{"wood", "metal", stock.Oiled, [2]float64{0.10, 0.10}, [2]float64{0.02, 0.10}},
		{"polyethylene", "steel", stock.Dry, [2]float64{0.20, 0.20}, [2]float64{}},
		{"hard-steel", "hard-steel", stock.Dry, [2]float64{0.78, 0.78}, [2]float64{0.42, 0.42}},
		{"mild-steel", "mild-steel", stock.Dry, [2]float64{0.74, 0.74}, [2]float64{0.57, 0.57}},
		{"steel", "steel", stock.Oiled, [2]float64{0.10, 0.10}, [2]float64{0.10, 0.10}},
	} {
		f := friction(t, k.a, k.b, k.surface)
		assert.Equal(t, k.static, [2]float64{f.Static.Low, f.Static.High}, "%s on %s, %s", k.a, k.b, k.surface)
		assert.Equal(t, k.sliding, [2]float64{f.Sliding.Low, f.Sliding.High}, "%s on %s, %s", k.a, k.b, k.surface)
	}
}

// TestFrictionIsConsistent: each pair stands once, sliding is never harder than
// starting, and wax helps.
func TestFrictionIsConsistent(t *testing.T) {
	for _, f := range stock.Frictions() {
		friction(t, f.A, f.B, f.Surface)
		assert.True(t, f.Static.Known() || f.Sliding.Known(), "%s on %s", f.A, f.B)
		if f.Static.Known() && f.Sliding.Known() {
			assert.LessOrEqual(t, f.Sliding.Typical, f.Static.Typical, "%s on %s", f.A, f.B)
		}
		assert.NotEqual(t, "unknown", f.Surface.String())
	}
	for _, b := range []string{"wood", "metal"} {
		dry, waxed := friction(t, "wood", b, stock.Dry), friction(t, "wood", b, stock.Waxed)
		assert.Less(t, waxed.Static.High, dry.Static.Low, b)
		assert.Equal(t, stock.CommonPractice, waxed.Static.Certainty, "no handbook gives it")
	}
	assert.Equal(t, "unknown", stock.Surface(0).String())
}
