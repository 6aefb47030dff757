package geom

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// samples is how many steps an arc or segment is cut into for the brute-force
// distance.
const samples = 400

// reach bounds the drawn shapes, mm. The brute force finds a distance too great
// by at most the length of one step of each shape.
const reach = 100

func TestSegmentNearest(t *testing.T) {
	s := Segment{Point{0, 0}, Point{10, 0}}
	for _, c := range []struct {
		p, want Point
		why     string
	}{
		{Point{5, 3}, Point{5, 0}, "abreast"},
		{Point{-4, 3}, Point{0, 0}, "before the first end"},
		{Point{14, -3}, Point{10, 0}, "past the second end"},
		{Point{10, 7}, Point{10, 0}, "just abreast of the second end"},
	} {
		assert.Equal(t, c.want, s.Nearest(c.p), c.why)
		assert.Equal(t, c.p.Distance(c.want), s.DistanceToPoint(c.p), c.why)
	}
	point := Segment{Point{3, 4}, Point{3, 4}}
	assert.Equal(t, 5., point.DistanceToPoint(Point{}), "no length: a point")
}

func TestContains(t *testing.T) {
	arc := Arc{Radius: 50, From: -30, Sweep: 60}
	over := Arc{Radius: 50, From: 170, Sweep: 20} // runs over 180 to -170
	for _, c := range []struct {
		arc  Arc
		az   Angle
		want bool
		why  string
	}{
		{arc, 0, true, "inside"},
		{arc, -30, true, "first end"},
		{arc, 30, true, "last end"},
		{arc, 330, true, "first end, a turn on"},
		{arc, -30 - angleSlack/2, true, "before the first end by a rounding error"},
		{arc, 30 + angleSlack/2, true, "past the last end by a rounding error"},
		{arc, -30 - 1e-9, false, "before the first end"},
		{arc, 30 + 1e-9, false, "past the last end"},
		{arc, 180, false, "opposite"},
		{over, 180, true, "half a turn"},
		{over, -180, true, "half a turn by its other name"},
		{over, -170, true, "last end by its other name"},
		{over, 169, false, "before"},
		{over, -169, false, "past"},
		{Arc{50, 10, 360}, -123, true, "full circle"},
		{Arc{50, 10, 400}, -123, true, "more than a full circle"},
		{Arc{50, 10, 0}, 10, true, "no sweep: its one point"},
		{Arc{50, 10, 0}, 11, false, "no sweep: nothing else"},
	} {
		assert.Equal(t, c.want, c.arc.Contains(c.az), c.why)
	}
}

func TestArcBetween(t *testing.T) {
	want := Arc{Radius: 5, From: -20, Sweep: 50}
	assert.Equal(t, want, ArcBetween(5, -20, 30))
	assert.Equal(t, want, ArcBetween(5, 30, -20), "in either order")
	assert.True(t, ArcBetween(5, -180, 180).Whole(), "a travel of a full turn")
	assert.Equal(t, Point{5, 0}, ArcBetween(5, 0, 90).End(), "clockwise")
	assert.Equal(t, Point{0, 5}, ArcBetween(5, 0, 90).Start())
}

func TestArcDistances(t *testing.T) {
	quarter := Arc{Radius: 10, From: 0, Sweep: 90}
	whole := Arc{Radius: 10, Sweep: 360}
	for _, c := range []struct {
		got, want float64
		why       string
	}{
		{quarter.DistanceToPoint(Point{}), 10, "from the pivot"},
		{quarter.DistanceToPoint(Polar(13, 45)), 3, "outside, abreast"},
		{quarter.DistanceToPoint(Polar(7, 45)), 3, "inside, abreast"},
		{quarter.DistanceToPoint(Point{-3, 14}), 5, "off the first end"},
		{quarter.DistanceToPoint(Point{14, -3}), 5, "off the last end"},
		{whole.DistanceToPoint(Point{0, -12}), 2, "full circle"},

		{quarter.DistanceToArc(Arc{15, 80, 40}), 5, "overlapping"},
		{quarter.DistanceToArc(Arc{15, -40, 400}), 5, "a full circle outside"},
		{Arc{15, 20, 10}.DistanceToArc(quarter), 5, "one within the other's angle"},
		{quarter.DistanceToArc(Arc{15, 20, 10}), 5, "the same the other way round"},
		{quarter.DistanceToArc(Arc{10, 90, 30}), 0, "end to end"},
		{quarter.DistanceToArc(Arc{10, 180, 90}), math.Sqrt2 * 10, "apart on one circle"},

		{quarter.DistanceToSegment(Segment{Point{}, Polar(20, 45)}), 0, "crossed"},
		{quarter.DistanceToSegment(Segment{Point{}, Polar(20, 225)}), 10, "crosses the circle, but not the arc"},
		{Arc{Radius: 2e-7}.DistanceToSegment(Segment{Point{0, -25}, Point{}}), 2e-7, "a tiny arc just beyond the far end of a long segment"},
		{quarter.DistanceToSegment(Segment{Point{-5, 12}, Point{5, 12}}), 2, "passes outside"},
		{whole.DistanceToSegment(Segment{Point{-5, 10}, Point{5, 10}}), 0, "touches"},
		{whole.DistanceToSegment(Segment{Point{-2, 0}, Point{2, 0}}), 8, "inside, over the pivot"},
		{whole.DistanceToSegment(Segment{Point{0, 3}, Point{0, 3}}), 7, "no length: a point"},
		{Arc{10, 170, 20}.DistanceToSegment(Segment{Point{-1, -13}, Point{1, -13}}), 3, "arc over 180"},
		{Arc{}.DistanceToSegment(Segment{Point{-5, 3}, Point{5, 3}}), 3, "no radius: the pivot"},
	} {
		assert.InDelta(t, c.want, c.got, roundOff, c.why)
	}
}

func TestDistancesAgainstSampling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawArc(t, "a"), drawArc(t, "b")
		s := Segment{drawPoint(t, "A"), drawPoint(t, "B")}
		p := drawPoint(t, "p")

		requireNear(t, nearest(arcPoints(a), []Point{p}), a.DistanceToPoint(p), step(a))
		requireNear(t, nearest(segmentPoints(s), []Point{p}), s.DistanceToPoint(p), s.A.Distance(s.B)/samples)
		requireNear(t, nearest(arcPoints(a), arcPoints(b)), a.DistanceToArc(b), step(a)+step(b))
		requireNear(t, nearest(arcPoints(a), segmentPoints(s)), a.DistanceToSegment(s), step(a)+s.A.Distance(s.B)/samples)
		require.Equal(t, a.DistanceToSegment(s), s.DistanceToArc(a))
	})
}

// TestOverlappingArcsAreTheirRadiiApart asks for the exact difference, so that a
// gap just as wide as a rule allows is not lost to rounding.
func TestOverlappingArcsAreTheirRadiiApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawArc(t, "a"), drawArc(t, "b")
		b.From = a.From + a.Sweep*Angle(rapid.Float64Range(0, 1).Draw(t, "share"))
		want := math.Abs(a.Radius - b.Radius)
		require.Equal(t, want, a.DistanceToArc(b))
		require.Equal(t, want, b.DistanceToArc(a))
	})
}

// TestDistancesTurnWithThePlate turns everything together, which changes no
// distance, and so carries arcs over 180 and over 0.
func TestDistancesTurnWithThePlate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawArc(t, "a"), drawArc(t, "b")
		s := Segment{drawPoint(t, "A"), drawPoint(t, "B")}
		by := drawAzimuth(t, "by")
		turn := func(a Arc) Arc { return Arc{a.Radius, (a.From + by).Wrap(), a.Sweep} }
		turned := Segment{s.A.Rotate(by), s.B.Rotate(by)}
		require.InDelta(t, a.DistanceToArc(b), turn(a).DistanceToArc(turn(b)), roundOff)
		require.InDelta(t, a.DistanceToSegment(s), turn(a).DistanceToSegment(turned), roundOff)
	})
}

// requireNear asserts that the exact distance lies below the sampled one, and
// by no more than the samples are apart.
func requireNear(t *rapid.T, sampled, exact, apart float64) {
	t.Helper()
	require.LessOrEqual(t, exact, sampled+roundOff)
	require.GreaterOrEqual(t, exact, sampled-apart-roundOff)
}

func nearest(as, bs []Point) float64 {
	d := math.Inf(1)
	for _, a := range as {
		for _, b := range bs {
			d = min(d, a.Distance(b))
		}
	}
	return d
}

func step(a Arc) float64 { return a.Radius * a.Sweep.Radians() / samples }

// arcPoints uses the plain formula, not Polar, and plain radians.
func arcPoints(a Arc) []Point {
	out := make([]Point, samples+1)
	for i := range out {
		az := (a.From + a.Sweep*Angle(i)/samples).Radians()
		out[i] = Point{a.Radius * math.Sin(az), a.Radius * math.Cos(az)}
	}
	return out
}

func segmentPoints(s Segment) []Point {
	out := make([]Point, samples+1)
	for i := range out {
		t := float64(i) / samples
		out[i] = Point{s.A.X*(1-t) + s.B.X*t, s.A.Y*(1-t) + s.B.Y*t}
	}
	return out
}

// drawArc draws round numbers often, so that ends coincide and circles close.
func drawArc(t *rapid.T, name string) Arc {
	degrees := rapid.OneOf(rapid.Map(rapid.IntRange(-24, 24), func(n int) float64 { return float64(n) * 15 }), rapid.Float64Range(-360, 360))
	return Arc{
		Radius: rapid.Float64Range(0, reach).Draw(t, name+" radius"),
		From:   Angle(degrees.Draw(t, name+" from")),
		Sweep:  Angle(degrees.Draw(t, name+" sweep")).Abs(),
	}
}

func drawPoint(t *rapid.T, name string) Point {
	coordinate := rapid.OneOf(rapid.Map(rapid.IntRange(-4, 4), func(n int) float64 { return float64(n) * reach / 4 }), rapid.Float64Range(-reach, reach))
	return Point{coordinate.Draw(t, name+" x"), coordinate.Draw(t, name+" y")}
}
