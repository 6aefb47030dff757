package room

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
)

// leastShift returns the least greatest distance by which stops must be moved,
// found by bisection: with each stop as far back as it may and the one before
// allows, none must come out too far on.
func leastShift(stops []geom.Angle, gap geom.Angle) float64 {
	can := func(shift geom.Angle) bool {
		at := geom.Angle(math.Inf(-1))
		for _, t := range stops {
			if at = max(t-shift, at+gap); at > t+shift {
				return false
			}
		}
		return true
	}
	lo, hi := geom.Angle(0), geom.Angle(360)
	for range 60 {
		if mid := (lo + hi) / 2; can(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return hi.Degrees()
}

func TestMoveApartMovesNoFartherThanItMust(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	for range 300 {
		stops := randomStops(r, 1+r.IntN(12), -60, 60)
		slices.Sort(stops)
		gap := geom.Angle(0.1 + 8*r.Float64())
		got, ok := MoveApart(stops, gap)
		require.True(t, ok)
		farthest := 0.0
		for i := range got {
			farthest = max(farthest, (got[i] - stops[i]).Abs().Degrees())
			if i > 0 {
				require.GreaterOrEqual(t, (got[i] - got[i-1]).Degrees(), gap.Degrees()-tiny)
			}
		}
		// Rounding to a step costs half a step a gap, and half a step itself.
		allow := movedStep.Degrees() * (float64(len(stops)) + 1)
		require.LessOrEqual(t, farthest, leastShift(stops, gap)+allow, "%v by %v", stops, gap)
	}
}

func TestMoveApart(t *testing.T) {
	got, ok := MoveApart([]geom.Angle{-45, -31.6, -30, 0, 30, 31.6, 45}, 4)
	require.True(t, ok)
	assert.Equal(t, []geom.Angle{-45, -32.801, -28.8, 0, 28.8, 32.801, 45}, got, "those with room stay, and both sides alike")
	_, ok = MoveApart([]geom.Angle{0, 90, 180, 270}, 91)
	assert.False(t, ok, "more than a full turn")
	got, ok = MoveApart(nil, 5)
	assert.True(t, ok)
	assert.Empty(t, got)
}
