package stock_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/measure"
	"stopwright/detent/stock"
)

// TestBallsAreWhatTheyAreCalled reads each name as a length, exactly.
func TestBallsAreWhatTheyAreCalled(t *testing.T) {
	units := map[stock.System]measure.Unit{stock.Metric: measure.Millimetre, stock.Fraction: measure.Inch}
	var count [5]int
	last := 0.0
	for _, b := range stock.Balls() {
		unit, ok := units[b.System]
		require.True(t, ok, b.Designation)
		mm, err := measure.ParseLength(b.Designation, unit)
		require.NoError(t, err)
		assert.Equal(t, mm, b.MM, b.Designation)
		assert.Greater(t, b.MM, last, "balls grow: %s", b.Designation)
		last = b.MM
		count[b.System]++
	}
	assert.Equal(t, 13+11, count[stock.Metric])
	assert.Equal(t, 17, count[stock.Fraction])
}

func TestInchBalls(t *testing.T) {
	want := map[string]float64{
		"1/16": 1.5875, "3/32": 2.38125, "1/8": 3.175, "5/32": 3.96875,
		"3/16": 4.7625, "7/32": 5.55625, "1/4": 6.35, "9/32": 7.14375,
		"5/16": 7.9375, "11/32": 8.73125, "3/8": 9.525, "13/32": 10.31875,
		"7/16": 11.1125, "15/32": 11.90625, "1/2": 12.7,
		"9/16": 14.2875, "5/8": 15.875,
	}
	got := map[string]float64{}
	for _, b := range stock.Balls() {
		if b.System == stock.Fraction {
			got[b.Designation] = b.MM
			assert.Equal(t, stock.Exact, b.Certainty)
		}
	}
	assert.Equal(t, want, got)
}

func TestNearestBall(t *testing.T) {
	for _, k := range []struct {
		why     string
		mm      float64
		systems []stock.System
		want    string
	}{
		{"what is taken for a 4.75 mm ball is 3/16 inch", 4.75, nil, "3/16"},
		{"so is what is taken for 4.8", 4.8, nil, "3/16"},
		{"in metric sizes halfway, the smaller", 4.75, []stock.System{stock.Metric}, "4.5"},
		{"a metric size", 6, nil, "6"},
		{"under all", 0, nil, "1.5"},
		{"over all", 50, nil, "16"},
	} {
		t.Run(k.why, func(t *testing.T) {
			b, ok := stock.NearestBall(k.mm, k.systems...)
			require.True(t, ok)
			assert.Equal(t, k.want, b.Designation)
		})
	}
	_, ok := stock.NearestBall(6, stock.Letter)
	assert.False(t, ok, "balls have no letters")
	_, ok = stock.NearestBall(math.NaN())
	assert.False(t, ok, "not a number")
}

func TestBallGrade(t *testing.T) {
	require.Len(t, stock.BallGrades(), 1)
	g := stock.BallGrades()[0]
	assert.Equal(t, "G100", g.Name)
	assert.Equal(t, 0.0025, g.OneBall)
	assert.Equal(t, 0.005, g.OneBatch)
}
