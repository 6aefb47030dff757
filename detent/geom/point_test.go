package geom

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

const (
	// printed7 is half a unit of the last of 7 printed decimals, with the same
	// again for the float's own rounding.
	printed7 = 0.6e-7
	// printed10 is the same for 10 printed decimals.
	printed10 = 0.6e-10
	// roundOff is far above the rounding of a few operations on coordinates of
	// up to 10,000 mm, and far below anything that can be made: mm or degrees.
	roundOff = 1e-9
)

// TestPolarAgainstHoleCircle uses the coordinates of equally spaced holes on a
// circle of radius 1 as handbooks tabulate them (exact mathematics): first hole
// on +x, anticlockwise. Ours starts on +y and runs clockwise, which swaps x and
// y.
func TestPolarAgainstHoleCircle(t *testing.T) {
	for n, holes := range map[int][][2]float64{
		5: {{1, 0}, {0.3090170, 0.9510565}, {-0.8090170, 0.5877853}, {-0.8090170, -0.5877853}, {0.3090170, -0.9510565}},
		7: {
			{1, 0},
			{0.6234898, 0.7818315},
			{-0.2225209, 0.9749279},
			{-0.9009689, 0.4338837},
			{-0.9009689, -0.4338837},
			{-0.2225209, -0.9749279},
			{0.6234898, -0.7818315},
		},
	} {
		for k, hole := range holes {
			p := Polar(1, 360*Angle(k)/Angle(n))
			assert.InDelta(t, hole[0], p.Y, printed7, "n=%d, hole %d", n, k)
			assert.InDelta(t, hole[1], p.X, printed7, "n=%d, hole %d", n, k)
		}
	}
}

func TestPolarDirections(t *testing.T) {
	for _, c := range []struct {
		az   Angle
		want Point
		why  string
	}{
		{0, Point{0, 10}, "away from the operator"},
		{90, Point{10, 0}, "clockwise is to the right"},
		{180, Point{0, -10}, "towards the operator"},
		{-90, Point{-10, 0}, "to the left"},
		{30, Point{5, 10 * math.Sqrt(3) / 2}, "to the right of straight on"},
	} {
		assert.Equal(t, c.want, Polar(10, c.az), c.why)
		assert.InDelta(t, float64(c.az), float64(Polar(10, c.az).Azimuth()), roundOff, c.why)
	}
}

// chordConstants are the chords of n equal parts of a circle of diameter 1.
// They are exact mathematics, sin(180/n), and are printed to as many places in
// Machinery's Handbook and other workshop handbooks.
var chordConstants = map[int]float64{
	3: 0.8660254038, 4: 0.7071067812, 5: 0.5877852523, 6: 0.5, 7: 0.4338837391,
	8: 0.3826834324, 9: 0.3420201433, 10: 0.3090169944, 11: 0.2817325568,
	12: 0.2588190451, 13: 0.2393156643, 14: 0.2225209340, 15: 0.2079116908,
	16: 0.1950903220, 17: 0.1837495178,
}

func TestChordAgainstHandbook(t *testing.T) {
	require.Len(t, chordConstants, 15)
	for n, want := range chordConstants {
		step := FullTurn / Angle(n)
		assert.InDelta(t, want, Chord(0.5, step), printed10, "n=%d", n)
		assert.InDelta(t, 200*want, Chord(100, -step), 200*printed10, "n=%d, other way round, diameter 200", n)
	}
}

// TestChordRejectsMisprint holds against a four-place chord table in
// circulation that prints 0.2070 for 15 parts.
func TestChordRejectsMisprint(t *testing.T) {
	const misprint = 0.2070
	assert.Greater(t, math.Abs(Chord(0.5, FullTurn/15)-misprint), 5e-4)
}

func TestChordLimits(t *testing.T) {
	assert.Zero(t, Chord(100, 0), "no angle")
	assert.Equal(t, 200., Chord(100, 180), "the diameter")
	assert.Zero(t, Chord(100, 360), "all the way round")
	assert.Equal(t, 100., Chord(100, 60), "a hexagon's side is its radius")
}

func TestChordIsTheDistanceBetweenHoles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(0, 10_000).Draw(t, "radius")
		a, b := drawAzimuth(t, "a"), drawAzimuth(t, "b")
		require.InDelta(t, Polar(r, a).Distance(Polar(r, b)), Chord(r, b-a), roundOff)
	})
}

func TestAzimuth(t *testing.T) {
	zero := math.Copysign(0, -1)
	for _, c := range []struct {
		p    Point
		want Angle
		why  string
	}{
		{Point{}, 0, "the pivot has azimuth 0"},
		{Point{0, zero}, 0, "the pivot, -0"},
		{Point{zero, zero}, 0, "the pivot, both -0"},
		{Point{zero, 5}, 0, "straight on, -0"},
		{Point{0, -5}, 180, "straight back"},
		{Point{zero, -5}, 180, "straight back is never -180"},
		{Point{1, 1}, 45, "between right and straight on"},
		{Point{-1, -1}, -135, "behind to the left"},
	} {
		got := c.p.Azimuth()
		assert.Equal(t, c.want, got, c.why)
		assert.False(t, got == 0 && math.Signbit(float64(got)), c.why)
	}
}

func TestPolarAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(0.1, 10_000).Draw(t, "radius")
		az := drawAzimuth(t, "az")
		p := Polar(r, az)
		require.InDelta(t, r, p.Norm(), roundOff)
		require.InDelta(t, 0, float64((p.Azimuth() - az).Wrap()), roundOff)
	})
}

func TestRotateTurnsClockwise(t *testing.T) {
	assert.Equal(t, Point{5, 0}, Point{0, 5}.Rotate(90), "from straight on to the right")
	assert.Equal(t, Point{0, -5}, Point{5, 0}.Rotate(90), "from right to straight back")
	for _, p := range []Point{{0, -5}, {5, 0}, {0, 5}, {-5, 0}, {}} {
		q := p.Rotate(180)
		assert.False(t, q.X == 0 && math.Signbit(q.X), "-0: x of %v", p)
		assert.False(t, q.Y == 0 && math.Signbit(q.Y), "-0: y of %v", p)
	}
	rapid.Check(t, func(t *rapid.T) {
		az, by := drawAzimuth(t, "az"), drawAzimuth(t, "by")
		want := Polar(100, az+by)
		require.InDelta(t, 0, Polar(100, az).Rotate(by).Distance(want), roundOff)
	})
}

func TestVectors(t *testing.T) {
	p, q := Point{3, 4}, Point{1, -2}
	assert.Equal(t, Point{4, 2}, p.Add(q))
	assert.Equal(t, Point{2, 6}, p.Sub(q))
	assert.Equal(t, Point{6, 8}, p.Scale(2))
	assert.Equal(t, -5., p.Dot(q))
	assert.Equal(t, 5., p.Norm())
	assert.Equal(t, math.Sqrt(40), p.Distance(q))
	assert.Equal(t, Point{-3, 4}, p.MirrorX(), "seen from the other face")
	assert.False(t, math.Signbit(Point{0, 4}.MirrorX().X), "on the axis, no -0")
}

func drawAzimuth(t *rapid.T, name string) Angle {
	return Angle(rapid.Float64Range(-360, 360).Draw(t, name))
}
