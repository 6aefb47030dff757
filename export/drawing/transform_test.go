package drawing

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
)

func TestTransformMirrorsThenScalesThenMoves(t *testing.T) {
	tr := Transform{Mirror: true, Scale: 2, Move: geom.Point{X: 100, Y: 10}}
	p, q := geom.Point{X: 3, Y: 4}, geom.Point{X: -1, Y: 7}
	assert.Equal(t, geom.Point{X: 94, Y: 18}, tr.Point(p))
	assert.Equal(t, Line{tr.Point(p), tr.Point(q)}, Line{p, q}.transform(tr))
	assert.Equal(t, Circle{tr.Point(p), 5}, Circle{p, 2.5}.transform(tr), "a radius scales and stays above 0")
	assert.Equal(t, Polygon{[]geom.Point{tr.Point(p), tr.Point(q)}}, Polygon{[]geom.Point{p, q}}.transform(tr))
}

func TestTransformLeavesThePolygonItCameFrom(t *testing.T) {
	before := Polygon{[]geom.Point{{X: 1, Y: 2}}}
	before.transform(Transform{Mirror: true, Scale: 3})
	assert.Equal(t, Polygon{[]geom.Point{{X: 1, Y: 2}}}, before)
}

func TestLetteringReadsTheRightWayRound(t *testing.T) {
	for _, c := range []struct {
		in, want Text
		why      string
	}{
		{
			Text{Size: 3, Align: Left, Angle: 30},
			Text{Size: 3, Align: Right, Angle: -30},
			"it stood right of its place, so it now stands left of it, and falls where it rose",
		},
		{Text{Size: 3, Align: Right}, Text{Size: 3, Align: Left}, "and the other way"},
		{Text{Size: 3, Align: Top}, Text{Size: 3, Align: Top}, "what is in the middle stays so"},
		{Text{Size: 3, Align: Centre}, Text{Size: 3, Align: Centre}, ""},
		{Text{Size: 3, Align: Bottom}, Text{Size: 3, Align: Bottom}, ""},
	} {
		got := c.in.transform(Transform{Mirror: true, Scale: 5}).(Text)
		assert.Equal(t, c.want, got, c.why)
	}
	kept := Text{Size: 3, Angle: 30}
	assert.Equal(t, kept, kept.transform(Transform{Scale: 5}), "letters do not scale, nor turn without a mirror")
}

func anyPoint(t *rapid.T, label string) geom.Point {
	return geom.Point{
		X: rapid.Float64Range(-500, 500).Draw(t, label+" x"),
		Y: rapid.Float64Range(-500, 500).Draw(t, label+" y"),
	}
}

func anyArc(t *rapid.T) Arc {
	return Arc{
		Centre: anyPoint(t, "centre"),
		Radius: rapid.Float64Range(0.1, 500).Draw(t, "radius"),
		Start:  rapid.Float64Range(0, 359.999).Draw(t, "start"),
		Sweep:  rapid.Float64Range(0.001, 359.999).Draw(t, "sweep"),
	}
}

func anyTransform(t *rapid.T) Transform {
	return Transform{
		Mirror: rapid.Bool().Draw(t, "mirror"),
		Scale:  rapid.Float64Range(0.1, 10).Draw(t, "scale"),
		Move:   anyPoint(t, "move"),
	}
}

// farSlack (mm) is planeSlack where lengths have been scaled tenfold.
const farSlack = 10 * planeSlack

func TestArcKeepsItsPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, tr := anyArc(t), anyTransform(t)
		got := a.transform(tr).(Arc)
		require.GreaterOrEqual(t, got.Start, 0.0, "the start stays in one turn")
		require.Less(t, got.Start, 360.0, "the start stays in one turn")
		require.Equal(t, a.Sweep, got.Sweep)
		for _, share := range []float64{0, 0.25, 0.5, 1} {
			from, to := a.Start+share*a.Sweep, got.Start+share*got.Sweep
			if tr.Mirror { // a mirrored arc is run from its other end
				to = got.Start + (1-share)*got.Sweep
			}
			require.InDelta(t, 0, tr.Point(a.at(from)).Distance(got.at(to)), farSlack)
		}
	})
}

func TestMirroringTwiceIsNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := Transform{Mirror: true, Scale: 1}
		a := anyArc(t)
		got := a.transform(m).transform(m).(Arc)
		require.Equal(t, a.Centre, got.Centre)
		require.InDelta(t, 0, a.at(a.Start).Distance(got.at(got.Start)), planeSlack)
		x := Text{At: anyPoint(t, "text"), Align: Align(rapid.IntRange(int(Left), int(Bottom)).Draw(t, "align")), Angle: 17}
		require.Equal(t, Shape(x), x.transform(m).transform(m))
	})
}
