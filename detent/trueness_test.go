package detent_test

import (
	"bytes"
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/assets/plans"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// scatter is how far, in standard deviations of the stop, a mean, deviation or
// half width of n trials may be from the exact one: at least six times what it
// scatters by. (A quantile at 0.025 scatters by up to 3/√n of these.)
func scatter(trials int) float64 { return 20 / math.Sqrt(float64(trials)) }

// agree compares trials with formulas at every stop.
func agree(t require.TestingT, p plan.Plan) {
	r, err := detent.Study(context.Background(), detent.Solve(p))
	require.NoError(t, err)
	if r.Sampled == nil {
		return
	}
	s, truth := r.Sampled, r.Plate.Trueness
	allowed := scatter(s.Trials)
	for i := range r.Plate.Stops {
		e, ok := truth.Drilled(i)
		require.True(t, ok)
		std := e.Std.Degrees()
		require.InDelta(t, 0, s.Drilled[i].Mean, allowed*std)
		require.InDelta(t, std, s.Drilled[i].Std, allowed*std)
		require.InDelta(t, e.Interval95.Degrees(), s.Drilled[i].HalfWidth(), allowed*std)

		e, ok = truth.Zeroed(i)
		require.True(t, ok)
		// What cancels in the formulas leaves rounding in the trials.
		std = e.Std.Degrees()
		rounding := 1e-12 * (1 + s.Drilled[i].Std)
		require.InDelta(t, 0, s.Zeroed[i].Mean, allowed*std+rounding)
		require.InDelta(t, std, s.Zeroed[i].Std, allowed*std+rounding)
		require.InDelta(t, e.Interval95.Degrees(), s.Zeroed[i].HalfWidth(), allowed*std+rounding)
	}
	_, worst, _ := truth.WorstZeroed()
	require.GreaterOrEqual(t, s.AllWithin95.Degrees(), worst.Interval95.Degrees()-allowed*worst.Std.Degrees()-1e-12, "all stops are no truer than the worst")
	require.GreaterOrEqual(t, s.AllWithinTarget, 0.0)
	require.LessOrEqual(t, s.AllWithinTarget, 1.0)
}

// twoCatches is a plan with play in its seats, two catches on rings of their own
// and stops of either and of both.
func twoCatches() plan.Plan {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "A", Radius: 105}, {Name: "B", Azimuth: 150, Radius: 80}}
	p.Seat = plan.Seat{Form: plan.Drilled, Diameter: 7, Depth: 1, DrillPoint: 180, CountersinkAngle: 90}
	p.Catch.BallDiameter, p.Catch.Protrusion = 7, 3
	p.Stops = []plan.Stop{
		{Angle: 0}, {Angle: 30}, {Angle: -30, Catches: []string{"B"}}, {Angle: 45, Catches: []string{"A", "B"}},
	}
	return p
}

func TestTrialsAgreeWithFormulas(t *testing.T) {
	for _, d := range plans.List() {
		t.Run(d.Name, func(t *testing.T) {
			file, err := plans.Open(d.Name)
			require.NoError(t, err)
			p, err := plan.Decode(bytes.NewReader(file))
			require.NoError(t, err)
			agree(t, p)
		})
	}
	t.Run("play and two catches", func(t *testing.T) {
		p := twoCatches()
		home, ok := detent.Solve(p).Plate.Clicks[0].Home()
		require.True(t, ok)
		require.Positive(t, home.Play)
		agree(t, p)
	})
	t.Run("seats that several stops share", func(t *testing.T) {
		p := plan.Default()
		p.Catches = []plan.Placement{{Name: "A", Radius: 105}, {Name: "B", Azimuth: 30, Radius: 105}}
		for a := -180.0; a < 180; a += 60 {
			p.Stops = append(p.Stops, plan.Stop{Angle: a}, plan.Stop{Angle: a + 30, Catches: []string{"B"}})
		}
		require.Len(t, detent.Solve(p).Plate.Seats, 6)
		agree(t, p)
	})
}

// TestTrialsAgreeForRandomPlans takes any plan at all; the trials are few.
func TestTrialsAgreeForRandomPlans(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		p.Stops = p.Stops[:min(len(p.Stops), 4)]
		agree(t, p)
	})
}

func TestStudyIsTheSameEveryTime(t *testing.T) {
	p := twoCatches()
	a, err := detent.Study(context.Background(), detent.Solve(p))
	require.NoError(t, err)
	b, err := detent.Study(context.Background(), detent.Solve(p))
	require.NoError(t, err)
	assert.Equal(t, encoded(t, a), encoded(t, b))
	assert.Nil(t, detent.Solve(p).Sampled, "only the study samples")
}

func TestStudyStops(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, err := detent.Study(ctx, detent.Solve(twoCatches()))
	assert.ErrorIs(t, err, context.Canceled)
}

func TestStudyOfNothing(t *testing.T) {
	for why, p := range map[string]plan.Plan{
		"no stop": plan.Default(),
		"a ball that falls in": func() plan.Plan {
			p := twoCatches()
			p.Seat.Diameter, p.Seat.Depth = 20, 0
			return p
		}(),
	} {
		r, err := detent.Study(context.Background(), detent.Solve(p))
		require.NoError(t, err, why)
		assert.Nil(t, r.Sampled, why)
	}
}

func TestReportOfTrueness(t *testing.T) {
	p := twoCatches()
	at := geom.Polar(105, 30.25)
	p.AsDrilled = []plan.AsDrilled{{Angle: 30, X: at.X, Y: at.Y}, {Angle: 77, X: 1, Y: 2}}
	r := decode(t, p)
	truth := r["trueness"].(map[string]any)
	assert.Equal(t, []string{"as_drilled", "joint", "reach", "reference", "sampled", "stops", "zeroed"}, keysOf(truth))
	assert.Equal(t, 0.0, truth["reference"])
	pl := detent.Solve(p).Plate
	for key, of := range map[string]func(int) float64{
		"stops":  func(i int) float64 { e, _ := pl.Trueness.Drilled(i); return e.Interval95.Degrees() },
		"zeroed": func(i int) float64 { e, _ := pl.Trueness.Zeroed(i); return e.Interval95.Degrees() },
	} {
		list := items(truth[key])
		require.Len(t, list, 4)
		for i, item := range list {
			e := item.(map[string]any)
			assert.Equal(t, []string{"angle", "interval95", "shares", "std", "worst"}, keysOf(e))
			assert.Equal(t, p.Stops[i].Angle, e["angle"])
			assert.InDelta(t, of(i), e["interval95"], clickRounding)
		}
	}
	_, worst, _ := pl.Trueness.WorstZeroed()
	joint := items(truth["joint"])
	require.Len(t, joint, 14, "3 to 16 sides")
	four := joint[1].(map[string]any)
	assert.Equal(t, 4.0, four["sides"])
	assert.InDelta(t, 60*math.Sqrt2*math.Tan(2*worst.Interval95.Radians()), four["gap"], clickRounding)
	assert.InDelta(t, 60*math.Sqrt2*math.Tan(8*worst.Interval95.Radians()), four["closing_gap"], clickRounding)

	drilled := items(truth["as_drilled"])
	require.Len(t, drilled, 2)
	first, second := drilled[0].(map[string]any), drilled[1].(map[string]any)
	assert.InDelta(t, 30.25, first["true_angle"], clickRounding)
	assert.InDelta(t, 0.25, first["error"], clickRounding)
	assert.Nil(t, first["zeroed_error"], "the reference is not measured")
	assert.Equal(t, "A", first["catch"], "none named is the first")
	assert.Nil(t, second["true_angle"], "no such stop")

	// The plan's own numbers stay.
	bare := p
	bare.AsDrilled = nil
	assert.Equal(t, decode(t, bare)["seats"], r["seats"])
	assert.Equal(t, decode(t, bare)["trueness"].(map[string]any)["stops"], truth["stops"])
}

func TestReportOfSeason(t *testing.T) {
	season := decode(t, twoCatches())["season"].(map[string]any)
	assert.Equal(t, []string{"clearance_dry", "clearance_to_choose", "clearance_wet", "growth", "moisture_dry", "moisture_wet"}, keysOf(season))
	assert.Nil(t, season["clearance_dry"], "there is no collar")
	assert.InDelta(t, 260*0.0002*3.5, season["growth"], clickRounding)
}

func TestReportWhereNothingHolds(t *testing.T) {
	p := twoCatches()
	p.Seat.Diameter, p.Seat.Depth = 20, 0
	truth := decode(t, p)["trueness"].(map[string]any)
	for _, e := range append(items(truth["stops"]), items(truth["zeroed"])...) {
		assert.Nil(t, e.(map[string]any)["interval95"])
		assert.Nil(t, e.(map[string]any)["shares"])
	}
	assert.Empty(t, truth["joint"])
}
