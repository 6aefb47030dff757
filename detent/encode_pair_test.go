package detent_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// An opposed pair on one ring: the balls pull twice as hard, a table that lies
// off its pivot puts the stop off by nothing.
func TestReportOfPairs(t *testing.T) {
	const (
		exact = 1e-9 // in each number's own unit: a few roundings
		deg   = 180 / math.Pi
	)
	p := threeFourFive(func(p *plan.Plan) {
		p.Catches = []plan.Placement{{Name: "left", Azimuth: 90, Radius: 100}, {Name: "right", Azimuth: -90, Radius: 100}}
		p.Stops = []plan.Stop{
			{Angle: 0, Catches: []string{"left", "right"}},
			{Angle: 20, BothSides: true, Catches: []string{"left", "right"}},
			{Angle: 40},
		}
		p.Shop.SeatError, p.Turntable.RadialPlay = 0.1, 0.05
	})
	pairs := items(decode(t, p)["pairs"])
	require.Len(t, pairs, 1, "the two are told of once, not at every stop")
	got := pairs[0].(map[string]any)
	assert.Equal(t, []string{
		"angles", "apart", "catches", "centring_torque", "centring_torque_alone", "hangs", "holding_torque",
		"holding_torque_alone", "misses", "std", "std_alone", "sway", "sway_alone", "takes",
	}, keysOf(got))
	assert.Equal(t, []any{"left", "right"}, got["catches"])
	assert.Equal(t, []any{0.0, 20.0, -20.0}, got["angles"], "not 40, which one catch holds")
	num := func(key string) float64 { return got[key].(float64) }
	assert.InDelta(t, 180, num("apart"), exact)
	assert.InDelta(t, 2, num("holding_torque")/num("holding_torque_alone"), exact)
	assert.InDelta(t, 2, num("centring_torque")/num("centring_torque_alone"), exact)
	assert.InDelta(t, 0, num("sway"), exact)
	assert.InDelta(t, 0.05/100*deg, num("sway_alone"), exact)
	// Centres that land evenly in a disc of 0.1 mm have a deviation of 0.05 mm along
	// any line, a table in a disc of 0.05 mm one of 0.025 mm. Opposite each other,
	// the mean of two seats is left.
	assert.InDelta(t, 0.05/math.Sqrt2/100*deg, num("std"), exact)
	assert.InDelta(t, math.Hypot(0.05, 0.025)/100*deg, num("std_alone"), exact)
	assert.InDelta(t, 2*0.05/100*deg, num("takes"), exact, "the table moves sideways for both")
	assert.InDelta(t, (2*0.05+4)/100*deg, num("misses"), exact, "and from the rim on, 4 mm, one ball is lost")
	assert.InDelta(t, math.Erfc(0.1/(0.05*math.Sqrt2)/math.Sqrt2), num("hangs"), exact)
}

func TestReportOfPairsThatAreNone(t *testing.T) {
	assert.Empty(t, decode(t, threeFourFive(func(p *plan.Plan) { p.Stops = []plan.Stop{{Angle: 0}} }))["pairs"])
	stuck := threeFourFive(func(p *plan.Plan) {
		p.Stops = []plan.Stop{{Angle: 0, Catches: []string{"in", "out"}}}
		p.FaceGap = 4 // as far as the balls stand out: they do not reach
	})
	got := items(decode(t, stuck)["pairs"])[0].(map[string]any)
	assert.Nil(t, got["holding_torque"])
	assert.Nil(t, got["centring_torque_alone"])
}
