package drawing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// gapless is how far (mm) the ends of two shapes that join may be apart: a few
// roundings of a coordinate at 10 m.
const gapless = 1e-9

// trace returns n+1 points along a shape, ends included.
func trace(t require.TestingT, s Shape, n int) []geom.Point {
	var out []geom.Point
	for k := range n + 1 {
		u := float64(k) / float64(n)
		switch s := s.(type) {
		case Line:
			out = append(out, s.A.Add(s.B.Sub(s.A).Scale(u)))
		case Circle:
			out = append(out, onCircle(s.Centre, s.Radius, 360*u))
		case Arc:
			require.True(t, s.Start >= 0 && s.Start < 360 && s.Sweep > 0 && s.Sweep < 360, "%+v", s)
			out = append(out, onCircle(s.Centre, s.Radius, s.Start+s.Sweep*u))
		default:
			require.Fail(t, "an outline is lines, circles and arcs")
		}
	}
	return out
}

// onCircle returns a point of a circle in a draughting direction.
func onCircle(c geom.Point, radius, deg float64) geom.Point {
	s, cos := math.Sincos(deg * math.Pi / 180)
	return geom.Point{X: c.X + radius*cos, Y: c.Y + radius*s}
}

// loops follows shapes end to end and returns the closed outlines they make, as
// points.
func loops(t require.TestingT, shapes []Shape, n int) [][]geom.Point {
	var out [][]geom.Point
	var open []geom.Point
	for _, s := range shapes {
		p := trace(t, s, n)
		switch {
		case len(open) == 0:
			// Which way the first is followed shows only with the second.
		case open[len(open)-1].Distance(p[0]) <= gapless:
		case open[len(open)-1].Distance(p[n]) <= gapless:
			p = reversed(p)
		case open[0].Distance(p[0]) <= gapless:
			open = reversed(open)
		case open[0].Distance(p[n]) <= gapless:
			open, p = reversed(open), reversed(p)
		default:
			require.Fail(t, "a gap", "%v after %v", p[0], open[len(open)-1])
		}
		open = append(open, p...)
		if open[0].Distance(open[len(open)-1]) <= gapless {
			out, open = append(out, open), nil
		}
	}
	require.Empty(t, open, "the last outline is closed")
	return out
}

func reversed(p []geom.Point) []geom.Point {
	out := make([]geom.Point, len(p))
	for i := range p {
		out[len(p)-1-i] = p[i]
	}
	return out
}

// area returns what a closed outline encloses, by the shoelace formula.
func area(p []geom.Point) float64 {
	var twice float64
	for i := range p {
		q := p[(i+1)%len(p)]
		twice += p[i].X*q.Y - q.X*p[i].Y
	}
	return math.Abs(twice) / 2
}

func TestSlotsEncloseTheirArea(t *testing.T) {
	const n = 2000          // points a shape
	const sampling = 2e-6   // share of a full circle's area that n chords lose: (2 pi/n)²/6
	ends := math.Pi * 4 * 4 // of a slot 8 wide
	rad := math.Pi / 180
	segment := func(a, b geom.Point) plate.Core { return geom.Segment{A: a, B: b} }
	for _, c := range []struct {
		why  string
		core plate.Core
		half float64
		want float64 // mm²: the first outline less the second
	}{
		{"a round hole", segment(geom.Point{X: 3, Y: 4}, geom.Point{X: 3, Y: 4}), 4, ends},
		{"a straight slot", segment(geom.Point{X: -60, Y: -30}, geom.Point{X: -60, Y: -70}), 4, 40*8 + ends},
		{"askew, 3-4-5", segment(geom.Point{}, geom.Point{X: 30, Y: 40}), 4, 50*8 + ends},
		{"hardly longer than wide", segment(geom.Point{}, geom.Point{X: 0.001}), 4, 0.001*8 + ends},
		{"a curved slot", geom.Arc{Radius: 60, From: -30, Sweep: 60}, 4, 60*60*rad*8 + ends},
		{"across the seam", geom.Arc{Radius: 60, From: 150, Sweep: 60}, 4, 60*60*rad*8 + ends},
		{"most of the way round, the ends apart", geom.Arc{Radius: 60, From: 10, Sweep: 340}, 4, 60*340*rad*8 + ends},
		{"no sweep", geom.Arc{Radius: 60, From: 10}, 4, ends},
		{"all round", geom.Arc{Radius: 60, From: 10, Sweep: 360}, 4, 60 * 2 * math.Pi * 8},
		{"more than all round", geom.Arc{Radius: 60, From: 10, Sweep: 400}, 4, 60 * 2 * math.Pi * 8},
		{"all round and over the pivot", geom.Arc{Radius: 3, From: 10, Sweep: 360}, 4, math.Pi * 7 * 7},
		{"just over the pivot: half a ring's outer part and two half circles", geom.Arc{Radius: 4, From: 0, Sweep: 180}, 4, math.Pi*8*8/2 + ends},
	} {
		t.Run(c.why, func(t *testing.T) {
			all := loops(t, around(c.core, c.half), n)
			got := area(all[0])
			for _, inner := range all[1:] {
				got -= area(inner)
			}
			assert.InEpsilon(t, c.want, got, 10*sampling)
		})
	}
}

// TestEveryOutlinePointIsHalfTheWidthAway holds for slots however wide: no part
// of the outline lies inside the slot.
func TestEveryOutlinePointIsHalfTheWidthAway(t *testing.T) {
	const widest = 200.0 // radius of a curved slot, mm
	rapid.Check(t, func(t *rapid.T) {
		half := rapid.Float64Range(0.05, 100).Draw(t, "half")
		at := rapid.OneOf(rapid.SampledFrom([]float64{0, 10, 10 + 1e-12}), rapid.Float64Range(-200, 200))
		core := plate.Core(geom.Segment{
			A: geom.Point{X: at.Draw(t, "x"), Y: at.Draw(t, "y")}, B: geom.Point{X: at.Draw(t, "x2"), Y: at.Draw(t, "y2")},
		})
		if rapid.Bool().Draw(t, "curved") {
			core = geom.Arc{
				Radius: rapid.OneOf(rapid.Just(half), rapid.Float64Range(0.1, widest)).Draw(t, "radius"),
				From:   geom.Angle(rapid.Float64Range(-360, 360).Draw(t, "from")),
				Sweep: geom.Angle(rapid.OneOf(
					rapid.Float64Range(0, 720), rapid.Float64Range(300, 360), rapid.SampledFrom([]float64{0, 90, 180, 270, 360}),
				).Draw(t, "sweep")),
			}
		}
		for _, loop := range loops(t, around(core, half), 24) {
			for _, p := range loop {
				require.InDelta(t, half, core.DistanceToPoint(p), gapless+widest*leastSweep.Radians(), "what hardly turns is a point")
			}
		}
	})
}

func TestSlotOfAlmostNoLength(t *testing.T) {
	core := geom.Segment{B: geom.Point{X: math.SmallestNonzeroFloat64}}
	for _, s := range around(core, 4) {
		for _, p := range trace(t, s, 8) {
			assert.InDelta(t, 4, core.DistanceToPoint(p), gapless, "as wide as asked, its direction not lost")
		}
	}
}
