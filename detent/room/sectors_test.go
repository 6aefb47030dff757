package room

import (
	"context"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
)

// Whatever is proposed turns clean, keeps its webs and leaves each stop where it
// was asked for.
func TestAnswersHold(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	kinds := map[Kind]int{}
	for range 150 {
		half := []float64{20, 45, 90, 170}[r.IntN(4)]
		p := head(randomStops(r, 2+r.IntN(12), -half, half)...)
		p.From, p.To = geom.Angle(-half-r.Float64()*10), geom.Angle(half+r.Float64()*10)
		ctx := context.Background()
		for _, s := range []func() (Answer, bool){
			func() (Answer, bool) { return first(p.OneRing()) },
			func() (Answer, bool) { return fewest(p.SharedRing, ctx) },
			func() (Answer, bool) { return fewest(p.SeparateRings, ctx) },
			func() (Answer, bool) { return fewest(p.MixedRings, ctx) },
			func() (Answer, bool) { return first(p.NearestStops()) },
		} {
			a, ok := s()
			if !ok {
				continue
			}
			kinds[a.Kind]++
			require.True(t, p.clean(a), "%s of %v", a.Kind, p.Stops)
			require.Len(t, a.Stops, len(p.Stops))
			for i, s := range a.Stops {
				require.Equal(t, p.Stops[i], s.Was)
				if a.Kind != Nearest {
					require.Equal(t, s.Was, s.Turn)
				}
			}
			seats := a.Seats()
			for i := range seats {
				for _, q := range seats[:i] {
					d := geom.Polar(seats[i].Radius, seats[i].Place).Distance(geom.Polar(q.Radius, q.Place))
					require.GreaterOrEqual(t, d, 6.5-2*Slack, "%s of %v", a.Kind, p.Stops)
				}
			}
			require.GreaterOrEqual(t, a.Web, p.Web-2*Slack)
			for i, c := range a.Catches {
				for _, q := range a.Catches[:i] {
					if c.Group == q.Group {
						require.GreaterOrEqual(t, geom.Chord(c.Radius, c.Place-q.Place), p.Pocket-2*Slack)
					}
				}
			}
		}
	}
	for _, k := range []Kind{OneRing, SharedRing, Rings, Mixed, Nearest} {
		assert.Greater(t, kinds[k], 10, k)
	}
}

// The same question has the same answer.
func TestAnswersAreDeterministic(t *testing.T) {
	p := head(both(0, 15, 22.5, 30, 31.6, 45)...)
	for range 3 {
		for _, s := range []func(context.Context) (Answer, bool){
			func(ctx context.Context) (Answer, bool) { return fewest(p.SharedRing, ctx) },
			func(ctx context.Context) (Answer, bool) { return fewest(p.SeparateRings, ctx) },
			func(ctx context.Context) (Answer, bool) { return fewest(p.MixedRings, ctx) },
		} {
			a, ok := s(context.Background())
			b, _ := s(context.Background())
			require.True(t, ok)
			require.Equal(t, a, b)
		}
	}
}

// Where sectors do not fit a turn, equal steps may still lie into each other, so
// that a ball meets a strange seat only at a stop.
func TestInterleaved(t *testing.T) {
	p := head(divisions(120)...) // 3 degrees: too near on 60 mm
	p.Stops = p.Stops[:119]
	p.From, p.To = 0, 354
	p.Own, p.Radii = 60, []float64{60}
	_, one := first(p.OneRing())
	require.False(t, one)
	a, ok := fewest(p.SharedRing, context.Background())
	require.True(t, ok)
	assert.True(t, p.clean(a))
	assert.Less(t, len(a.Seats()), 119, "seats serve several stops")
	p.To = 359
	_, ok = fewest(p.SharedRing, context.Background())
	assert.False(t, ok, "now a ball also drops at 357, where no stop is")
}

func TestStopsWhenCancelled(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	p := head(both(0, 15, 22.5, 30, 31.6, 45)...)
	for _, s := range []func() (Answer, bool){
		func() (Answer, bool) { return fewest(p.SharedRing, ctx) },
		func() (Answer, bool) { return fewest(p.SeparateRings, ctx) },
		func() (Answer, bool) { return fewest(p.MixedRings, ctx) },
	} {
		_, ok := s()
		assert.False(t, ok)
	}
}

func TestEvenly(t *testing.T) {
	for _, c := range []struct {
		why   string
		apart []geom.Angle
		want  []geom.Angle
	}{
		{"room to spare is shared out", []geom.Angle{20, 20, 20}, []geom.Angle{0, 120, 240}},
		{"one needs more than its share", []geom.Angle{200, 20, 20}, []geom.Angle{0, 200, 280}},
		{"none to spare", []geom.Angle{180.5, 179.5}, []geom.Angle{0, 180.5}},
		{"whole degrees where they do", []geom.Angle{100.2, 100.2, 100.2}, []geom.Angle{0, 120, 240}},
	} {
		assert.Equal(t, c.want, evenly(c.apart), c.why)
	}
}

// TestSectorsTouch: in the widest travel that two sectors leave room for, a ball
// at its end stands just over the rim of the other catch's first seat.
func TestSectorsTouch(t *testing.T) {
	const ring, mouth = 60.0, 2.25
	reach := 2 * geom.FromRadians(math.Asin(mouth/2/ring)) // a chord of the mouth's radius
	of := []span{{0, 0}, {-10, -10}}
	// To + 10 + reach to the second, To + reach back to the first: 360 in all.
	p := Problem{Mouth: 2 * mouth, Web: 2, Pocket: 11}
	const hair geom.Angle = 1e-9 // degrees: rounding must not decide
	p.To = 175 - reach - hair
	p.From = -p.To
	places, ok := p.sectors(ring, of)
	require.True(t, ok)
	ball, seat := geom.Polar(ring, places[0]+p.To), geom.Polar(ring, places[1]-10)
	assert.InDelta(t, mouth, ball.Distance(seat), 1e-8)
	ball, seat = geom.Polar(ring, places[1]+p.To), geom.Polar(ring, places[0])
	assert.InDelta(t, mouth, ball.Distance(seat), 1e-8)
	p.To += 2 * hair
	p.From = -p.To
	_, ok = p.sectors(ring, of)
	assert.False(t, ok, "a hair more travel")
}
