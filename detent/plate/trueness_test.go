package plate_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// exactly (degrees) is rounding; series is where a distribution's series is cut.
const (
	exactly = 1e-9
	series  = 1e-6
)

// shaky is a plan in which everything is off: seats by 0.3, catches by 0.2 and
// the pivot by 0.05 mm, and the ball has play. Its stops are 0, 20 and, with
// catch B on a ring of its own, 40.
func shaky(edits ...func(*plan.Plan)) plan.Plan {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "A", Radius: 100}, {Name: "B", Azimuth: 90, Radius: 80}}
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 20}, {Angle: 40, Catches: []string{"B"}}}
	p.Shop.SeatError, p.Shop.CatchError, p.Turntable.RadialPlay = 0.3, 0.2, 0.05
	p.Shop.Friction, p.Shop.TableFriction = 0, 0
	p.Seat = plan.Seat{Form: plan.Drilled, Diameter: 7, Depth: 1, DrillPoint: 180, CountersinkAngle: 90}
	p.Catch.BallDiameter, p.Catch.Protrusion = 7, 3
	for _, edit := range edits {
		edit(&p)
	}
	return p
}

// deg is the angle of an arc in mm at a radius.
func deg(arc, radius float64) float64 { return arc / radius * 180 / math.Pi }

// The formulas, term by term: for one catch, one after zeroing on the same
// catch, and one after zeroing on another.
func TestErrorOfAStop(t *testing.T) {
	pl := plate.New(shaky())
	const es, ec, c = 0.3, 0.2, 0.05
	home, ok := pl.Clicks[0].Home()
	require.True(t, ok)
	w := max(home.Play, pl.Clicks[0].Dead.Rests)
	require.Greater(t, w, 0.1, "there is play to reckon with")
	truth := pl.Trueness
	require.Equal(t, 0, truth.Reference)

	drilled, ok := truth.Drilled(1)
	require.True(t, ok)
	assert.InDelta(t, deg(es+ec+c+w, 100), drilled.Worst.Degrees(), exactly)
	assert.InDelta(t, deg(math.Sqrt(es*es/4+ec*ec/4+c*c/4+w*w/3), 100), drilled.Std.Degrees(), exactly)

	same, ok := truth.Zeroed(1)
	require.True(t, ok)
	assert.InDelta(t, deg(2*(es+c+w), 100), same.Worst.Degrees(), exactly)
	assert.InDelta(t, deg(math.Sqrt2*math.Sqrt(es*es/4+c*c/4+w*w/3), 100), same.Std.Degrees(), exactly)

	other, ok := truth.Zeroed(2)
	require.True(t, ok)
	assert.InDelta(t, deg(es+ec+c+w, 100)+deg(es+ec+c+w, 80), other.Worst.Degrees(), exactly, "each over its own radius, the catches' places too")
	at := func(r float64) float64 {
		return (es*es/4 + ec*ec/4 + c*c/4 + w*w/3) * math.Pow(180/math.Pi/r, 2)
	}
	assert.InDelta(t, math.Sqrt(at(100)+at(80)), other.Std.Degrees(), exactly)

	zero, ok := truth.Zeroed(0)
	require.True(t, ok)
	assert.Zero(t, zero.Worst)
	assert.Zero(t, zero.Interval95)

	total := es*es/4 + ec*ec/4 + c*c/4 + w*w/3
	for cause, size := range map[plate.Cause]float64{plate.SeatPlace: es / 2, plate.CatchPlace: ec / 2, plate.GuidePlay: c / 2, plate.BallRest: w / math.Sqrt(3)} {
		assert.InDelta(t, size*size/total, drilled.Share(cause), exactly, "%s", cause)
	}
	stop, worst, ok := truth.WorstZeroed()
	assert.True(t, ok)
	assert.Equal(t, 2, stop)
	assert.Equal(t, other, worst)
}

// A tenth of a millimetre at a radius of 100 is 0.0573°.
func TestATenthAtAHundred(t *testing.T) {
	const fourDecimals = 0.00005
	pl := plate.New(shaky(func(p *plan.Plan) {
		p.Shop.SeatError, p.Shop.CatchError, p.Turntable.RadialPlay = 0.1, 0, 0
		p.Seat.Diameter, p.Seat.Depth = 4.5, 6 // home on the rim: no play
		p.Catch.BallDiameter, p.Catch.Protrusion = 6, 2
	}))
	e, _ := pl.Trueness.Drilled(0)
	assert.InDelta(t, 0.0573, e.Worst.Degrees(), fourDecimals)
}

func TestCollarGuides(t *testing.T) {
	collar := plan.NewCollar(shaky().Turntable)
	collar.Clearance = 0.5
	guided := func(clearance float64) plan.Plan {
		return shaky(func(p *plan.Plan) {
			collar := collar
			collar.Clearance = clearance
			p.Collar, p.Turntable.GuidedBy = &collar, plan.GuideCollar
		})
	}
	a, _ := plate.New(guided(0.5)).Trueness.Drilled(1)
	b, _ := plate.New(shaky(func(p *plan.Plan) { p.Turntable.RadialPlay = 0.25 })).Trueness.Drilled(1)
	assert.Equal(t, b, a, "half the clearance either way")
	a, _ = plate.New(guided(-1)).Trueness.Drilled(1)
	b, _ = plate.New(shaky(func(p *plan.Plan) { p.Turntable.RadialPlay = 0 })).Trueness.Drilled(1)
	assert.Equal(t, b, a, "a press fit has no play")
}

// A pair across from each other settles in the middle of what each wants, and the
// table's own shift moves both the same way: it does not turn it.
func TestOpposedPair(t *testing.T) {
	pl := plate.New(shaky(func(p *plan.Plan) {
		p.Catches[1] = plan.Placement{Name: "B", Azimuth: 180, Radius: 100}
		p.Stops = []plan.Stop{{Angle: 0}, {Angle: 20, Catches: []string{"A", "B"}}}
	}))
	e, ok := pl.Trueness.Drilled(1)
	require.True(t, ok)
	rest := pl.Holds[1].Dead.Degrees()
	home, _ := pl.Clicks[0].Home()
	rest = max(rest, home.PlayAngle.Degrees())
	assert.InDelta(t, math.Sqrt(2*math.Pow(deg(0.3/2, 200), 2)+2*math.Pow(deg(0.2/2, 200), 2)+rest*rest/3), e.Std.Degrees(), exactly)
	assert.Zero(t, e.Share(plate.GuidePlay))

	zeroed, _ := pl.Trueness.Zeroed(1)
	// Catch A pulls fully at the reference and half at the pair: half is left.
	variance := 0.0
	for _, s := range []float64{0.3 / 2, 0.3 / 2, 0.2 / 2, 0.2 / 2} { // two seats and two catches of the pair, A's less what it is at the reference
		variance += math.Pow(deg(s, 200), 2)
	}
	variance += math.Pow(deg(0.3/2, 100), 2) + math.Pow(deg(0.05/2, 100), 2) // the reference's seat, its pivot
	single, _ := pl.Trueness.Drilled(0)
	variance += rest*rest/3 + math.Pow(single.Std.Degrees(), 2)*single.Share(plate.BallRest)
	assert.InDelta(t, math.Sqrt(variance), zeroed.Std.Degrees(), exactly)
}

// A seat that serves the reference too is off there by as much.
func TestSharedSeat(t *testing.T) {
	for why, edit := range map[string]func(*plan.Plan){
		"a full turn on": func(p *plan.Plan) { p.Stops = []plan.Stop{{Angle: 0}, {Angle: 360}} },
		"another catch in the same hole": func(p *plan.Plan) {
			p.Catches[1] = plan.Placement{Name: "B", Azimuth: 90, Radius: 100}
			p.Stops = []plan.Stop{{Angle: 0}, {Angle: -90, Catches: []string{"B"}}}
			p.Shop.CatchError = 0
		},
	} {
		t.Run(why, func(t *testing.T) {
			pl := plate.New(shaky(edit))
			require.Len(t, pl.Seats, 1)
			e, ok := pl.Trueness.Zeroed(1)
			require.True(t, ok)
			assert.Zero(t, e.Share(plate.SeatPlace))
			assert.Positive(t, e.Share(plate.GuidePlay))
		})
	}
}

func TestReference(t *testing.T) {
	ref := func(x float64) *float64 { return &x }
	for _, c := range []struct {
		why    string
		angles []float64
		zero   *float64
		want   int
	}{
		{"the one nearest 0", []float64{-30, 10, 45}, nil, 1},
		{"of two the positive one", []float64{-10, 10}, nil, 1},
		{"the one named", []float64{-30, 10, 45}, ref(45), 2},
		{"the one nearest the one named", []float64{-30, 10, 45}, ref(-90), 0},
		{"none", nil, nil, -1},
	} {
		t.Run(c.why, func(t *testing.T) {
			p := withStops(c.angles...)
			p.Shop.Reference = c.zero
			assert.Equal(t, c.want, plate.New(p).Trueness.Reference)
		})
	}
}

func TestNothingHoldsTheTable(t *testing.T) {
	pl := plate.New(shaky(func(p *plan.Plan) { p.Seat.Diameter, p.Seat.Depth = 9, 0 })) // the ball falls in
	_, ok := pl.Trueness.Drilled(0)
	assert.False(t, ok)
	_, ok = pl.Trueness.Zeroed(1)
	assert.False(t, ok)
	_, _, ok = pl.Trueness.WorstZeroed()
	assert.False(t, ok)
	_, ok = pl.ReachOf(1, 0.1)
	assert.False(t, ok)
	_, ok = pl.Cheapest(1, 0.1)
	assert.False(t, ok)
}

// TestTruenessHoldsTogether: whatever the plan, an interval lies between nothing
// and the worst, shares add up to one, and errors all k times as large do too.
func TestTruenessHoldsTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		pl := plate.New(p)
		for i := range pl.Stops {
			for _, of := range []func(int) (plate.StopError, bool){pl.Trueness.Drilled, pl.Trueness.Zeroed} {
				e, ok := of(i)
				if !ok {
					continue
				}
				require.LessOrEqual(t, e.Interval95, e.Worst*(1+series)+exactly)
				require.LessOrEqual(t, e.Std, e.Worst+exactly)
				require.GreaterOrEqual(t, e.Interval95, geom.Angle(0))
				if e.Std > 0 {
					shares := 0.0
					for c := range plate.Causes {
						shares += e.Share(c)
					}
					require.InDelta(t, 1, shares, series)
				}
			}
		}
	})
}

// Two catches that lie on each other have one hole, whose place counts in full.
func TestCatchesInOnePlace(t *testing.T) {
	pl := plate.New(shaky(func(p *plan.Plan) {
		p.Catches[1] = plan.Placement{Name: "B", Radius: 100}
		p.Stops = []plan.Stop{{Angle: 0, Catches: []string{"A", "B"}}}
		p.Shop.CatchError, p.Turntable.RadialPlay = 0, 0
	}))
	require.Len(t, pl.Seats, 1)
	e, _ := pl.Trueness.Drilled(0)
	assert.InDelta(t, deg(0.3/2, 100), e.Std.Degrees()*math.Sqrt(e.Share(plate.SeatPlace)), exactly)
}
