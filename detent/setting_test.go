package detent_test

import (
	"bytes"
	"encoding/json"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/proving"
)

// shopBuild is a plate as it really came out: mm and degrees.
type shopBuild struct {
	offset, fence  float64    // of the tool
	patternOff     geom.Point // of the ring of seats from the pivot, in the seats' part
	fenceTurned    float64    // clockwise, from where it should be
	bad            float64    // the stop whose seat is out
	along          float64    // and by how far along the ring, clockwise +, mm
	play           float64    // degrees
	noise, marking float64    // of an angle read, of a mark read
}

// clockwiseAt returns how far clockwise the table has turned when the ball of
// catch A drops into the seat cut for a stop. It follows the parts: the ball
// goes where its part goes.
func (b shopBuild) clockwiseAt(p plan.Plan, seat geom.Point) float64 {
	c := p.Catches[0]
	az := seat.Azimuth() // as it came out, in the seats' part
	if p.Arrangement.CatchIn == plan.PartTurntable {
		return (az - geom.Angle(c.Azimuth)).Wrap().Degrees() // the ball travels to it
	}
	return (geom.Angle(c.Azimuth) - az).Wrap().Degrees() // it travels to the ball
}

// measure reads every stop of a plan twice from both sides, and marks a board.
func (b shopBuild) measure(p *plan.Plan, r *rand.Rand) {
	rep := detent.Solve(*p)
	sense := 1.0
	if p.Arrangement.PositiveTurn == plan.Counterclockwise {
		sense = -1
	}
	other := map[plan.Sense]plan.Sense{plan.Clockwise: plan.Counterclockwise, plan.Counterclockwise: plan.Clockwise}
	for _, s := range rep.Plate.Seats {
		at := s.Centre
		if s.Angle.Degrees() == b.bad {
			at = at.Rotate(geom.FromRadians(b.along / s.Radius))
		}
		turn := b.clockwiseAt(*p, at.Add(b.patternOff))
		for range 2 {
			for _, way := range []float64{1, -1} {
				approach := p.Arrangement.PositiveTurn
				if way < 0 {
					approach = other[approach]
				}
				measured := sense*(turn-b.fenceTurned) + way*b.play + b.noise*r.NormFloat64()
				p.Readings = append(p.Readings, plan.Reading{
					Angle: s.Angle.Degrees(), Measured: math.Round(measured*1e4) / 1e4, // as typed
					Approach: string(approach), Method: string(proving.Typed), Date: "2026-11-20",
				})
			}
		}
	}
	tool := plan.NewTool()
	tool.Offset, tool.Fence = 0, 0 // what the maker believes
	for _, s := range rep.Plate.Stops {
		if s.Angle.Abs() > 60 {
			continue
		}
		// The tool's line turned clockwise, met with the fence.
		lean := sense * s.Angle.Degrees() * math.Pi / 180
		x := (b.offset + b.fence*math.Sin(lean)) / math.Cos(lean)
		tool.Marks = append(tool.Marks, plan.Mark{Angle: s.Angle.Degrees(), X: math.Round((150+x+b.marking*r.NormFloat64())*100) / 100})
	}
	p.Tool = &tool
}

func provedPlan(a plan.Arrangement) plan.Plan {
	p := plan.NewPlan()
	p.Arrangement = a
	p.Catches[0].Azimuth = 30
	for _, angle := range []float64{15, 22.5, 30, 36, 45, 60, 75, 90, 120, 150} {
		p.Stops = append(p.Stops, plan.Stop{Angle: angle, BothSides: true})
	}
	p.Stops = append(p.Stops, plan.Stop{Angle: 0})
	return p
}

// reported returns a plan's report as another program reads it.
func reported(t *testing.T, p plan.Plan) map[string]any {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, detent.Solve(p).Encode(&out, words.English()))
	var m map[string]any
	require.NoError(t, json.Unmarshal(out.Bytes(), &m))
	return m
}

// TestASimulatedBuildIsDiagnosed reads a plate with everything wrong at once,
// whichever way it is built, and finds each fault within three standard errors.
func TestASimulatedBuildIsDiagnosed(t *testing.T) {
	const sure = 3
	b := shopBuild{
		offset: 1.4, fence: -3.2, patternOff: geom.Point{X: 0.4, Y: -0.3}, fenceTurned: 0.25,
		bad: 36, along: 0.8, play: 0.06, noise: 0.02, marking: 0.1,
	}
	for k, a := range plantest.Arrangements {
		p := provedPlan(a)
		b.measure(&p, rand.New(rand.NewPCG(11, uint64(k))))
		require.NoError(t, plan.Validate(p))
		m := reported(t, p)

		v := m["proving"].(map[string]any)
		near := func(want float64, key string, std string) {
			t.Helper()
			assert.InDelta(t, want, v[key], sure*v[std].(float64)+1e-4, key)
			assert.Less(t, v[std], 0.05, std)
		}
		sense := 1.0
		if a.PositiveTurn == plan.Counterclockwise {
			sense = -1
		}
		near(-sense*b.fenceTurned, "common", "common_std")
		near(b.patternOff.X, "eccentric_x", "eccentric_x_std")
		near(b.patternOff.Y, "eccentric_y", "eccentric_y_std")
		near(b.play, "play_angle", "play_angle_std")
		assert.InDelta(t, -b.fenceTurned, v["fence_turn"], sure*v["common_std"].(float64)+1e-4, "turn it back")
		out := 0
		for _, s := range v["seats"].([]any) {
			seat := s.(map[string]any)
			if seat["out"] == true {
				out++
				assert.Equal(t, b.bad, seat["angle"])
				assert.InDelta(t, -b.along, seat["move"], 0.1, "move it back, mm: noise of four readings at 105 mm is 0.02")
			}
		}
		assert.Equal(t, 1, out, "one seat is out")

		fit := m["cut_line"].(map[string]any)["fit"].(map[string]any)
		assert.InDelta(t, b.offset, fit["offset"], sure*fit["offset_std"].(float64))
		assert.InDelta(t, b.fence, fit["fence"], sure*fit["fence_std"].(float64))
		assert.InDelta(t, 150, fit["datum"], 1)
		assert.Less(t, fit["travel_after"], fit["travel"])
	}
}

// TestCrossingsOfThePlan: the lean is the table's clockwise turn where the tool
// turns, and the other way about where the fence does. 20 mm of fence move the
// crossing 20 mm at 45 degrees, to the right when the tool leans right.
func TestCrossingsOfThePlan(t *testing.T) {
	for _, c := range []struct {
		turn    plan.Sense
		turning plan.Turning
		want    float64
	}{
		{plan.Clockwise, plan.ToolTurns, 20},
		{plan.Counterclockwise, plan.ToolTurns, -20},
		{plan.Clockwise, plan.FenceTurns, -20},
		{plan.Counterclockwise, plan.FenceTurns, 20},
	} {
		p := plan.NewPlan()
		p.Arrangement.PositiveTurn = c.turn
		p.Stops = []plan.Stop{{Angle: 90}, {Angle: 45}, {Angle: 0}}
		tool := plan.NewTool()
		tool.Fence, tool.Turning = 20, c.turning
		p.Tool = &tool
		m := reported(t, p)["cut_line"].(map[string]any)
		all := m["crossings"].([]any)
		require.Len(t, all, 3)
		assert.Equal(t, 0.0, all[0].(map[string]any)["x"])
		assert.InDelta(t, c.want, all[1].(map[string]any)["x"], 1e-9)
		assert.Nil(t, all[2].(map[string]any)["x"], "beyond 85 there is none")
		assert.InDelta(t, 20, m["travel"], 1e-9)
		assert.InDelta(t, 0, m["best_fence"], 1e-9)
		assert.Nil(t, m["fit"])
	}
}

func TestSectionsAreNullWithoutTheirKeys(t *testing.T) {
	m := reported(t, provedPlan(plantest.Arrangements[0]))
	assert.Nil(t, m["cut_line"])
	assert.Nil(t, m["proving"])
	assert.Contains(t, m, "cut_line")
	assert.Contains(t, m, "proving")
}

func TestMarksTooCloseTogetherNameAnother(t *testing.T) {
	p := provedPlan(plantest.Arrangements[0])
	tool := plan.NewTool()
	tool.Marks = []plan.Mark{{Angle: 0, X: 100}, {Angle: 15, X: 101}}
	p.Tool = &tool
	m := reported(t, p)["cut_line"].(map[string]any)
	assert.Nil(t, m["fit"], "two marks do not tell")
	assert.NotNil(t, m["mark_next"])
	next := math.Abs(m["mark_next"].(float64))
	assert.GreaterOrEqual(t, next, 45.0, "one far from those there are")
	assert.LessOrEqual(t, next, 85.0)
}

func TestReadingsThatDoNotCount(t *testing.T) {
	p := provedPlan(plantest.Arrangements[0])
	p.Readings = []plan.Reading{
		{Angle: 36, Measured: 36.5, Date: "2026-01-01"},
		{Angle: 36, Measured: 36.1, Date: "2026-11-20"},
		{Angle: 37, Measured: 37},
		{Angle: 45, Measured: 45.1},
	}
	p.ReadingsSince = "2026-06-01"
	v, ok := detent.Solve(p).Proving()
	require.True(t, ok)
	assert.InDelta(t, 0.1, v.Common.Is, 1e-9, "the one of this summer alone")
	assert.Equal(t, []int{2}, v.Lost, "there is no stop at 37")
	assert.Equal(t, []int{0, 3}, v.Old, "older, and of no date")
	p.ReadingsSince = ""
	v, ok = detent.Solve(p).Proving()
	require.True(t, ok)
	assert.Len(t, v.Seats, 2)
	assert.Empty(t, v.Old)
}

// TestManyReadings: a log as long as a plan may hold, each reading found to its
// stop.
func TestManyReadings(t *testing.T) {
	p := plan.NewPlan()
	p.Travel = plan.Span{From: -180, To: 180}
	for i := range 2000 {
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(1999-i)/10 - 100})
	}
	for i := range plan.MaxReadings {
		s := p.Stops[i%2000].Angle
		p.Readings = append(p.Readings, plan.Reading{Angle: s, Measured: s + 0.1})
	}
	r := detent.Solve(p)
	v, ok := r.Proving()
	require.True(t, ok)
	assert.Len(t, v.Seats, 2000)
	assert.Empty(t, v.Lost)
	assert.InDelta(t, 0.1, v.Common.Is, 1e-6)
	for _, i := range []int{0, 77, 1999} {
		assert.Equal(t, i, r.StopOf(p.Readings[i]))
		assert.InDelta(t, 5, float64(v.Seats[i].Readings), 0)
	}
}

// TestRepeatedReadingsKeepNoiseHonest: where a stop's own readings scatter by a
// tenth of a degree, another stop a little off is not called out although the
// rest happen to agree.
func TestRepeatedReadingsKeepNoiseHonest(t *testing.T) {
	p := provedPlan(plantest.Arrangements[0])
	at := func(angle, off float64) {
		p.Readings = append(p.Readings, plan.Reading{Angle: angle, Measured: angle + off})
	}
	for _, a := range []float64{-90, -60, -45, -30, 0, 30, 45, 60} {
		at(a, 0.1)
		at(a, 0.3)
	}
	at(90, 0.4)
	at(90, 0.2)
	v, ok := detent.Solve(p).Proving()
	require.True(t, ok)
	for _, s := range v.Seats {
		assert.False(t, s.Out, "0.1 off is what one reading strays")
	}
}

func TestTrendTakesTheWholeLog(t *testing.T) {
	p := provedPlan(plantest.Arrangements[0])
	p.ReadingsSince = "2026-06-01"
	p.Readings = []plan.Reading{
		{Angle: 36, Measured: 36.3, Date: "2026-03-01"},
		{Angle: 36, Measured: 36.1, Date: "2026-01-01"},
		{Angle: 45, Measured: 46, Date: "2026-02-01"},
		{Angle: 36, Measured: 36.9},
	}
	x := detent.Solve(p).TrendOf(36)
	require.True(t, x.Known)
	assert.Equal(t, "2026-01-01", x.First)
	assert.Equal(t, []float64{59, 0}, x.Days, "the whole log, in its order, but what has no date")
	assert.InDelta(t, 0.1, x.Trend.First, 1e-9)
	assert.InDelta(t, 0.3, x.Last, 1e-9)
	assert.False(t, detent.Solve(p).TrendOf(45).Known)
}
