package ui

import (
	"fmt"
	"math"
	"math/rand/v2"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/proving"
)

// asBuilt is a plate as it really came out, mm and degrees. Its catch is in the
// turntable and its stops count clockwise, as in a new plan.
type asBuilt struct {
	offset, fence  float64    // of the tool's line and the fence from the pivot
	ring           geom.Point // the middle of the ring of seats from the pivot
	common         float64    // by which the fence stands turned the wrong way
	bad            float64    // the stop whose seat is out
	along          float64    // and by how far along the ring, clockwise +
	play           float64    // to either side
	reading, score float64    // standard deviation of an angle read, of a mark read
}

// rest returns how far clockwise the table has turned when the ball lies in the
// seat drilled for a stop: it is the azimuth from the pivot, less the catch's.
func (b asBuilt) rest(p plan.Plan, stop float64) float64 {
	c := p.Catches[0]
	at := geom.Polar(c.Radius, geom.Angle(c.Azimuth+stop))
	if stop == b.bad {
		at = at.Rotate(geom.FromRadians(b.along / c.Radius))
	}
	return (at.Add(b.ring).Azimuth() - geom.Angle(c.Azimuth)).Wrap().Degrees()
}

// typeBuild types what a maker reads on a plate: marks along the fence to a
// tenth, and each stop twice from either side to a hundredth.
func (w *Window) typeBuild(t *testing.T, b asBuilt, r *rand.Rand) {
	t.Helper()
	w.setting.tabs.SelectIndex(toolTab)
	w.giveTool()
	marks := w.setting.tool.marks
	for _, s := range w.store.Report().Plate.Stops {
		if s.Angle.Abs() > 60 {
			continue // too slanting to read where the cut meets the fence
		}
		sin, cos := s.Angle.SinCos()
		marks.angle.SetText(fmt.Sprint(s.Angle.Degrees()))
		marks.x.SetText(fmt.Sprintf("%.1f", 120+(b.offset+b.fence*sin)/cos+b.score*r.NormFloat64()))
		marks.add()
	}
	w.setting.tabs.SelectIndex(proofTab)
	for _, s := range w.store.Report().Plate.Stops {
		stop := s.Angle.Degrees()
		for range 2 {
			for k, way := range []float64{1, -1} {
				at := b.rest(w.store.Plan(), stop) + b.common + way*b.play + b.reading*r.NormFloat64()
				w.typeReading(t, stop, proving.Typed, 1+k, 0, fmt.Sprintf("%.2f", at))
			}
		}
	}
}

// TestEverythingWrongAtOnceIsToldApartInTheWindow types noisy marks and readings
// of a plate whose tool, fence, ring of seats, one seat and play are all out,
// and known, and reads the page: each must be told within its stated error, in
// words that say which way and how far.
func TestEverythingWrongAtOnceIsToldApartInTheWindow(t *testing.T) {
	const (
		sure  = 3    // standard errors: the fit with the fewest readings, the marks, keeps to it 98 times in 100
		keen  = 0.15 // mm and degrees: an error that is stated larger tells nothing
		apart = 0.1  // mm along the ring: the noise of four readings, and of the law, on 105 mm
	)
	b := asBuilt{
		offset: 1.4, fence: -3.2, ring: geom.Point{X: 0.5, Y: -0.35}, common: 0.25,
		bad: 36, along: 0.8, play: 0.06, reading: 0.02, score: 0.1,
	}
	p := plan.NewPlan()
	p.Travel = plan.Span{From: -150, To: 150} // wide enough that a ring off the pivot looks like nothing else
	for _, a := range []float64{-150, -120, -90, -60, -45, -30, -15, 0, 15, 30, 36, 60, 90, 120, 150} {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	require.Equal(t, plan.Arrangement{CatchIn: plan.PartTurntable, PositiveTurn: plan.Clockwise}, p.Arrangement)
	w := setUp(t, p, toolTab)
	w.typeBuild(t, b, rand.New(rand.NewPCG(7, 36)))
	require.Len(t, w.store.Plan().Readings, 4*len(p.Stops))

	near := func(want, got, std float64, what string) {
		t.Helper()
		assert.InDelta(t, want, got, sure*std, what)
		assert.Positive(t, std, what)
		assert.Less(t, std, keen, what)
	}
	// told finds an amount in words that say which way it goes.
	told := func(want, within float64, text, words string) {
		t.Helper()
		const shown = 0.005 // mm and degrees: half of the last decimal
		found := regexp.MustCompile(words).FindStringSubmatch(text)
		require.NotEmpty(t, found, "%s in:\n%s", words, text)
		got, err := strconv.ParseFloat(found[1], 64)
		require.NoError(t, err)
		assert.InDelta(t, want, got, within+shown, found[0])
	}
	pane := w.setting.tool
	fit := pane.cut.Marks
	near(b.offset, fit.Offset, fit.OffsetStd, "the tool's line")
	near(b.fence, fit.Fence, fit.FenceStd, "the fence")
	told(b.offset, sure*fit.OffsetStd, pane.found.Text, `Move the tool ([\d.]+) mm to the left\.`)
	told(-b.fence, sure*fit.FenceStd, pane.found.Text, `Move the fence ([\d.]+) mm away from you\.`)

	v, ok := w.store.Report().Proving()
	require.True(t, ok)
	near(b.common, v.Common.Is, v.Common.Std, "the common error")
	near(b.ring.X, v.EccentricX.Is, v.EccentricX.Std, "the ring off along x")
	near(b.ring.Y, v.EccentricY.Is, v.EccentricY.Std, "the ring off along y")
	near(b.play, v.Play.Is, v.Play.Std, "the play")
	var bad []proving.Seat
	for _, s := range v.Seats {
		if s.Out {
			bad = append(bad, s)
		}
	}
	require.Len(t, bad, 1, "one seat is out, and only that is called so")
	assert.Equal(t, geom.Angle(b.bad), v.Stops[bad[0].Stop])
	assert.InDelta(t, -b.along, bad[0].Move, apart, "back along the ring")

	said := w.setting.proof.said.Text
	told(b.common, sure*v.Common.Std, said, `turn the fence ([\d.]+)° clockwise, seen from above`)
	off := sure * math.Hypot(v.EccentricX.Std, v.EccentricY.Std)
	told(b.ring.Norm(), off, said, `The ring of seats lies ([\d.]+) mm ± [\d.]+ mm off the pivot`)
	told(off/sure/math.Sqrt2, 0, said, `mm ± ([\d.]+) mm off the pivot`) // alike along x and y: stops all round
	told(b.ring.Azimuth().Degrees(), geom.FromRadians(off/b.ring.Norm()).Degrees(), said, `off the pivot, towards azimuth ([\d.]+)°`)
	told(b.along, apart, said, `The seat of stop 36° is off by [\d.]+° by itself: move it ([\d.]+) mm along the ring, anticlockwise`)
	told(b.play, sure*v.Play.Std, said, `the table plays ([\d.]+)° ± [\d.]+° to either side`)
}
