package stock_test

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/stock"
)

func TestNearestDrill(t *testing.T) {
	for _, k := range []struct {
		why     string
		mm      float64
		systems []stock.System
		want    string
	}{
		{"a size there is", 4.5, nil, "4.5"},
		{"all systems together", 4.75, nil, "3/16"},
		{"metric only", 4.76, []stock.System{stock.Metric}, "4.8"},
		{"halfway, the smaller", 4.55, []stock.System{stock.Metric}, "4.5"},
		{"halfway again, where the float64 lies above", 0.35, []stock.System{stock.Metric}, "0.3"},
		{"letter E is 1/4: the fraction is named", 6.35, nil, "1/4"},
		{"12.7 is 1/2: the metric is named", 12.71, nil, "12.7"},
		{"letter E where letters are asked for", 6.35, []stock.System{stock.Letter, stock.Number}, "E"},
		{"under the smallest", -3, nil, "0.2"},
		{"over the largest", 40, nil, "13.0"},
		{"beyond all", math.Inf(1), []stock.System{stock.Fraction}, "1/2"},
		{"beyond all the other way", math.Inf(-1), []stock.System{stock.Number}, "#80"},
	} {
		t.Run(k.why, func(t *testing.T) {
			d, ok := stock.NearestDrill(k.mm, k.systems...)
			require.True(t, ok)
			assert.Equal(t, k.want, d.Designation)
		})
	}
}

func TestNoDrill(t *testing.T) {
	_, ok := stock.NearestDrill(math.NaN())
	assert.False(t, ok, "not a number")
	_, ok = stock.NearestDrill(5, stock.System(9))
	assert.False(t, ok, "no such system")
	assert.Empty(t, stock.DrillsNear(math.NaN(), 3))
	assert.Empty(t, stock.DrillsNear(5, 0))
	assert.Empty(t, stock.DrillsNear(5, -1))
}

// ranked returns all drills of the systems, the nearest first, of two as near
// the smaller first: the plain reading of "nearest".
func ranked(mm float64, systems []stock.System) []stock.Drill {
	var all []stock.Drill
	for _, d := range stock.Drills() {
		if len(systems) == 0 || slices.Contains(systems, d.System) {
			all = append(all, d)
		}
	}
	slices.SortStableFunc(all, func(a, b stock.Drill) int {
		x, y := math.Abs(a.MM-mm), math.Abs(b.MM-mm)
		if math.Abs(x-y) <= stock.SameSize {
			return cmp.Compare(a.MM, b.MM)
		}
		return cmp.Compare(x, y)
	})
	return all
}

func TestNearestIsWhatASearchFinds(t *testing.T) {
	all := []stock.System{stock.Metric, stock.Fraction, stock.Number, stock.Letter}
	rapid.Check(t, func(t *rapid.T) {
		mm := rapid.OneOf(
			rapid.Float64Range(0, 15),
			rapid.Map(rapid.IntRange(0, 300), func(n int) float64 { return float64(n) / 20 }), // sizes and halfway
		).Draw(t, "mm")
		systems := rapid.SliceOfDistinct(rapid.SampledFrom(all), rapid.ID[stock.System]).Draw(t, "systems")
		want := ranked(mm, systems)

		got, ok := stock.NearestDrill(mm, systems...)
		require.True(t, ok)
		require.Equal(t, want[0], got)

		n := rapid.IntRange(1, len(want)+1).Draw(t, "n")
		ladder := stock.DrillsNear(mm, n, systems...)
		require.Len(t, ladder, min(n, len(want)))
		require.True(t, slices.IsSortedFunc(ladder, func(a, b stock.Drill) int { return cmp.Compare(a.MM, b.MM) }))
		furthest := math.Abs(want[len(ladder)-1].MM - mm)
		for _, d := range ladder {
			require.LessOrEqual(t, math.Abs(d.MM-mm), furthest+stock.SameSize)
		}
	})
}

func TestDrillsNear(t *testing.T) {
	var names []string
	for _, d := range stock.DrillsNear(4.5, 5, stock.Metric) {
		names = append(names, d.Designation)
	}
	assert.Equal(t, []string{"4.3", "4.4", "4.5", "4.6", "4.7"}, names)
	assert.Len(t, stock.DrillsNear(4.5, 1000), len(stock.Drills()), "no more than there are")
}

// TestListsAreCopies: what a caller does to a list is the caller's own.
func TestListsAreCopies(t *testing.T) {
	stock.Drills()[0].MM = 99
	assert.Equal(t, 0.2, stock.Drills()[0].MM)
	stock.DrillsNear(0.2, 1)[0].MM = 99
	assert.Equal(t, 0.2, stock.Drills()[0].MM)
	stock.Balls()[0].MM = 99
	assert.Equal(t, 1.5, stock.Balls()[0].MM)
	stock.Materials()[0].ID = "x"
	assert.Equal(t, "yellow-birch", stock.Materials()[0].ID)
}
