package room

import (
	"context"
	"math/bits"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
)

// Seats and catches make up the cyclic group, each division just once, for every
// way to factor up to 48 divisions.
func TestSpreadIsAFactorization(t *testing.T) {
	for n := 1; n <= 48; n++ {
		for c := 1; c <= n; c++ {
			if n%c != 0 {
				continue
			}
			met := make([]int, n)
			for r, q := range Spread(n, c) {
				for seat := 0; seat < n; seat += c {
					turn := ((seat-q)%n + n) % n // ball at q, turned on to the seat
					met[turn]++
					require.Equal(t, r, turn%c, "catch %d of %d serves its residue", r, c)
				}
			}
			for turn, balls := range met {
				require.Equal(t, 1, balls, "%d of %d with %d catches", turn, n, c)
			}
		}
	}
}

// No fewer seats serve all divisions: every set of seats is tried against every
// set of catches, for as many divisions as that can be done in a moment. Sets
// are bits; both may hold 0, since turning one of them changes nothing.
func TestNoFewerSeatsServeAllDivisions(t *testing.T) {
	for n := 2; n <= 12; n++ {
		all := uint32(1)<<n - 1
		least := map[int]int{} // seats by catches
		for catches := uint32(1); catches <= all; catches += 2 {
			for seats := uint32(1); seats <= all; seats += 2 {
				c, s := bits.OnesCount32(catches), bits.OnesCount32(seats)
				if known, tried := least[c]; tried && s >= known {
					continue
				}
				met := uint32(0)
				for q := range n {
					if catches>>q&1 == 1 {
						met |= seats>>q | seats<<(n-q)&all
					}
				}
				if met == all {
					least[c] = s
				}
			}
		}
		for c := 1; c <= n; c++ {
			if n%c == 0 {
				assert.Equal(t, n/c, least[c], "%d divisions, %d catches", n, c)
			}
		}
	}
}

// However the stops are written, a divided plate turns clean, serves every stop
// and spreads its catches.
func TestDivided(t *testing.T) {
	for _, n := range []int{16, 24, 36, 60, 72, 100, 360} {
		p := head(divisions(n)...)
		for i := range p.Stops {
			p.Stops[i] = p.Stops[i].Wrap() // as -180 to 180
		}
		p.From, p.To = -360, 360
		tried := map[int]bool{}
		for c := 2; c <= MaxCatches; c++ {
			a, ok := first(p.Divided(context.Background(), c))
			if !ok {
				continue
			}
			tried[c] = true
			require.Len(t, a.Catches, c)
			require.Len(t, a.Seats(), n/c)
			require.True(t, p.clean(a))
			require.GreaterOrEqual(t, a.Web, p.Web-Slack)
			var at []geom.Angle
			for _, k := range a.Catches {
				at = append(at, k.Place.Turn())
			}
			even := geom.FullTurn / geom.Angle(c)
			assert.GreaterOrEqual(t, LeastGap(Places(at)), even-geom.Angle(c)*360/geom.Angle(n)-geom.Angle(tiny), "%d catches of %d", c, n)
			for i, s := range a.Stops {
				require.Equal(t, p.Stops[i], s.Turn)
			}
		}
		assert.NotEmpty(t, tried, "%d divisions", n)
	}
	a, ok := fewest(head(divisions(10)[:9]...).Divided, context.Background())
	assert.False(t, ok, "one is missing: %v", a)
}

// A head of 360 divisions is within reach with 60 seats, whatever it prefers.
func TestDividedBy360(t *testing.T) {
	p := head(divisions(360)...)
	p.From, p.To = -360, 360
	least := 360
	for c := 2; c <= MaxCatches; c++ {
		if a, ok := first(p.Divided(context.Background(), c)); ok {
			least = min(least, len(a.Seats()))
		}
	}
	assert.LessOrEqual(t, least, 60)
}
