package plate_test

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// along returns the turn that moves a ball on the default ring by mm.
func along(mm float64) float64 { return mm / plan.Default().Catches[0].Radius * 180 / math.Pi }

func TestCoincidingSeats(t *testing.T) {
	two := func(a, b plan.Placement) plan.Plan {
		p := plan.Default()
		a.Name, b.Name = "A", "B"
		p.Catches = []plan.Placement{a, b}
		p.Stops = []plan.Stop{{Angle: 30, Catches: []string{"A"}}, {Angle: 0, Catches: []string{"B"}}}
		return p
	}
	for _, c := range []struct {
		why  string
		plan plan.Plan
		want []int // how many stops each seat serves
	}{
		{"no stop, no seat", withStops(), []int{}},
		{"one stop alone", withStops(5), []int{1}},
		{"just within a millionth of a millimetre", withStops(0, along(0.999e-6)), []int{2}},
		{"just beyond it", withStops(0, along(1.001e-6)), []int{1, 1}},
		{"the end ones of a chain are 1.6e-6 apart, but each is one hole with the middle one", withStops(0, along(0.8e-6), along(1.6e-6)), []int{3}},
		{"a full turn apart", withStops(180, -180), []int{2}},
		{"a full turn apart across the seam", withStops(359.5, -0.5), []int{2}},
		{"two turns apart", withStops(-360, 0, 360), []int{3}},
		{"the same twice", withStops(12, 12, 13), []int{2, 1}},
		{"near each other, on both sides of the seam at 0", withStops(-along(0.4e-6), along(0.4e-6)), []int{2}},
		{"near each other, on both sides of the seam at 180", withStops(180-along(0.4e-6), -180+along(0.4e-6)), []int{2}},
		{"one place reached by two catches of one ring", two(plan.Placement{Radius: 105}, plan.Placement{Radius: 105, Azimuth: 30}), []int{2}},
		{"catches at one place, radii within a millionth", two(plan.Placement{Radius: 105}, plan.Placement{Radius: 105 + 0.9e-6, Azimuth: 30}), []int{2}},
		{"radii beyond it", two(plan.Placement{Radius: 105}, plan.Placement{Radius: 105 + 1.1e-6, Azimuth: 30}), []int{1, 1}},
		{"on the least ring a degree is still well over a thousandth of a millimetre", two(plan.Placement{Radius: 0.1}, plan.Placement{Radius: 0.1, Azimuth: 31}), []int{1, 1}},
	} {
		t.Run(c.why, func(t *testing.T) {
			got := []int{}
			for _, s := range plate.New(c.plan).Seats {
				got = append(got, len(s.Serves))
			}
			assert.Equal(t, c.want, got)
		})
	}
}

func TestSharedSeatSaysWhatItServes(t *testing.T) {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "A", Radius: 105}, {Name: "B", Azimuth: 60, Radius: 105}}
	p.Stops = []plan.Stop{
		{Angle: 30, Label: "thirty", Catches: []string{"A", "B"}},
		{Angle: -30, Label: "other side", Catches: []string{"B", "A"}},
	}
	pl := plate.New(p)
	require.Len(t, pl.Seats, 3, "A at 30 and B at -30 both drop at azimuth 30")
	a1, a2, b1 := pl.Seats[0], pl.Seats[1], pl.Seats[2]
	assert.Equal(t, []string{"A1", "A2", "B1"}, []string{a1.Tag, a2.Tag, b1.Tag})
	assert.Equal(t, geom.Angle(30), a2.Angle, "the shared seat is catch A's")
	assert.Equal(t, "thirty", a2.Label)
	assert.Equal(t, 0, a2.Catch)
	assert.Equal(t, []plate.Service{{Angle: -30, Catch: 1, Stop: 1}, {Angle: 30, Catch: 0, Stop: 0}}, a2.Serves, "by angle")
	assert.Equal(t, []int{1, 2}, pl.Stops[0].Seats)
	assert.Equal(t, []int{0, 1}, pl.Stops[1].Seats)
}

func TestBothSides(t *testing.T) {
	p := plan.Default()
	p.Stops = []plan.Stop{
		{Angle: 36, BothSides: true, Label: "5 sides"},
		{Angle: 0, BothSides: true},
		{Angle: math.Copysign(0, -1), BothSides: true},
	}
	pl := plate.New(p)
	require.Len(t, pl.Stops, 4, "0 is never doubled, however it is written")
	assert.Equal(t, plate.Stop{Angle: 36, Label: "5 sides", Index: 0, Catches: []int{0}, Seats: []int{2}}, pl.Stops[0])
	assert.Equal(t, plate.Stop{Angle: -36, Label: "5 sides", Index: 0, Mirrored: true, Catches: []int{0}, Seats: []int{0}}, pl.Stops[1])
	for _, s := range pl.Stops[2:] {
		assert.False(t, math.Signbit(s.Angle.Degrees()), "no -0")
		assert.Equal(t, []int{1}, s.Seats)
	}
}

func TestTags(t *testing.T) {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "1", Radius: 100}, {Name: "11", Radius: 80}, {Name: "B", Radius: 60}}
	for k := range 11 {
		p.Stops = append(p.Stops, plan.Stop{Angle: 20 * float64(k), Catches: []string{"1", "11", "B"}})
	}
	tags := map[string]bool{}
	for _, s := range plate.New(p).Seats {
		tags[s.Tag] = true
	}
	assert.Len(t, tags, 33, "seat 11 of catch 1 and seat 1 of catch 11 are told apart")
	assert.Contains(t, tags, "1-11")
	assert.Contains(t, tags, "11-1")
	assert.Contains(t, tags, "B11", "a lettered catch needs no dash")
}

func TestDatum(t *testing.T) {
	for _, c := range []struct {
		why    string
		angles []float64
		want   int
	}{
		{"no seat", nil, -1},
		{"0 is there", []float64{-5, 0, 5}, 1},
		{"nearest 0 on the negative side", []float64{-5, 6}, 0},
		{"the positive one of two", []float64{-5, 5, 9}, 1},
		{"a seat counts by every stop it serves", []float64{-360, 3}, 1},
	} {
		t.Run(c.why, func(t *testing.T) {
			assert.Equal(t, c.want, plate.New(withStops(c.angles...)).Datum())
		})
	}
}

// TestMergeAgainstBruteForce groups the places of all stops pair by pair.
func TestMergeAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		pl := plate.New(p)
		group := map[plate.Service]int{}
		var places []geom.Point
		var services []plate.Service
		for k, s := range pl.Stops {
			for _, c := range s.Catches {
				at := p.Catches[c]
				services = append(services, plate.Service{Angle: s.Angle, Catch: c, Stop: k})
				places = append(places, inSeatsPart(place(at.Radius, at.Azimuth), p.Arrangement, s.Angle.Degrees()))
			}
		}
		for i := range services {
			group[services[i]] = i
		}
		for changed := true; changed; {
			changed = false
			for i := range services {
				for j := range services {
					if a, b := group[services[i]], group[services[j]]; a < b && apart(places[i], places[j]) <= plate.Coincide {
						group[services[j]], changed = a, true
					}
				}
			}
		}
		want := map[int]int{}
		for _, g := range group {
			want[g]++
		}
		require.Len(t, pl.Seats, len(want))
		for _, s := range pl.Seats {
			g := group[s.Serves[0]]
			require.Len(t, s.Serves, want[g])
			own := false
			for _, v := range s.Serves {
				require.Equal(t, g, group[v], "all serve one place")
				require.Contains(t, pl.Stops[v.Stop].Seats, slices.IndexFunc(pl.Seats, func(x plate.Seat) bool { return x.Tag == s.Tag }))
				own = own || v.Angle == s.Angle && v.Catch == s.Catch
			}
			require.True(t, own, "the seat is that of one of the stops it serves")
			require.True(t, slices.IsSortedFunc(s.Serves, func(a, b plate.Service) int { return cmp.Compare(a.Angle, b.Angle) }), "by angle")
		}
	})
}
