package proving_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/proving"
)

// board is a piece of wood, its corners clockwise from its corner at the fence
// and on the left. The fence lies along x above it.
type board []geom.Point

// saw cuts straight through at x, leaning clockwise, and keeps the left.
func (b board) saw(x float64, lean geom.Angle) board {
	at := geom.Point{X: x}
	right := geom.Polar(1, lean+90)
	var out board
	for i, p := range b {
		q := b[(i+1)%len(b)]
		dp, dq := p.Sub(at).Dot(right), q.Sub(at).Dot(right)
		if dp <= 0 {
			out = append(out, p)
		}
		if (dp < 0) != (dq < 0) {
			out = append(out, p.Add(q.Sub(p).Scale(dp/(dp-dq))))
		}
	}
	return out
}

// toFence turns the board anticlockwise until the side from corner i to the next
// lies along the fence, corner i at the origin.
func (b board) toFence(i int) board {
	from, to := b[i], b[(i+1)%len(b)]
	turn := 90 - to.Sub(from).Azimuth() // the side shall point along +x
	var out board
	for k := range b {
		out = append(out, b[(i+k)%len(b)].Sub(from).Rotate(turn))
	}
	return out
}

// TestFiveCutsByCutting saws a board five times and measures the strip.
func TestFiveCutsByCutting(t *testing.T) {
	for _, lean := range []geom.Angle{0, 0.05, -0.2, 1} {
		b := board{{X: 0, Y: 0}, {X: 320, Y: 3}, {X: 318, Y: -310}, {X: 4, Y: -305}}.toFence(0)
		for _, x := range []float64{300, 295, 285, 280} { // each well inside what is left
			b = b.saw(x, lean)
			require.Len(t, b, 4)
			b = b.toFence(1) // the side just cut, from its end at the fence
		}
		// The side cut first is on the right again: from corner 1 to corner 2.
		fifth := b.saw(265, lean)
		far := b[1].Distance(fifth[1])
		near := b[2].Distance(fifth[2])
		apart := fifth[1].Distance(fifth[2])
		got := proving.ByFiveCuts(near, far, apart)
		// Widths are measured along edges that are not quite square to the cut:
		// their error is of the second order.
		assert.InDelta(t, lean.Degrees(), got.Degrees(), 5e-3*lean.Degrees()*lean.Degrees()+exact, "leaning %v", lean)
	}
}

// TestFlipByTurningOver saws a board and turns its right half over, fence edge
// for operator's edge.
func TestFlipByTurningOver(t *testing.T) {
	const wide = 200.0
	for _, lean := range []geom.Angle{0, 0.3, -0.1} {
		face := geom.Polar(wide/math.Cos(lean.Radians()), lean+180) // from the fence to the operator
		// The left half ends at the fence at 0 and at the operator at face. The
		// right half begins with the same line; turned over, its ends change
		// places.
		leftFence, leftOperator := 0.0, face.X
		rightFence, rightOperator := face.X, 0.0
		push := math.Min(rightFence-leftFence, rightOperator-leftOperator) // until they touch
		gapFence, gapOperator := rightFence-leftFence-push, rightOperator-leftOperator-push
		got := proving.ByFlip(gapOperator-gapFence, face.Norm())
		assert.InDelta(t, lean.Degrees(), got.Degrees(), 1e-4, "leaning %v: the gap is measured along the board", lean)
	}
}

// TestRingByClosing lays mitred pieces round, each a wedge of two mitres, and
// measures what is left of the turn.
func TestRingByClosing(t *testing.T) {
	for pieces, stop := range map[int]geom.Angle{3: 60, 4: 45, 5: 36, 6: 30, 8: 22.5, 12: 15} {
		n, ok := proving.Pieces(stop)
		require.True(t, ok)
		assert.Equal(t, pieces, n)
		for _, off := range []geom.Angle{0.1, -0.25, 0} {
			left := 360 - 2*geom.Angle(n)*(stop+off) // of the turn: open outside where positive
			const face = 80.0
			apart := 2 * face * math.Sin(left.Abs().Radians()/2)
			gap := math.Copysign(apart, -left.Degrees()) // plus: inside
			assert.InDelta(t, off.Degrees(), proving.ByRing(n, gap, face).Degrees(), exact)
		}
	}
}

// TestSquareByLayingOn mitres pieces round a right angle and lays a square into
// the corner.
func TestSquareByLayingOn(t *testing.T) {
	for joints, stop := range map[int]geom.Angle{1: 45, 2: 22.5, 3: 15} {
		n, ok := proving.Joints(stop)
		require.True(t, ok)
		assert.Equal(t, joints, n)
		const leg = 150.0
		for _, off := range []geom.Angle{0.2, -0.1, 0} {
			corner := 180 - 2*geom.Angle(n)*(stop+off) // the angle between the legs
			gap := leg * math.Tan((90 - corner).Radians())
			assert.InDelta(t, off.Degrees(), proving.BySquare(n, gap, leg).Degrees(), exact, "sharper than square: too large")
		}
	}
}

func TestMethodsAndTheirStops(t *testing.T) {
	for _, c := range []struct {
		m    proving.Method
		stop geom.Angle
		want int
		ok   bool
		why  string
	}{
		{proving.Typed, 33, 1, true, "any stop can be read"},
		{proving.Square, 45, 2, true, "two faces meet"},
		{proving.Square, -22.5, 4, true, "two joints of two faces"},
		{proving.Square, 30, 2, false, "no number of joints of 60° turns 90°"},
		{proving.Square, 0, 2, false, "square cuts have no corner"},
		{proving.FiveCut, 0, 4, true, "the four-fold error"},
		{proving.FiveCut, 45, 4, false, "only square cuts go round a board"},
		{proving.Flip, 0, 2, true, "turning over doubles"},
		{proving.Flip, 5, 2, false, "only a square cut turns over"},
		{proving.Ring, 36, 10, true, "five pieces, two faces each"},
		{proving.Ring, -25.714, 14, true, "seven, typed to three decimals"},
		{proving.Ring, 90, 4, false, "two pieces are no frame"},
		{proving.Ring, 50, 8, false, "no whole number of pieces"},
		{"guess", 0, 0, false, "no method"},
	} {
		n, ok := proving.Multiple(c.m, c.stop)
		assert.Equal(t, c.ok, ok, c.why)
		if ok {
			assert.Equal(t, c.want, n, c.why)
		}
	}
}

func TestTrend(t *testing.T) {
	// 0.01 degrees in 100 days.
	days := []float64{0, 50, 100, 200}
	tr, ok := proving.TrendOf(days, []float64{0.1, 0.105, 0.11, 0.12})
	require.True(t, ok)
	assert.InDelta(t, 0.0365, tr.Slope.Is, 1e-4)
	assert.InDelta(t, 0, tr.Slope.Std, exact, "they lie on a line")
	assert.Equal(t, 200.0, tr.Days)
	assert.InDelta(t, 0.1, tr.First, exact)
	assert.InDelta(t, 0.12, tr.Last, exact)
	_, ok = proving.TrendOf([]float64{3, 3}, []float64{0, 1})
	assert.False(t, ok, "one day has no trend")
	_, ok = proving.TrendOf(nil, nil)
	assert.False(t, ok)
	// About the mean day, 1: slope Σdy/Σd² = 0.5; 1/6 is left of the squares, over
	// one free reading and Σd² = 2.
	rough, ok := proving.TrendOf([]float64{0, 1, 2}, []float64{0, 1, 1})
	require.True(t, ok)
	const year = 365.2425 // days, the Gregorian calendar's mean
	assert.InDelta(t, 0.5*year, rough.Slope.Is, exact)
	assert.InDelta(t, math.Sqrt(1.0/12)*year, rough.Slope.Std, exact)
	two, ok := proving.TrendOf([]float64{0, 10}, []float64{0, 1})
	require.True(t, ok)
	assert.False(t, two.Slope.Judged, "two readings leave nothing over")
}
