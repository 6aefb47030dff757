package plate_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// nearestByLooking returns the least distance beyond d from seat i to another,
// +Inf when there is none.
func nearestByLooking(pl *plate.Plate, i int, d float64) float64 {
	least := math.Inf(1)
	for j, s := range pl.Seats {
		if x := apart(s.Centre, pl.Seats[i].Centre); j != i && x > d && x < least {
			least = x
		}
	}
	return least
}

func TestNearestAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pl := plate.New(drawPlan(t))
		mouth := pl.Plan.Seat.Mouth()
		for i, s := range pl.Seats {
			want := nearestByLooking(pl, i, 0)
			if math.IsInf(want, 1) {
				require.Equal(t, -1, s.Nearest)
				require.Equal(t, want, s.Web)
			} else {
				require.NotEqual(t, i, s.Nearest)
				require.InDelta(t, want, apart(s.Centre, pl.Seats[s.Nearest].Centre), same)
				require.InDelta(t, want-mouth, s.Web, same)
			}
		}
	})
}

func TestNearestBeyondAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pl := plate.New(drawPlan(t))
		d := rapid.Float64Range(0, 200).Draw(t, "beyond")
		for i := range pl.Seats {
			got := pl.NearestBeyond(i, d)
			// Rounding may put a seat at d itself on either side of it.
			lo, hi := nearestByLooking(pl, i, d-same), nearestByLooking(pl, i, d+same)
			if math.IsInf(lo, 1) {
				require.Equal(t, plate.Neighbour{Seat: -1, Distance: lo}, got)
				continue
			}
			require.GreaterOrEqual(t, got.Distance, lo-same)
			require.LessOrEqual(t, got.Distance, hi+same)
			if got.Seat >= 0 {
				require.InDelta(t, apart(pl.Seats[i].Centre, pl.Seats[got.Seat].Centre), got.Distance, same)
			}
		}
	})
}

func TestNearestJustShortOfHalfATurn(t *testing.T) {
	// Half a turn from here rounds up to a full turn, which is azimuth 0.
	short := math.Nextafter(180, 0)
	require.Equal(t, 360.0, short+180)
	pl := plate.New(withStops(short, -175, 60))
	assert.InDelta(t, geom.Chord(105, 5), pl.Seats[2].Web+pl.Plan.Seat.Mouth(), same)
	assert.Equal(t, 0, pl.Seats[2].Nearest, "5 degrees on, across the seam")
}

func TestSeatsNearAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pl := plate.New(drawPlan(t))
		reach := rapid.Float64Range(0, 100).Draw(t, "reach")
		for _, f := range pl.Features {
			got := map[int]float64{}
			pl.SeatsNear(f, reach, func(seat int, web float64) {
				require.NotContains(t, got, seat, "each seat once")
				got[seat] = web
			})
			for i, s := range pl.Seats {
				web := f.Clear(s.Centre, pl.Plan.Seat.Mouth()/2)
				if v, found := got[i]; found {
					require.InDelta(t, web, v, same)
				}
				if web < reach-same {
					require.Contains(t, got, i)
				}
				if web > reach+same {
					require.NotContains(t, got, i)
				}
			}
		}
	})
}

func TestSeatsNearSurroundedRing(t *testing.T) {
	whole := geom.Arc{Radius: 50, Sweep: geom.FullTurn}
	pl := plate.New(withStops(0, 90, 180, -90))
	for _, c := range []struct {
		why  string
		f    plate.Feature
		want int
	}{
		{"a hole on the pivot that reaches the ring is near every seat", plate.Feature{Core: geom.Segment{}, Half: 104}, 4},
		{"a hole on the pivot exactly as big as the ring", plate.Feature{Core: geom.Segment{}, Half: 105}, 4},
		{"a hole on the pivot far inside it", plate.Feature{Core: geom.Segment{}, Half: 50}, 0},
		{"a slot all round, wide enough", plate.Feature{Core: whole, Half: 54}, 4},
		{"a slot all round, too narrow", plate.Feature{Core: whole, Half: 50}, 0},
		{"a slot through the pivot, whose ends lie on the ring", plate.Feature{Core: geom.Segment{A: geom.Point{Y: -105}, B: geom.Point{Y: 105}}, Half: 1}, 2},
	} {
		t.Run(c.why, func(t *testing.T) {
			n := 0
			pl.SeatsNear(c.f, 1, func(int, float64) { n++ })
			assert.Equal(t, c.want, n)
		})
	}
}

func TestFeatureIsAsWideAsItsKindSays(t *testing.T) {
	p := plan.Default()
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.Hole, Diameter: 5, Width: 90, Radius: 80},
		{Part: plan.PartBase, Kind: plan.Slot, X: 10, X2: 30, Diameter: 90, Width: 8},
		{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 60, From: -30, To: 30, Diameter: 90, Width: 6},
	}
	f := plate.New(p).Features
	require.Len(t, f, 3)
	assert.Equal(t, []float64{2.5, 4, 3}, []float64{f[0].Half, f[1].Half, f[2].Half}, "what was left of another kind does not count")
	assert.Equal(t, geom.Segment{}, f[0].Core)
	assert.Equal(t, geom.Segment{A: geom.Point{X: 10}, B: geom.Point{X: 30}}, f[1].Core)
	assert.Equal(t, geom.Arc{Radius: 60, From: -30, Sweep: 60}, f[2].Core)
	// 3-4-5: from the slot's second end over to (33, 4), less half its width and 1.
	assert.InDelta(t, 5-4-1, f[1].Clear(geom.Point{X: 33, Y: 4}, 1), same)
}

func TestCollarScrews(t *testing.T) {
	p := plan.Default()
	p.Features = []plan.Feature{{Part: plan.PartBase, Kind: plan.Hole, Label: "foot", Diameter: 5}}
	p.Collar = &plan.Collar{
		Clearance: 0.5, OutsideDiameter: 310, Thickness: 18,
		Screws: plan.Screws{Count: 8, Circle: 285, Diameter: 4.5, Start: 22.5},
	}
	f := plate.New(p).Features
	require.Len(t, f, 1+2*8, "through the collar into the base")
	for k, part := range []plan.Part{plan.PartCollar, plan.PartBase} {
		for i, screw := range f[1+8*k : 9+8*k] {
			assert.Equal(t, part, screw.Part)
			assert.True(t, screw.Screw)
			assert.Equal(t, i, screw.Index)
			assert.Equal(t, 2.25, screw.Half)
			assert.InDelta(t, 0, screw.Core.DistanceToPoint(place(142.5, 22.5+45*float64(i))), same)
		}
	}
	p.Collar.Screws.Count = 0
	assert.Len(t, plate.New(p).Features, 1, "a collar may be glued on")
}
