package cutline_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/cutline"
	"stopwright/detent/geom"
)

// rounding is what a dozen operations leave on lengths up to 10 m, mm.
const rounding = 1e-6

// intersect returns where two lines meet, each given by a point and a direction:
// plain geometry, without the formula under test.
func intersect(p, d, q, e geom.Point) geom.Point {
	cross := func(a, b geom.Point) float64 { return a.X*b.Y - a.Y*b.X }
	t := cross(q.Sub(p), e) / cross(d, e)
	return p.Add(d.Scale(t))
}

// turned returns the tool's line at a lean: a point of it and its direction.
func turned(offset float64, lean geom.Angle) (at, along geom.Point) {
	return geom.Point{X: offset}.Rotate(lean), geom.Point{Y: 1}.Rotate(lean)
}

func anyLean(t *rapid.T) geom.Angle {
	return geom.Angle(rapid.Float64Range(-84, 84).Draw(t, "lean"))
}

func anyLine(t *rapid.T) cutline.Line {
	mm := rapid.Float64Range(-100, 100)
	return cutline.Line{Offset: mm.Draw(t, "offset"), Fence: mm.Draw(t, "fence")}
}

func TestCrossingByIntersectingTurnedLines(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, lean := anyLine(t), anyLean(t)
		at, along := turned(l.Offset, lean)
		want := intersect(at, along, geom.Point{Y: l.Fence}, geom.Point{X: 1})
		got, ok := l.Crossing(lean)
		require.True(t, ok)
		assert.InDelta(t, want.X, got, rounding)
	})
}

func TestCrossingClosedForms(t *testing.T) {
	for _, c := range []struct {
		why           string
		offset, fence float64
		lean          geom.Angle
		want          float64
	}{
		{"at square only the offset counts", 3, 20, 0, 3},
		{"a line through the pivot and a fence on it", 0, 0, 40, 0},
		{"2 mm off at 45 is 2 root 2", 2, 0, 45, 2 * math.Sqrt2},
		{"a fence 20 mm away moves the crossing 20 mm at 45", 0, 20, 45, 20},
		{"and as far left the other way", 0, 20, -45, -20},
		{"at 60 twice the offset", 5, 0, 60, 10},
	} {
		got, ok := cutline.Line{Offset: c.offset, Fence: c.fence}.Crossing(c.lean)
		assert.True(t, ok, c.why)
		assert.InDelta(t, c.want, got, rounding, c.why)
	}
	for _, far := range []geom.Angle{85.0001, -90, 135, 350} {
		_, ok := cutline.Line{}.Crossing(far)
		assert.False(t, ok, "%v is too steep", far)
	}
	_, ok := cutline.Line{}.Crossing(-85)
	assert.True(t, ok, "the end of the range belongs to it")
}

func TestWander(t *testing.T) {
	leans := []geom.Angle{-45, 0, 45, 90}
	off := cutline.Line{Offset: 2}.Travel(leans)
	assert.InDelta(t, 2*(math.Sqrt2-1), off.Wander(), rounding, "2 mm off wanders 0.83 mm")
	assert.Equal(t, 3, off.Leans, "at 90 there is no crossing")
	away := cutline.Line{Fence: 20}.Travel(leans)
	assert.InDelta(t, 40, away.Wander(), rounding, "20 mm to either side")
	assert.Equal(t, []int{0, 2}, []int{away.AtLeast, away.AtMost})
	assert.Zero(t, cutline.Line{Offset: 2}.Travel(nil).Wander())
	assert.Zero(t, cutline.Line{Offset: 2}.Travel([]geom.Angle{30}).Wander(), "one stop does not wander")
}

func TestPastByTheTurnedTip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, lean, reach := anyLine(t), anyLean(t), rapid.Float64Range(0, 500).Draw(t, "reach")
		tip := geom.Point{X: l.Offset, Y: reach}.Rotate(lean)
		assert.InDelta(t, tip.Y-l.Fence, l.Past(reach, lean), rounding)
	})
}

func TestSlotHoldsTheTurnedTool(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := anyLine(t)
		kerf, thick := rapid.Float64Range(0, 10).Draw(t, "kerf"), rapid.Float64Range(0, 50).Draw(t, "thickness")
		leans := rapid.SliceOfN(rapid.Custom(anyLean), 1, 6).Draw(t, "leans")
		left, right, ok := l.Slot(kerf, thick, leans)
		require.True(t, ok)
		lo, hi := math.Inf(1), math.Inf(-1)
		for _, lean := range leans {
			for _, side := range []float64{-kerf / 2, kerf / 2} {
				at, along := turned(l.Offset+side, lean)
				for _, y := range []float64{l.Fence, l.Fence + thick/3, l.Fence + thick} {
					x := intersect(at, along, geom.Point{Y: y}, geom.Point{X: 1}).X
					lo, hi = math.Min(lo, x), math.Max(hi, x)
				}
			}
		}
		assert.InDelta(t, lo, left, rounding)
		assert.InDelta(t, hi, right, rounding)
	})
	_, _, ok := cutline.Line{}.Slot(3, 18, []geom.Angle{90})
	assert.False(t, ok)
}

func TestSides(t *testing.T) {
	leans := []geom.Angle{-45, 0, 45}
	left, right := cutline.Line{Offset: 1.5}.Sides(3, leans)
	assert.InDelta(t, 0, left, rounding, "the cut's left edge passes through the pivot: that side keeps its stop")
	assert.InDelta(t, 3*(math.Sqrt2-1), right, rounding)
}

func TestFenceBody(t *testing.T) {
	b := cutline.Body{Length: 300, Thickness: 18, Inset: 30}
	l := cutline.Line{Fence: 12}
	assert.Equal(t, [2]geom.Point{{X: -120, Y: 21}, {X: 120, Y: 21}}, l.Screws(b))
	assert.Equal(t, [4]geom.Point{{X: -150, Y: 12}, {X: 150, Y: 12}, {X: 150, Y: 30}, {X: -150, Y: 30}}, l.Corners(b))
	assert.Equal(t, 12.0, l.Nearest(b))
	assert.InDelta(t, math.Hypot(150, 30), l.Farthest(b), rounding)
	assert.Zero(t, cutline.Line{Fence: -5}.Nearest(b), "the pivot is under the bar")
	assert.Equal(t, 2.0, cutline.Line{Fence: -20}.Nearest(b), "the bar lies before the pivot")
}

func TestFixings(t *testing.T) {
	assert.Equal(t, 9.0, cutline.Adjust(5, -1.5, 0.25), "5 and twice 1.5 + 2 of 0.25")
	assert.Equal(t, 5.5, cutline.Adjust(5, 0.1, 0), "up to a half")
	assert.Equal(t, 5.0, cutline.Adjust(5, 0, 0), "nothing to move: a round hole")
	assert.InDelta(t, 300*math.Tan(math.Pi/1800), cutline.EndMove(300, 0.1), rounding)
}
