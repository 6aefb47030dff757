package room

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
)

// opposed is a pair on one ring of 100 mm.
func opposed() Pair {
	return Pair{Apart: 180, Radii: [2]float64{100, 100}, Shift: 0.05, Landing: 0.2, Mouth: 4.5}
}

// TestPairTakesWhatAShiftAllows looks for the table's place among many: with the
// table turned and moved about, both balls come home for a disagreement up to the
// one that is told, and for none beyond.
func TestPairTakesWhatAShiftAllows(t *testing.T) {
	for _, p := range []Pair{
		opposed(),
		{Apart: 180, Radii: [2]float64{100, 60}, Shift: 0.3},
		{Apart: 90, Radii: [2]float64{100, 100}, Shift: 0.3},
		{Apart: 20, Radii: [2]float64{100, 80}, Shift: 0.3},
	} {
		// Both home: the shift's part along each run, over its radius, makes up the
		// difference of the two turns.
		run := func(az geom.Angle) geom.Point { return geom.Polar(1, az+90) }
		best := 0.0
		for az := geom.Angle(0); az < 360; az += 0.25 {
			v := geom.Polar(p.Shift, az)
			best = math.Max(best, v.Dot(run(0))/p.Radii[0]-v.Dot(run(p.Apart))/p.Radii[1])
		}
		assert.InEpsilon(t, best, p.Takes().Radians(), 1e-4, "%+v", p)
	}
	p := opposed()
	assert.InDelta(t, 2*p.Shift/100, p.Takes().Radians(), tiny, "twice the play of the pivot, over the radius")
	p.Play = 0.1
	assert.InDelta(t, 2*(p.Shift+0.1)/100, p.Takes().Radians(), tiny)
	assert.InDelta(t, 2.25/100, (p.Misses() - p.Takes()).Radians(), tiny)
}

func TestPairSway(t *testing.T) {
	p := opposed()
	assert.Zero(t, p.Sway(1), "opposite catches cancel what moves the table sideways")
	p.Apart = 0
	assert.InDelta(t, 1.0/100, p.Sway(1).Radians(), tiny, "side by side they are as one")
	p.Apart = 90
	assert.InDelta(t, math.Sqrt2/2/100, p.Sway(1).Radians(), tiny)
	p = Pair{Apart: 180, Radii: [2]float64{100, 50}}
	assert.InDelta(t, 50.0/12500, p.Sway(1).Radians(), tiny, "the longer arm wins: (100-50)/(100²+50²)")
}

// The spread of a pair's stop against many tables drawn at random.
func TestPairStd(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 14))
	disc := func(radius float64) geom.Point {
		return geom.Polar(radius*math.Sqrt(r.Float64()), geom.Angle(360*r.Float64()))
	}
	const seatError, catchError = 0.3, 0.2
	for _, apart := range []geom.Angle{180, 90, 10} {
		p := Pair{Apart: apart, Radii: [2]float64{100, 80}, Shift: 0.25, Landing: math.Hypot(seatError, catchError) / 2}
		var sum, alone, apart2, hung float64
		const n = 200_000
		for range n {
			v := disc(p.Shift)
			var turn, own [2]float64
			for k, az := range [2]geom.Angle{0, apart} {
				run := geom.Polar(1, az+90)
				own[k] = (disc(seatError).Dot(run) - disc(catchError).Dot(run)) / p.Radii[k]
				turn[k] = own[k] - v.Dot(run)/p.Radii[k]
			}
			// Springs of one stiffness: the table turns to where ΣR·(R·turn - off) is 0.
			mean := (p.Radii[0]*p.Radii[0]*turn[0] + p.Radii[1]*p.Radii[1]*turn[1]) / (p.Radii[0]*p.Radii[0] + p.Radii[1]*p.Radii[1])
			sum += mean * mean
			alone += turn[0] * turn[0]
			apart2 += (own[0] - own[1]) * (own[0] - own[1])
			if math.Abs(own[0]-own[1]) > p.Takes().Radians() {
				hung++
			}
		}
		const sampling = 0.01 // of a spread from so many tables
		assert.InEpsilon(t, math.Sqrt(sum/n), p.Std().Radians(), sampling)
		assert.InEpsilon(t, math.Sqrt(alone/n), p.StdAlone().Radians(), sampling)
		assert.InEpsilon(t, math.Sqrt(apart2/n), p.Disagreement().Radians(), sampling)
		assert.InDelta(t, hung/n, p.Hangs(), 0.03, "a normal distribution is near enough")
	}
	one := opposed()
	assert.InDelta(t, math.Hypot(0.2, 0.05/2)/100, one.StdAlone().Radians(), tiny, "seat, catch and half the shift")
	p := opposed()
	p.Landing = 0
	assert.Zero(t, p.Hangs(), "perfect holes agree")
}

func TestServed(t *testing.T) {
	numbers := func(ds []Division) []int {
		var out []int
		for _, d := range ds {
			out = append(out, d.N)
		}
		return out
	}
	assert.Equal(t, []int{2, 3, 4, 6, 8, 12, 24}, numbers(Served(divisions(24), 0)))
	assert.Equal(t, []int{7}, numbers(Served(divisions(7), 3)), "from whichever stop")
	rounded := divisions(7)
	for i := range rounded {
		rounded[i] = geom.Angle(math.Round(rounded[i].Degrees()*1e3) / 1e3).Wrap()
	}
	ds := Served(rounded, 0)
	require.Equal(t, []int{7}, numbers(ds), "as typed, to three decimals and on both sides")
	assert.Equal(t, []int{0, 1, 2, 3, 4, 5, 6}, ds[0].Stops)
	assert.Empty(t, Served([]geom.Angle{0, 90, 200}, 0))
	assert.Empty(t, Served(nil, 0))
	got := Served([]geom.Angle{15, 90, 0, 180, -90}, 2)
	require.Equal(t, []int{2, 4}, numbers(got))
	assert.Equal(t, []int{2, 1, 3, 4}, got[1].Stops, "the stop that is none of them is left out")
}
