package detent_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
)

// requireSaid checks that sentences have all their words and all their numbers.
func requireSaid(t require.TestingT, sentences []string) {
	require.NotEmpty(t, sentences)
	for _, s := range sentences {
		for _, gap := range []string{"[cut.", "[marks.", "[proof.", "[repair.", "[check.", "{{", "<nil>", "NaN", "Inf", "-0 "} {
			require.NotContains(t, s, gap)
		}
	}
}

// Whatever came out of the shop, it is told in whole sentences in every
// language, and each sentence points the way the numbers do.
func TestWhatWasMeasuredIsToldInSentences(t *testing.T) {
	english := words.English()
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, most float64) float64 { return rapid.Float64Range(-most, most).Draw(t, name) }
		b := shopBuild{
			offset: draw("offset", 5), fence: draw("fence", 20), patternOff: geom.Point{X: draw("x", 0.5), Y: draw("y", 0.5)},
			fenceTurned: draw("turned", 0.5), bad: 36, along: draw("along", 1), play: math.Abs(draw("play", 0.1)),
			noise: math.Abs(draw("noise", 0.03)), marking: math.Abs(draw("marking", 0.2)),
		}
		p := provedPlan(rapid.SampledFrom(plantest.Arrangements).Draw(t, "arrangement"))
		p.Stops = p.Stops[:rapid.IntRange(1, len(p.Stops)).Draw(t, "stops")]
		b.measure(&p, rand.New(rand.NewPCG(uint64(rapid.IntRange(0, 1000).Draw(t, "seed")), 1)))
		p.Readings = p.Readings[:rapid.IntRange(0, len(p.Readings)).Draw(t, "readings")]
		p.Tool.Marks = p.Tool.Marks[:rapid.IntRange(0, len(p.Tool.Marks)).Draw(t, "marks")]
		require.NoError(t, plan.Validate(p))
		r := detent.Solve(p)
		line, found := r.CutLine()
		require.True(t, found)
		proof, proved := r.Proving()
		for _, language := range words.Languages() {
			c, err := words.In(language)
			require.NoError(t, err)
			requireSaid(t, line.Say(r, c))
			requireSaid(t, line.SayMarks(c))
			if proved {
				requireSaid(t, proof.Say(r, c))
			}
		}
		if f := line.Marks; f != nil {
			said := line.SayMarks(english)
			tool, fence := words.Args{"By": words.MM(math.Abs(f.Offset))}, words.Args{"By": words.MM(math.Abs(f.Fence))}
			require.Equal(t, f.Offset >= 0, slices.Contains(said, english.Text("marks.move.left", tool)))
			require.Equal(t, f.Offset < 0, slices.Contains(said, english.Text("marks.move.right", tool)))
			require.Equal(t, f.Fence >= 0, slices.Contains(said, english.Text("marks.fence.near", fence)))
			require.Equal(t, f.Fence < 0, slices.Contains(said, english.Text("marks.fence.away", fence)))
		}
	})
}

// A repair is told in a sentence of its own, and one that has no room says what
// stands in its way.
func TestRepairsAreToldInSentences(t *testing.T) {
	for _, c := range []struct {
		why   string
		stops []float64
		move  float64
	}{
		{"room all round", []float64{-45, 0, 45}, 0.8},
		{"the other way", []float64{-45, 0, 45}, -0.8},
		{"beside the old hole", []float64{-45, 0, 45}, 7},
		{"a neighbour in the way", []float64{-4, 0, 4}, 1},
	} {
		p := mendPlan(c.stops...)
		r := detent.Solve(p)
		all := r.RepairsOf(1, c.move)
		require.NotEmpty(t, all, c.why)
		for _, x := range all {
			for _, language := range words.Languages() {
				w, err := words.In(language)
				require.NoError(t, err)
				said := x.Say(r, w)
				requireSaid(t, said)
				if x.Fits {
					assert.Len(t, said, 1, c.why)
				} else {
					assert.Equal(t, w.Text("repair."+string(x.Kind)+".no-room"), said[0], c.why)
				}
			}
		}
	}
}

// The trend of a stop runs from its first dated reading; others' and undated
// ones do not count.
func TestTrendOfAStop(t *testing.T) {
	p := mendPlan(0, 30)
	p.Readings = []plan.Reading{
		{Angle: 30, Measured: 30.3, Date: "2028-11-20"},
		{Angle: 30, Measured: 30.1, Date: "2026-11-20"},
		{Angle: 30, Measured: 30.2, Date: "2027-11-20"},
		{Angle: 30, Measured: 31},
		{Angle: 0, Measured: 5, Date: "2025-11-20"},
	}
	require.NoError(t, plan.Validate(p))
	trend := detent.Solve(p).TrendOf(30)
	require.True(t, trend.Known)
	assert.Equal(t, "2026-11-20", trend.First)
	assert.InDeltaSlice(t, []float64{731, 0, 365}, trend.Days, 1e-9, "2028 is a leap year")
	assert.InDeltaSlice(t, []float64{0.3, 0.1, 0.2}, trend.Residuals, 1e-9)
	assert.False(t, detent.Solve(p).TrendOf(0).Known, "one day is no trend")
}
