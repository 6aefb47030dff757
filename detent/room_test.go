package detent_test

import (
	"context"
	"encoding/json"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent"
	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

// crowded is a 240 mm table with mitres that do not fit on one ring.
func crowded(edits ...func(*plan.Plan)) plan.Plan {
	p := plan.NewPlan()
	p.Turntable.Diameter = 240
	p.Catches[0].Radius = 100
	p.Stops = []plan.Stop{{Angle: 0, Label: "square"}}
	for _, a := range []float64{15, 22.5, 30, 31.6, 45} {
		p.Stops = append(p.Stops, plan.Stop{Angle: a, BothSides: true})
	}
	for _, e := range edits {
		e(&p)
	}
	return p
}

func withTravel(from, to float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Travel = plan.Span{From: from, To: to} }
}

// divided is a table that stops n times in a turn.
func divided(n int) plan.Plan {
	p := plan.NewPlan()
	p.Catches[0].Radius = 100
	for i := range n {
		p.Stops = append(p.Stops, plan.Stop{Angle: 360 * float64(i) / float64(n)})
	}
	return p
}

func makeRoom(t require.TestingT, p plan.Plan) []detent.Room {
	rooms, err := detent.MakeRoom(context.Background(), p)
	require.NoError(t, err)
	return rooms
}

// errors lists the ids of a plan's errors.
func errorsOf(p plan.Plan) []string {
	var out []string
	for _, f := range detent.Solve(p).Findings {
		if f.Severity == check.Error {
			out = append(out, f.ID)
		}
	}
	return out
}

// same reports whether two plans have the same stops, in the same order.
func sameStopsOf(t require.TestingT, want, got plan.Plan) {
	a, b := plate.StopsOf(want), plate.StopsOf(got)
	require.Len(t, b, len(a))
	for i := range a {
		require.Equal(t, a[i].Angle, b[i].Angle)
		require.Equal(t, a[i].Label, b[i].Label)
	}
}

func kinds(rooms []detent.Room, fits bool) []room.Kind {
	var out []room.Kind
	for _, r := range rooms {
		if r.Fits == fits {
			out = append(out, r.Kind)
		}
	}
	return out
}

func TestRoomForMitres(t *testing.T) {
	for _, c := range []struct {
		why  string
		plan plan.Plan
		want []room.Kind
	}{
		{"no end stops: no ring can be shared", crowded(), []room.Kind{room.Rings, room.Rings}},
		{"end stops at 60", crowded(withTravel(-60, 60)), []room.Kind{room.Rings, room.SharedRing, room.Rings, room.Mixed}},
		{
			"the catches in the base, turning the other way", crowded(withTravel(-60, 60), func(p *plan.Plan) {
				p.Arrangement = plan.Arrangement{CatchIn: plan.PartBase, PositiveTurn: plan.Counterclockwise}
			}),
			[]room.Kind{room.Rings, room.SharedRing, room.Rings, room.Mixed},
		},
	} {
		t.Run(c.why, func(t *testing.T) {
			require.Contains(t, errorsOf(c.plan), "seats-overlap")
			rooms := makeRoom(t, c.plan)
			assert.Equal(t, c.want, kinds(rooms, true))
			for _, r := range rooms {
				sameStopsOf(t, c.plan, r.Plan)
				if r.Fits {
					assert.Empty(t, errorsOf(r.Plan), "%s of %v", r.Kind, r.Plan.Catches)
					assert.GreaterOrEqual(t, r.Web, c.plan.Rules.Web)
				}
			}
			last := rooms[len(rooms)-1]
			assert.Equal(t, room.OneRing, last.Kind)
			assert.False(t, last.Fits)
			assert.Equal(t, 233.0, last.Needs, "a ring larger than the table")
			assert.Less(t, last.Most, 120.0)
		})
	}
}

func TestRoomFor360Divisions(t *testing.T) {
	p := divided(360)
	rooms := makeRoom(t, p)
	least := 360
	for _, r := range rooms {
		if r.Kind == room.Divided {
			require.True(t, r.Fits)
			require.Empty(t, errorsOf(r.Plan))
			sameStopsOf(t, p, r.Plan)
			require.Equal(t, 360, r.Seats*len(r.Plan.Catches))
			least = min(least, r.Seats)
		}
	}
	assert.LessOrEqual(t, least, 60)
}

// Where features leave the plan's own ring no room, an answer keeps clear of
// them; where they leave none anywhere, none is offered and the ring that would
// do is told.
func TestRoomBesideFeatures(t *testing.T) {
	slot := func(from, to, radius, width float64) func(*plan.Plan) {
		return func(p *plan.Plan) {
			p.Features = append(p.Features, plan.Feature{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: radius, From: from, To: to, Width: width})
		}
	}
	p := crowded(withTravel(-60, 60), slot(-180, -170, 100, 10), slot(80, 85, 92, 12))
	rooms := makeRoom(t, p)
	require.NotEmpty(t, kinds(rooms, true))
	for _, r := range rooms {
		if r.Fits {
			assert.Empty(t, errorsOf(r.Plan))
		}
	}
	p = crowded(slot(-180, 180, 60, 100)) // nothing of the base is left but 110 and beyond
	assert.Equal(t, []room.Kind{room.OneRing}, kinds(makeRoom(t, p), false))
	assert.Empty(t, kinds(makeRoom(t, p), true))
}

// What is wrong for another reason stays so and does not keep an answer back.
func TestRoomLeavesOtherErrors(t *testing.T) {
	p := crowded(func(p *plan.Plan) { p.Catch.Protrusion = 0.15 })
	require.Contains(t, errorsOf(p), "ball-cannot-reach")
	for _, r := range makeRoom(t, p) {
		if r.Fits {
			for _, id := range errorsOf(r.Plan) {
				assert.Equal(t, "ball-cannot-reach", id)
			}
		}
	}
	assert.NotEmpty(t, kinds(makeRoom(t, p), true))
}

func TestRoomMovesStopsLast(t *testing.T) {
	p := crowded(func(p *plan.Plan) {
		p.Stops = nil
		for a := 0.0; a < 12; a++ { // a stop every half degree, and a table of one ring only
			p.Stops = append(p.Stops, plan.Stop{Angle: a / 2, BothSides: true, Label: "fine"})
		}
		p.Turntable.PivotBore, p.Turntable.Diameter, p.Catches[0].Radius = 190, 236, 105
	})
	rooms := makeRoom(t, p)
	require.Equal(t, []room.Kind{room.Nearest}, kinds(rooms, true))
	n := rooms[0]
	assert.Empty(t, errorsOf(n.Plan))
	assert.Len(t, n.Plan.Stops, len(p.Stops), "both sides move alike and stay one entry")
	assert.Greater(t, n.Moved(p), 10.0)
	assert.Equal(t, "fine", n.Plan.Stops[3].Label)
	assert.Zero(t, n.Plan.Stops[0].Angle, "the middle stays")
}

func TestRoomForNothing(t *testing.T) {
	p := plan.NewPlan()
	assert.Empty(t, makeRoom(t, p), "no stops")
	p.Stops = []plan.Stop{{Angle: 10}}
	rooms := makeRoom(t, p)
	require.Len(t, rooms, 1)
	assert.True(t, rooms[0].Fits)
	assert.True(t, math.IsInf(rooms[0].Web, 1))
	assert.Equal(t, p.Catches, rooms[0].Plan.Catches, "the ring stays where it is")
}

func TestRoomStopsWhenTold(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, err := detent.MakeRoom(ctx, crowded())
	assert.ErrorIs(t, err, context.Canceled)
}

// TestRoomIsSoundForEveryPlan: whatever the plan, an answer that is said to fit
// is a valid plan, has no error of place and none that the plan had not, and the
// plan itself is not written to.
func TestRoomIsSoundForEveryPlan(t *testing.T) {
	ofPlace := []string{"seats-overlap", "web-thin", "edge-thin", "feature-overlap", "track-crossed", "track-leaves", "pocket-edge", "false-click"}
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		before := p.Clone()
		had := errorsOf(p)
		rooms := makeRoom(t, p)
		require.Equal(t, before, p)
		for _, r := range rooms {
			if !r.Fits {
				continue
			}
			require.NoError(t, plan.Validate(r.Plan))
			for _, id := range errorsOf(r.Plan) {
				require.False(t, slices.Contains(ofPlace, id), "%s: %s", r.Kind, id)
				require.Contains(t, had, id)
			}
			if r.Kind != room.Nearest {
				sameStopsOf(t, p, r.Plan)
			}
		}
		require.Equal(t, rooms, makeRoom(t, p), "the same every time")
	})
}

func TestRoomInTheReport(t *testing.T) {
	r, err := detent.Study(t.Context(), detent.Solve(crowded()))
	require.NoError(t, err)
	var out struct {
		Room []struct {
			Kind    string
			Fits    bool
			Catches []struct {
				Name            string
				Azimuth, Radius float64
			}
			Stops []struct {
				Angle float64
				Catch string
			}
			Web, Needs *float64
		}
	}
	require.NoError(t, json.Unmarshal(encoded(t, r), &out))
	require.Len(t, out.Room, 3)
	first := out.Room[0]
	assert.Equal(t, "rings", first.Kind)
	assert.True(t, first.Fits)
	assert.Len(t, first.Catches, 2)
	assert.Len(t, first.Stops, 11)
	assert.Equal(t, 100.0, first.Catches[0].Radius)
	require.NotNil(t, first.Web)
	assert.Nil(t, first.Needs)
	assert.Equal(t, 233.0, *out.Room[2].Needs)
	require.NoError(t, json.Unmarshal(encoded(t, detent.Solve(crowded())), &out))
	assert.Empty(t, out.Room, "not studied")
}

func TestPairs(t *testing.T) {
	p := plan.NewPlan()
	p.Catches = []plan.Placement{{Name: "A", Azimuth: 170, Radius: 100}, {Name: "B", Azimuth: -10, Radius: 100}}
	p.Stops = []plan.Stop{{Angle: 0, Catches: []string{"A", "B"}}, {Angle: 20}}
	pairs := detent.Solve(p).Pairs()
	require.Len(t, pairs, 1)
	k := pairs[0]
	assert.Equal(t, 180.0, k.Apart.Degrees())
	assert.InEpsilon(t, 2, k.Hold.Holding/k.Alone.Holding, 1e-9, "an opposed pair doubles the torque")
	assert.InEpsilon(t, 2*p.Turntable.RadialPlay/100, k.Takes().Radians(), 1e-9)
	assert.Less(t, k.Std(), k.StdAlone())
}

// TestPairsAgreeWithTrueness: what a pair's stop is worth is said in two places,
// for rings alike and unlike.
func TestPairsAgreeWithTrueness(t *testing.T) {
	for _, radius := range []float64{105, 60} {
		p := mendPlan(0, 30)
		p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 160, Radius: radius})
		for i := range p.Stops {
			p.Stops[i].Catches = []string{"A", "B"}
		}
		p.Turntable.RadialPlay = 0.2
		r := detent.Solve(p)
		e, ok := r.Plate.Trueness.Drilled(0)
		require.True(t, ok)
		rest := e.Share(plate.BallRest) // the balls' own rest is not the pair's
		const exact = 1e-12
		assert.InDelta(t, e.Std.Degrees()*math.Sqrt(1-rest), r.Pairs()[0].Std().Degrees(), exact)
	}
}
