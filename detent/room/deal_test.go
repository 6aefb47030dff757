package room

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
)

// leastOnLine returns the least gap between two stops of one catch.
func leastOnLine(stops []geom.Angle, of []int, k int) geom.Angle {
	last := make([]geom.Angle, k)
	for c := range last {
		last[c] = geom.Angle(-inf)
	}
	least := geom.FullTurn
	for i, t := range stops {
		least = min(least, t-last[of[i]])
		last[of[i]] = t
	}
	return least
}

// No deal on a line leaves more than dealing in turn: all of them are tried.
func TestDealInTurnIsBest(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for n := 1; n <= 9; n++ {
		for k := 1; k <= 3; k++ {
			for range 6 {
				stops := randomStops(r, n, -45, 45)
				slices.Sort(stops)
				best := geom.Angle(-1)
				everyDeal(n, k, func(of []int) bool {
					best = max(best, leastOnLine(stops, of, k))
					return true
				})
				require.InDelta(t, best.Degrees(), leastOnLine(stops, Deal(n, k), k).Degrees(), tiny, "%d of %v", k, stops)
				require.InDelta(t, best.Degrees(), DealtGap(stops, k).Degrees(), tiny)
			}
		}
	}
}

// leastWeb returns the least centre distance of two stops of one slot, round the
// circle, by looking at every pair.
func leastWeb(stops []geom.Angle, radii []float64, of []int) float64 {
	least := inf
	for i := range stops {
		for j := range i {
			if of[i] == of[j] {
				p, q := geom.Polar(radii[of[i]], stops[i]), geom.Polar(radii[of[i]], stops[j])
				least = math.Min(least, p.Distance(q))
			}
		}
	}
	return least
}

// The programme finds a deal exactly when there is one, and the widest: against
// every assignment of up to 9 stops to up to 3 slots, on a line and round the
// circle.
func TestWidestAgainstEveryAssignment(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	const pitch = 6.5
	found := 0
	for n := 1; n <= 9; n++ {
		for range 24 {
			k := 1 + r.IntN(3)
			to := []float64{10, 45, 180, 360}[r.IntN(4)]
			stops := afterWidestGap(Places(randomStops(r, n, 0, to)))
			radii := make([]float64, k)
			for i := range radii {
				radii[i] = []float64{8, 10, 15, 25, 60, 111}[r.IntN(6)]
			}
			best := 0.0
			everyDeal(len(stops), k, func(of []int) bool {
				best = math.Max(best, leastWeb(stops, radii, of))
				return true
			})
			of, widest, ok := Widest(context.Background(), stops, radii, pitch)
			require.Equal(t, best >= pitch-Slack, ok, "%v on %v: %g", stops, radii, best)
			if !ok {
				continue
			}
			found++
			if math.IsInf(best, 1) {
				require.True(t, math.IsInf(widest, 1))
				continue
			}
			require.InDelta(t, best, widest, 2*Slack, "%v on %v", stops, radii)
			require.InDelta(t, widest, leastWeb(stops, radii, of), tiny)
		}
	}
	assert.Greater(t, found, 50, "both outcomes are tried")
}

// The fewest rings are the fewest: fewer do not hold the stops, whatever the
// deal, even with the largest rings there are.
func TestFewestRingsAgainstEveryAssignment(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	more := 0
	for range 60 {
		p := head(randomStops(r, 3+r.IntN(7), -10, 10)...)
		p.From, p.To = -360, 360
		p.Radii = p.Radii[:20+r.IntN(100)]
		a, ok := fewest(p.SeparateRings, context.Background())
		stops := Places(p.Stops)
		for m := 1; m <= 3; m++ {
			radii := []float64{p.Radii[len(p.Radii)-1]}
			for len(radii) < m && radii[len(radii)-1]-6.5 >= p.Radii[0] {
				radii = append(radii, radii[len(radii)-1]-6.5)
			}
			if len(radii) < m {
				break
			}
			fits := false
			everyDeal(len(stops), m, func(of []int) bool {
				fits = leastWeb(stops, radii, of) >= 6.5-Slack
				return !fits
			})
			if m < 2 || len(stops) < m {
				continue // one ring is another kind
			}
			if ok && len(a.Catches) == m {
				require.True(t, fits)
				more++
			}
			if fits {
				require.True(t, ok)
				require.LessOrEqual(t, len(a.Catches), m, "%v", p.Stops)
				break
			}
		}
	}
	assert.Greater(t, more, 20)
}
