package router_test

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/plate"
	"stopwright/export/router"
)

// trial is a plan whose router refuses nothing.
func trial() plan.Plan { return mitres(plantest.Arrangements[0]) }

// refusedFor returns the problems for which a plan's programs are refused.
func refusedFor(t *testing.T, p plan.Plan) []router.Problem {
	t.Helper()
	require.NoError(t, plan.Validate(p))
	_, err := router.All(plate.New(p), words.English())
	if err == nil {
		return nil
	}
	var r *router.Refusal
	require.True(t, errors.As(err, &r))
	return r.Problems
}

func TestRefusals(t *testing.T) {
	const base, table = plan.PartBase, plan.PartTurntable
	for _, c := range []struct {
		why    string
		change func(*plan.Plan)
		want   []router.Problem
	}{
		{"as it is", func(*plan.Plan) {}, nil},
		{"no collar, the defaults", func(p *plan.Plan) { p.Router, p.Collar = nil, nil }, nil},
		{"a spindle that is off", func(p *plan.Plan) { p.Router.Spindle, p.Collar, p.Features = 0, nil, nil }, []router.Problem{
			{ID: "spindle-off", Part: base, Limit: 1, Unit: "rev/min"},
			{ID: "spindle-off", Part: table, Limit: 1, Unit: "rev/min"},
		}},
		{"a cutter as wide as the pivot bore just fits", func(p *plan.Plan) { p.Router.Cutter = 8 }, nil},
		{"a cutter too wide", func(p *plan.Plan) { p.Router.Cutter = 8.2 }, []router.Problem{
			{ID: "tool-too-wide", Part: base, Job: router.Pivot, Value: 8.2, Limit: 8, Unit: "mm"},
			{ID: "tool-too-wide", Part: table, Job: router.Pivot, Value: 8.2, Limit: 8, Unit: "mm"},
			{ID: "tool-too-wide", Part: table, Job: router.Body, Tag: "A", Value: 8.2, Limit: 8.1, Unit: "mm"},
		}},
		{"a bore as deep as the part", func(p *plan.Plan) { p.Catch.BodyLength = 17.5 }, nil},
		{"a bore beyond the part", func(p *plan.Plan) { p.Catch.BodyLength = 17.75 }, []router.Problem{
			{ID: "too-deep", Part: table, Job: router.Body, Tag: "A", Value: 18.25, Limit: 18, Unit: "mm"},
		}},
		{"edges exactly long enough", func(p *plan.Plan) { p.Router.CutterLength = 18.5 }, nil},
		{"edges too short", func(p *plan.Plan) { p.Router.CutterLength, p.Features = 18.25, nil }, []router.Problem{
			{ID: "tool-too-short", Part: base, Job: router.Pivot, Value: 18.5, Limit: 18.25, Unit: "mm"},
			{ID: "tool-too-short", Part: table, Job: router.Pivot, Value: 18.5, Limit: 18.25, Unit: "mm"},
		}},
		{"fast travel to the safe height exactly", func(p *plan.Plan) { p.Router.Approach = 10 }, nil},
		{"fast travel that ends too high", func(p *plan.Plan) { p.Router.Approach, p.Collar = 10.5, nil }, []router.Problem{
			{ID: "approach-high", Part: base, Value: 10.5, Limit: 10, Unit: "mm"},
			{ID: "approach-high", Part: table, Value: 10.5, Limit: 10, Unit: "mm"},
		}},
		{"a spoil board exactly thick enough", func(p *plan.Plan) {
			p.Collar, p.Features, p.Seat.ReliefDiameter, p.Router.SpoilBoard = nil, nil, 0, 0.5
		}, nil},
		{"no spoil board", func(p *plan.Plan) {
			p.Collar, p.Features, p.Seat.ReliefDiameter, p.Router.SpoilBoard = nil, nil, 0, 0
		}, []router.Problem{
			{ID: "spoil-board", Part: base, Job: router.Pivot, Value: 0.5, Unit: "mm"},
			{ID: "spoil-board", Part: table, Job: router.Pivot, Value: 0.5, Unit: "mm"},
		}},
		{"nothing goes beyond the part", func(p *plan.Plan) {
			p.Collar, p.Features, p.Seat.ReliefDiameter, p.Router.SpoilBoard, p.Router.Breakthrough = nil, nil, 0, 0, 0
		}, nil},
		{"a chamfer that clears the floor", func(p *plan.Plan) { p.Seat.Chamfer, p.Seat.ReliefDiameter = 1, 0 }, nil},
		{"a chamfer whose tip would cut the floor", func(p *plan.Plan) {
			p.Seat.Chamfer, p.Seat.ReliefDiameter, p.Seat.DrillPoint, p.Seat.Depth = 0.5, 0, 180, 2.5
		}, []router.Problem{
			{ID: "chamfer-bottoms", Part: base, Job: router.Chamfer, Tag: "A1", Value: 2.75, Limit: 2.5, Unit: "mm"},
		}},
		{"a relief hole takes the tip in", func(p *plan.Plan) {
			p.Seat.Chamfer, p.Seat.ReliefDiameter, p.Seat.DrillPoint, p.Seat.Depth = 0.5, 0.5, 180, 2.5
		}, nil},
	} {
		p := trial()
		c.change(&p)
		assert.Equal(t, c.want, refusedFor(t, p), c.why)
	}
}

// All that is wrong is told at once.
func TestRefusalTellsAll(t *testing.T) {
	p := trial()
	p.Router.Spindle, p.Router.Cutter, p.Catch.BodyLength, p.Router.Approach = 0, 9, 30, 20
	ids := map[string]int{}
	for _, f := range refusedFor(t, p) {
		ids[f.ID]++
	}
	assert.Equal(t, map[string]int{
		"spindle-off": 3, "approach-high": 3, "tool-too-wide": 3, "too-deep": 1, "tool-too-short": 1,
	}, ids)
}

func TestRefusalOfAProgramWithoutEnd(t *testing.T) {
	p := plantest.Equal(plan.MaxSeats)
	r := plan.DefaultRouter()
	p.Router = &r
	assert.Empty(t, refusedFor(t, p), "the largest plate there may be")
	p.Seat.Depth, p.Base.Thickness, p.Turntable.PivotBore, r.Peck = 90, 100, 0, 0.1
	problems := refusedFor(t, p)
	require.Len(t, problems, 1)
	assert.Equal(t, "too-long", problems[0].ID)
	assert.Greater(t, problems[0].Value, problems[0].Limit)
}

func TestRefusalsInWords(t *testing.T) {
	for _, language := range words.Languages() {
		c, err := words.In(language)
		require.NoError(t, err)
		for _, id := range []string{
			"spindle-off", "approach-high", "too-deep", "spoil-board", "tool-too-wide", "tool-too-short", "chamfer-bottoms", "too-long",
		} {
			said := router.Problem{ID: id, Part: plan.PartBase, Job: router.Seat, Tag: "A1", Value: 7.5, Limit: 6.25, Unit: "mm"}.Text(c)
			assert.Contains(t, said, c.Decimal("7.5"), id)
			assert.NotContains(t, said, "[", id)
			assert.NotContains(t, said, "nil", id)
		}
	}
	_, err := router.New(plate.New(func() plan.Plan { p := trial(); p.Router.Cutter = 9; return p }()), plan.PartBase, words.English())
	assert.EqualError(t, err, "Base, pivot bore: the cutter of ⌀9 mm is too wide for a hole of ⌀8 mm.")
}
