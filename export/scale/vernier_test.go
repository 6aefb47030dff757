package scale_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export/scale"
)

// met is how near a line of the vernier must come to a graduation to stand
// opposite it, degrees: rounding.
const met = 1e-9

// TestOneLineMeetsForEveryReading sets the scale to every reading there is
// within some degrees: the line that stands for it meets a graduation, and no
// other does but the last one, which is the first again.
func TestOneLineMeetsForEveryReading(t *testing.T) {
	for _, c := range []struct {
		step  float64
		r     scale.Reading
		lines int
	}{
		{1, scale.Tenth, 10},
		{1, scale.Minutes, 12},
		{0.5, scale.Tenth, 5},
		{0.5, scale.Minutes, 6},
		{0.25, scale.Minutes, 3},
	} {
		v, err := scale.NewVernier(c.step, c.r)
		require.NoError(t, err)
		require.Equal(t, c.lines, v.Lines, "%v by %v", c.step, c.r)
		count := c.r.Count().Degrees()
		for j := range 5 * c.lines {
			reading := float64(j) * count
			for k := 0; k <= c.lines; k++ {
				at := (reading + v.Line(k).Degrees()) / c.step
				opposite := math.Abs(at-math.Round(at))*c.step < met
				stands := k == j%c.lines || k == c.lines && j%c.lines == 0
				assert.Equal(t, stands, opposite, "%v by %v: reading %v, line %d", c.step, c.r, reading, k)
			}
			k := j % c.lines
			main := math.Floor(reading/c.step+met) * c.step
			assert.InDelta(t, reading, main+v.Value(k).Degrees(), met)
		}
	}
}

// By hand: at 12.3 degrees on a scale of whole degrees the third line stands 2.7
// degrees on, at 15.
func TestVernierByHand(t *testing.T) {
	v, err := scale.NewVernier(1, scale.Tenth)
	require.NoError(t, err)
	assert.InDelta(t, 15, 12.3+v.Line(3).Degrees(), met)
	assert.InDelta(t, 9, v.Span().Degrees(), met, "ten divisions as long as nine degrees")
	v, err = scale.NewVernier(0.5, scale.Minutes)
	require.NoError(t, err)
	assert.InDelta(t, 2.5, v.Span().Degrees(), met, "six divisions as long as five half degrees")
	assert.InDelta(t, 25.0/60, v.Value(5).Degrees(), met)
}

func TestOptions(t *testing.T) {
	for _, c := range []struct {
		why  string
		o    scale.Options
		says string // "": nothing is wrong
	}{
		{"the zero options", scale.Options{}, ""},
		{"an index line only", scale.Options{Step: 0.25, Reading: scale.Plain}, ""},
		{"a quarter is no multiple of a tenth", scale.Options{Step: 0.25, Reading: scale.Tenth}, "no whole number of readings"},
		{"the same where nothing is said", scale.Options{Step: 0.25}, "no whole number of readings"},
		{"a third", scale.Options{Step: 1.0 / 3}, "must be 1, 0.5 or 0.25"},
		{"to seconds", scale.Options{Reading: "1s"}, `"1s": must be 0.1, 5 or none`},
		{"a rim of less than nothing", scale.Options{Rim: -1}, "must be above 0"},
		{"a rim of no number", scale.Options{Rim: math.NaN()}, "must be above 0"},
	} {
		err := c.o.Check()
		if c.says == "" {
			require.NoError(t, err, c.why)
			continue
		}
		require.ErrorContains(t, err, c.says, c.why)
	}
}
