package detent_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// mendPlan is a table of few stops with room round its seats: mouth 4.5 mm, ring
// 105 mm, a web rule of 2 mm.
func mendPlan(angles ...float64) plan.Plan {
	p := plan.NewPlan()
	p.Seat = plan.Seat{Form: plan.Drilled, Diameter: 4.5, Depth: 6, DrillPoint: 180, CountersinkAngle: 90}
	p.Rules = plan.Rules{Web: 2, Edge: 4}
	p.Travel = plan.Span{From: -60, To: 60}
	for _, a := range angles {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	return p
}

func repair(t *testing.T, p plan.Plan, seat int, move float64, kind detent.RepairKind) detent.Repair {
	t.Helper()
	require.NoError(t, plan.Validate(p))
	for _, x := range detent.Solve(p).RepairsOf(seat, move) {
		if x.Kind == kind {
			return x
		}
	}
	t.Fatalf("no %s", kind)
	return detent.Repair{}
}

func TestPlugAndBushSizes(t *testing.T) {
	p := mendPlan(-45, 0, 45)
	plug := repair(t, p, 1, 0.8, detent.Plug)
	assert.True(t, plug.Fits)
	assert.Equal(t, 11.0, plug.Diameter, "2·(0.8 + 2.25 + 2) is 10.1")
	assert.Equal(t, 8.0, plug.Depth, "2 mm below a flat floor at 6")
	bush := repair(t, p, 1, 0.8, detent.Bush)
	assert.Equal(t, 10.0, bush.Diameter, "2·(0.8 + 2.25 + 1) is 8.1, sold as 10")
	assert.InDelta(t, 0.8, bush.Old.Distance(bush.New), 1e-4, "an arc is all but its chord")
	assert.Equal(t, geom.Angle(90), bush.Towards, "at az 0, clockwise is to the right")
	assert.Greater(t, bush.New.X, bush.Old.X)
	back := repair(t, p, 1, -0.8, detent.Bush)
	assert.Equal(t, geom.Angle(-90), back.Towards)
	assert.Less(t, back.New.X, back.Old.X)
	assert.Positive(t, p.Rules.Web, "and the plan itself is as it was")
	assert.Len(t, p.Features, 0)

	far := repair(t, p, 1, 7, detent.Plug)
	assert.True(t, far.Beside, "clear of the old hole")
	assert.Equal(t, 5.0, far.Diameter, "the plug only fills the old hole")
	through := mendPlan(0)
	through.Seat.Depth = 0
	assert.Zero(t, repair(t, through, 0, 0.5, detent.Plug).Depth, "a seat right through has its plug right through")
}

// TestPlugRoomToANeighbour tries neighbours at, and a hair nearer than, the web
// rule from the plug's edge.
func TestPlugRoomToANeighbour(t *testing.T) {
	const hair = 1e-6
	at := func(web float64) plan.Plan {
		// 5.5 mm of plug, the web, 2.25 mm of the neighbour's mouth.
		chord := 5.5 + web + 2.25
		return mendPlan(0, 2*math.Asin(chord/2/105)*180/math.Pi)
	}
	fits := repair(t, at(2), 0, -0.8, detent.Plug)
	assert.Equal(t, 11.0, fits.Diameter)
	assert.True(t, fits.Fits, "the rule exactly")
	tight := repair(t, at(2-hair), 0, -0.8, detent.Plug)
	assert.False(t, tight.Fits)
	require.NotEmpty(t, tight.InTheWay)
	assert.Equal(t, "web-thin", tight.InTheWay[0].ID)
}

func TestPlugRoomElsewhere(t *testing.T) {
	edge := mendPlan(0)
	edge.Base.Shape, edge.Base.Diameter = plan.Disc, 2*(105+5.5+4)
	assert.True(t, repair(t, edge, 0, 0.8, detent.Plug).Fits, "the edge rule exactly")
	edge.Base.Diameter -= 1e-3
	assert.False(t, repair(t, edge, 0, 0.8, detent.Plug).Fits, "less than the edge rule to the edge")

	screw := mendPlan(0)
	screw.Features = []plan.Feature{{Part: plan.PartBase, Kind: plan.Hole, X: 0, Y: 105 + 5.5 + 2 + 2.5, Diameter: 5}}
	assert.True(t, repair(t, screw, 0, 0.8, detent.Plug).Fits, "the web rule to a screw hole exactly")
	screw.Features[0].Y -= 1e-3
	assert.False(t, repair(t, screw, 0, 0.8, detent.Plug).Fits)

	// The new seat, 7 mm of arc clockwise, is not inside the plug: it keeps the
	// rules itself.
	const move, ring, mouth = 7.0, 105.0, 2.25
	at := geom.Polar(ring, geom.FromRadians(move/ring))
	far := mendPlan(0)
	far.Features = []plan.Feature{{Part: plan.PartBase, Kind: plan.Hole, X: at.X, Y: at.Y + mouth + 2 + 2.5, Diameter: 5}}
	assert.True(t, repair(t, far, 0, move, detent.Plug).Fits, "the web rule to a screw hole exactly")
	far.Features[0].Y -= 1e-3
	assert.False(t, repair(t, far, 0, move, detent.Plug).Fits, "the new seat runs into a screw hole")
	side := mendPlan(90)
	side.Travel.To = 90
	side.Base.Width, side.Base.Depth = 300, 2*(at.X+mouth+4)
	assert.True(t, repair(t, side, 0, -move, detent.Plug).Fits, "the edge rule exactly")
	side.Base.Depth -= 1e-3
	assert.False(t, repair(t, side, 0, -move, detent.Plug).Fits, "the new seat is too near the far edge")

	beside := mendPlan(0, 7)
	assert.False(t, repair(t, beside, 0, 7, detent.Plug).Fits, "the new seat would lie in the next one")
}

// TestCleanGround turns the moved table through its travel and looks for old
// holes under the ball.
func TestCleanGround(t *testing.T) {
	p := mendPlan(-45, -22.5, 0, 22.5, 45)
	r := detent.Solve(p)
	x := r.Clean()
	require.True(t, x.Fits)
	assert.Zero(t, x.Radius)
	half := geom.FromRadians(2 * math.Asin(2.25/2/105)) // a mouth's half, seen from the pivot
	assert.GreaterOrEqual(t, x.Turned.Abs(), 105+half, "60 of travel and 45 of seats")
	assert.Less(t, x.Turned.Abs(), 105+half+5, "and no farther than the pockets and the web ask")
	moved := x.Trial.Plate
	for turn := geom.Angle(-60); turn <= 60; turn += 0.1 {
		ball := geom.Polar(105, geom.Angle(moved.Plan.Catches[0].Azimuth)+moved.Sigma*turn)
		for _, old := range r.Plate.Seats {
			assert.Greater(t, ball.Distance(old.Centre), 2.25, "at %v", turn)
		}
	}
	assert.False(t, hasErrors(x.Trial))
}

func TestCleanGroundOfAFullTurn(t *testing.T) {
	p := mendPlan()
	p.Travel = plan.Span{From: -180, To: 180}
	for a := -150.0; a <= 180; a += 30 {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	x := detent.Solve(p).Clean()
	require.True(t, x.Fits)
	assert.Zero(t, x.Turned, "no arc is clean")
	assert.GreaterOrEqual(t, math.Abs(x.Radius), 9.5+2, "a ring whose pocket keeps the web from the old one")

	p.Turntable.Diameter, p.Base.Shape, p.Base.Diameter = 230, plan.Disc, 230
	p.Turntable.PivotBore = 170
	assert.False(t, detent.Solve(p).Clean().Fits, "no ring on so narrow a band")
}

// TestCleanGroundBesideFaultsOfOthers: what was wrong with a fitting before is
// not in the way of the pattern.
func TestCleanGroundBesideFaultsOfOthers(t *testing.T) {
	p := mendPlan(-45, -22.5, 0, 22.5, 45)
	p.Making.Fence = plan.FenceSlots{Width: 8, Length: 60, Spacing: 200, Y: p.Base.Depth / 2}
	r := detent.Solve(p)
	require.Contains(t, idsOf(r), "fitting-edge", "the slots run off the base")
	x := r.Clean()
	assert.True(t, x.Fits)
	assert.Equal(t, idsOf(r), idsOf(x.Trial), "nothing new is wrong")
}

func idsOf(r detent.Report) []string {
	var out []string
	for _, f := range r.Findings {
		out = append(out, f.ID)
	}
	return out
}

func hasErrors(r detent.Report) bool {
	worst, _ := r.Worst()
	return worst == check.Error
}

// TestAPairIsMendedByBothItsSeats lays both seats of a stop that is off where its
// move says, and has the plate itself say what the stop then is.
func TestAPairIsMendedByBothItsSeats(t *testing.T) {
	for _, in := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		p := mendPlan(-45, -30, -15, 0, 15, 30, 45)
		p.Arrangement.CatchIn = in
		p.Catches = append(p.Catches, plan.Placement{Name: "B", Azimuth: 150, Radius: 60})
		for i := range p.Stops {
			p.Stops[i].Catches = []string{"A", "B"}
			off := 0.0
			if i == 5 {
				off = 0.5
			}
			p.Readings = append(p.Readings, plan.Reading{Angle: p.Stops[i].Angle, Measured: p.Stops[i].Angle + off})
		}
		r := detent.Solve(p)
		v, ok := r.Proving()
		require.True(t, ok)
		bad := v.Seats[5]
		require.True(t, bad.Out)
		require.InDelta(t, 0.5, bad.Own, 1e-9)
		for _, seat := range r.Plate.Stops[5].Seats {
			at := plate.AtDrill(r.Plate.SeatsPart, r.RepairsOf(seat, bad.Move)[0].New)
			p.AsDrilled = append(p.AsDrilled, plan.AsDrilled{Angle: 30, Catch: p.Catches[r.Plate.Seats[seat].Catch].Name, X: at.X, Y: at.Y})
		}
		mended, ok := detent.Solve(p).Plate.ReallyOff(5)
		require.True(t, ok)
		assert.InDelta(t, -0.5, mended.Degrees(), 1e-9, "what the move makes of a true stop, and takes off this one")
	}
}

func TestHolesAreAsSeenAtTheDrill(t *testing.T) {
	for _, in := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		p := mendPlan(-30, 0, 30)
		p.Arrangement.CatchIn = in
		r := detent.Solve(p)
		x := r.RepairsOf(0, 1)[0]
		holes := x.Holes(r.Plate)
		require.Len(t, holes, 2)
		mirror := 1.0
		if in == plan.PartBase {
			mirror = -1 // the seats' part lies underside up
		}
		assert.InDelta(t, mirror*x.Old.X, holes[0].At.X, 1e-9)
		assert.InDelta(t, mirror*x.New.X, holes[1].At.X, 1e-9)
		assert.Equal(t, []string{"plug", "seat"}, []string{holes[0].Key, holes[1].Key})
	}
	assert.Empty(t, detent.Solve(mendPlan(0)).Clean().Holes(nil), "a pattern has a chart of its own")
}
