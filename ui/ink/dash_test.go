package ink

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestDashesHaveTheirDuty(t *testing.T) {
	const w = 2
	chain := []float64{20, 4, 3, 4} // 23 of 31 inked
	c := New(400, 400)
	c.Circle(Px{200, 200}, 150, w, black, chain)
	assert.InEpsilon(t, 2*math.Pi*150*w*23/31, measure(c).area, strokeTolerance, "circle: a whole number of periods")

	// n periods and one more long dash, stretched to fit.
	between := func(length float64) float64 {
		n := math.Round((length - 20) / 31)
		return length * (23*n + 20) / (31*n + 20)
	}
	c = New(400, 400)
	c.Line(Px{20.3, 30.1}, Px{350.2, 260.7}, w, black, chain)
	assert.InEpsilon(t, w*between(math.Hypot(329.9, 230.6)), measure(c).area, strokeTolerance, "line")

	c = New(400, 400)
	c.Arc(Px{200, 200}, 150, 20, 250, w, black, chain)
	assert.InEpsilon(t, w*between(150*250*math.Pi/180), measure(c).area, strokeTolerance, "arc")
}

func TestDashesBeginAndEndInked(t *testing.T) {
	// 97 px is no whole number of dashes: they are stretched to 97·(5/(10·9+5)).
	c := New(120, 20)
	c.Line(Px{10, 10}, Px{107, 10}, 2, black, []float64{5, 5})
	k := 97.0 / 95
	for i := range 19 {
		s := 10 + k*5*(float64(i)+0.5) // middle of a dash or of a gap
		want := float64((i + 1) % 2)
		assert.InDelta(t, want, share(c.Img, int(s), 10), 0.01, "part %d", i)
	}
	assert.InDelta(t, 1, share(c.Img, 10, 10), 0.01, "the first pixel is inked")
	assert.InDelta(t, 1, share(c.Img, 106, 10), 0.01, "the last pixel is inked")
	assert.Zero(t, share(c.Img, 9, 10), "none before the end")
	assert.Zero(t, share(c.Img, 107, 10), "none beyond the end")
}

func TestDashesRoundStartInTheMiddleOfTheFirst(t *testing.T) {
	c := New(220, 220)
	c.Circle(Px{110, 110}, 100, 2, black, []float64{10, 10})
	assert.InDelta(t, 1, share(c.Img, 210, 110), 0.02, "on the right")
	above, below := 0.0, 0.0
	for y := range 9 {
		above += share(c.Img, 209, 109-y)
		below += share(c.Img, 209, 110+y)
	}
	assert.InDelta(t, above, below, 0.02, "as much above as below")
}

func TestWhatIsNoDashIsUnbroken(t *testing.T) {
	whole := New(60, 20)
	whole.Line(Px{10, 10}, Px{50, 10}, 2, black, nil)
	for name, dash := range map[string][]float64{
		"empty":                   {},
		"all ink":                 {5, 0},
		"nothing at all":          {0, 0},
		"negative":                {5, -2},
		"not a number":            {5, math.NaN()},
		"infinite":                {math.Inf(1), 2},
		"one part":                {5},
		"longer than the line is": {30, 30},
	} {
		t.Run(name, func(t *testing.T) {
			c := New(60, 20)
			c.Line(Px{10, 10}, Px{50, 10}, 2, black, dash)
			assert.Equal(t, whole.Img.Pix, c.Img.Pix)
			c.Circle(Px{30, 10}, 2, 1, black, []float64{30, 30})
		})
	}
}

func TestDashFinerThanAPixelIsGrey(t *testing.T) {
	c := New(60, 20)
	c.Line(Px{10, 10}, Px{50, 10}, 2, black, []float64{0.01, 0.03})
	for x := 12; x < 48; x++ {
		require.InDelta(t, 0.25, share(c.Img, x, 10), 0.02, "column %d", x)
	}
}

func TestHatch(t *testing.T) {
	h := Hatch{Depth: 6, Spacing: 4, Width: 1, Colour: black}
	part := h.Width / h.Spacing

	c := New(200, 200)
	c.HatchCircle(Px{100, 100}, 80, h)
	assert.InEpsilon(t, part*math.Pi*(80*80-74*74), measure(c).area, 0.02, "circle: strokes keep their share of the strip")
	assert.Less(t, share(c.Img, 181, 100), 0.01, "nothing outside the circle")

	h.Depth = -6
	c = New(200, 200)
	c.HatchCircle(Px{100, 100}, 80, h)
	assert.InEpsilon(t, part*math.Pi*(86*86-80*80), measure(c).area, 0.02, "outwards")
	assert.Zero(t, share(c.Img, 178, 100), "nothing inside the circle")

	// Anticlockwise on the screen, so the part lies to the left.
	square := []Px{{40, 160}, {160, 160}, {160, 40}, {40, 40}}
	for _, depth := range []float64{6, -6} {
		h.Depth = depth
		c = New(200, 200)
		for i, p := range square {
			c.HatchLine(p, square[(i+1)%4], h)
		}
		strip := math.Abs(120*120 - (120-2*depth)*(120-2*depth))
		assert.InEpsilon(t, part*strip, measure(c).area, 0.02, "square, depth %v: mitred corners are hatched once", depth)
		lo, hi := 39, 161
		if depth < 0 {
			lo, hi = 33, 167
		}
		e := extentOf(c)
		assert.True(t, e.Min.X >= lo && e.Min.Y >= lo && e.Max.X <= hi && e.Max.Y <= hi, "stays on its side: %v", e)
	}

	// Half a circle holds half the strokes.
	h.Depth = 6
	c = New(200, 200)
	c.HatchArc(Px{100, 100}, 80, 0, 180, h)
	assert.InEpsilon(t, part*math.Pi*(80*80-74*74)/2, measure(c).area, 0.02, "arc")
	assert.Less(t, float64(extentOf(c).Max.Y), 102.0, "the upper half: anticlockwise from the right")
}

func TestHatchStrokesStandAt45Degrees(t *testing.T) {
	// Between two rows of a level edge each stroke moves on by one pixel a row.
	c := New(200, 40)
	c.HatchLine(Px{10, 30}, Px{190, 30}, Hatch{Depth: 12, Spacing: 6, Width: 2, Colour: black})
	for x := 60; x < 140; x++ {
		assert.InDelta(t, share(c.Img, x, 25), share(c.Img, x+1, 24), 0.02, "column %d: up and to the right", x)
	}
}
