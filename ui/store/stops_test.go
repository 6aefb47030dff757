package store_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/store"
)

func TestStopsAreAddedWhereTheyBelong(t *testing.T) {
	stops := func(angles ...float64) []plan.Stop { return withStops(angles...).Stops }
	for _, c := range []struct {
		why       string
		list, add []float64
		want      []float64
		lead      int
	}{
		{"the first", nil, []float64{5}, []float64{5}, 0},
		{"before all", []float64{0, 20}, []float64{-10}, []float64{-10, 0, 20}, 0},
		{"between", []float64{0, 20}, []float64{10}, []float64{0, 10, 20}, 1},
		{"after all", []float64{0, 20}, []float64{30}, []float64{0, 20, 30}, 2},
		{"an equal angle goes after its like", []float64{0, 20, 20, 30}, []float64{20}, []float64{0, 20, 20, 20, 30}, 3},
		{"to the end of a list that is in no order", []float64{20, 0}, []float64{10}, []float64{20, 0, 10}, 2},
		{"several, the last one selected", []float64{0, 20}, []float64{54, 10, -3}, []float64{-3, 0, 10, 20, 54}, 0},
		{"minus nothing is nothing", []float64{-1, 0, 1}, []float64{math.Copysign(0, -1)}, []float64{-1, 0, 0, 1}, 2},
	} {
		s := store.New(withStops(c.list...))
		require.NoError(t, s.AddStops("add", stops(c.add...)...), c.why)
		assert.Equal(t, c.want, angles(s), c.why)
		assert.Equal(t, c.lead, s.Selection().Lead, c.why)
		s.Undo()
		assert.Len(t, s.Plan().Stops, len(c.list), "%s: one edit", c.why)
	}
}

func TestStopsAreAddedAllOrNone(t *testing.T) {
	s := store.New(withStops(0, 20))
	s.SelectStop(1)
	err := s.AddStops("add", plan.Stop{Angle: 10}, plan.Stop{Angle: 361})
	require.Error(t, err)
	assert.Equal(t, []float64{0, 20}, angles(s))
	assert.Equal(t, 1, s.Selection().Lead)
}

func TestStopsAreRemoved(t *testing.T) {
	for _, c := range []struct {
		why    string
		remove []int
		want   []float64
		lead   int
	}{
		{"the first", []int{0}, []float64{10, 20, 30}, 0},
		{"one between", []int{1}, []float64{0, 20, 30}, 1},
		{"the last: the one before it is next", []int{3}, []float64{0, 10, 20}, 2},
		{"several in any order", []int{2, 0}, []float64{10, 30}, 0},
		{"all", []int{0, 1, 2, 3}, []float64{}, -1},
		{"none", nil, []float64{0, 10, 20, 30}, 1},
	} {
		s := store.New(withStops(0, 10, 20, 30))
		s.SelectStop(1)
		require.NoError(t, s.RemoveStops("remove", c.remove...), c.why)
		assert.Equal(t, c.want, angles(s), c.why)
		assert.Equal(t, c.lead, s.Selection().Lead, c.why)
	}
}

func TestSeveralStopsChangeAsOneEdit(t *testing.T) {
	s := store.New(withStops(0, 10, 20))
	require.NoError(t, s.ChangeStops("shift", func(p *plan.Stop) { p.Angle += 5 }, 0, 2))
	assert.Equal(t, []float64{5, 10, 25}, angles(s))
	s.Undo()
	assert.Equal(t, []float64{0, 10, 20}, angles(s))
}

func TestSortKeepsTheOrderOfEquals(t *testing.T) {
	p := withStops(30, 0, 30, -5)
	p.Stops[0].Label, p.Stops[2].Label = "first", "second"
	s := store.New(p)
	require.NoError(t, s.SortStops("sort"))
	assert.Equal(t, []float64{-5, 0, 30, 30}, angles(s))
	assert.Equal(t, "first", s.Plan().Stops[2].Label)
	require.NoError(t, s.SortStops("sort again"))
	assert.Equal(t, "sort", undoName(s), "a list in order is not sorted again")
}

// Whatever is added to a list in order, it stays in order.
func TestAListInOrderStaysInOrder(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 11)) // any seed
	s := store.New(plan.Default())
	for range 200 {
		angle := math.Round(random.Float64()*40) - 20
		require.NoError(t, s.AddStops("add", plan.Stop{Angle: angle}))
		assert.Equal(t, angle, s.Plan().Stops[s.Selection().Lead].Angle)
	}
	assert.IsIncreasing(t, append(dedup(angles(s)), math.Inf(1)))
	require.NoError(t, s.SortStops("sort"))
	assert.Equal(t, "add", undoName(s))
}

// dedup drops angles equal to the one before.
func dedup(in []float64) []float64 {
	out := []float64{}
	for i, a := range in {
		if i == 0 || a != in[i-1] {
			out = append(out, a)
		}
	}
	return out
}
