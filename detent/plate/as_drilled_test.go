package plate_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/plate"
)

// A seat is drilled wherever it would have to be for the stop to be somewhat off:
// what is read back is that, in every arrangement.
func TestAsDrilledGivesTheStopBack(t *testing.T) {
	for _, a := range plantest.Arrangements {
		t.Run(nameOf(a), func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				p := shaky(func(p *plan.Plan) { p.Arrangement = a })
				off := rapid.Float64Range(-5, 5).Draw(t, "off")
				out := rapid.Float64Range(-3, 3).Draw(t, "out")
				pl := plate.New(p)
				az := p.Catches[1].Azimuth + pl.Sigma.Degrees()*(40+off)
				at := place(p.Catches[1].Radius+out, az)
				if pl.SeatsPart == plan.PartTurntable { // drilled underside up
					at.X = -at.X
				}
				p.AsDrilled = []plan.AsDrilled{{Angle: 40, Catch: "B", X: at.X, Y: at.Y}}
				d := plate.New(p).Drilled[0]
				require.Equal(t, 2, d.Stop)
				require.InDelta(t, off, d.Off.Degrees(), exactly)
				require.InDelta(t, 40+off, d.True.Degrees(), exactly)
				require.InDelta(t, out, d.Radial, exactly)
			})
		})
	}
}

func TestAsDrilledLog(t *testing.T) {
	seat := func(angle float64, catch string, turn float64) plan.AsDrilled {
		at := place(100, turn)
		return plan.AsDrilled{Angle: angle, Catch: catch, X: at.X, Y: at.Y}
	}
	pl := plate.New(shaky(func(p *plan.Plan) {
		p.AsDrilled = []plan.AsDrilled{
			seat(20, "", 20.3), seat(0, "A", 0.1), seat(77, "A", 77), seat(20, "Z", 20), seat(20, "A", 20.2),
		}
	}))
	require.Len(t, pl.Drilled, 5, "nothing of the log is lost")
	assert.Equal(t, -1, pl.Drilled[2].Stop, "no such stop any more")
	assert.Equal(t, -1, pl.Drilled[3].Catch, "no such catch any more")
	off, ok := pl.ReallyOff(1)
	require.True(t, ok)
	assert.InDelta(t, 0.2, off.Degrees(), exactly, "the last entry counts")
	off, ok = pl.ReallyOffZeroed(1)
	require.True(t, ok)
	assert.InDelta(t, 0.1, off.Degrees(), exactly, "less what the reference is off")
	_, ok = pl.ReallyOff(2)
	assert.False(t, ok, "not measured")
	_, ok = pl.ReallyOffZeroed(2)
	assert.False(t, ok)

	pl = plate.New(shaky(func(p *plan.Plan) { p.AsDrilled = []plan.AsDrilled{seat(20, "A", 20)} }))
	_, ok = pl.ReallyOffZeroed(1)
	assert.False(t, ok, "the reference is not measured")
}

// The seats of a pair must both be measured; on rings of different radii the
// outer one has the longer arm, and the more say.
func TestAsDrilledPair(t *testing.T) {
	pair := func(seats ...plan.AsDrilled) *plate.Plate {
		return plate.New(shaky(func(p *plan.Plan) {
			p.Stops = []plan.Stop{{Angle: 0, Catches: []string{"A", "B"}}}
			p.AsDrilled = seats
		}))
	}
	a, b := place(100, 0.4), place(80, 90)
	seatA := plan.AsDrilled{Catch: "A", X: a.X, Y: a.Y}
	_, ok := pair(seatA).ReallyOff(0)
	assert.False(t, ok)
	off, ok := pair(seatA, plan.AsDrilled{Catch: "B", X: b.X, Y: b.Y}).ReallyOff(0)
	require.True(t, ok)
	assert.InDelta(t, 0.4*100*100/(100*100+80*80), off.Degrees(), exactly)
}

func TestOverPins(t *testing.T) {
	other, seat := place(105, 0), place(104.7, 36.2)
	o := plate.OverPins{
		Pivot: 104.7 + (8+4.5)/2.0, Other: apart(other, seat) + 4.5,
		PivotPin: 8, SeatPins: 4.5, OtherSeat: geom.Point{X: other.X, Y: other.Y},
	}
	at, ok := o.Place(place(105, 36))
	require.True(t, ok)
	assert.InDelta(t, 0, apart(at, seat), same)
	at, ok = o.Place(place(105, -36))
	require.True(t, ok)
	assert.InDelta(t, 0, apart(at, place(104.7, -36.2)), same, "on the other side")
	for why, wrong := range map[string]func(*plate.OverPins){
		"farther apart than the ring is wide": func(o *plate.OverPins) { o.Other = 250 },
		"less than the pins themselves":       func(o *plate.OverPins) { o.Other = 4 },
		"a reading to the pivot of nothing":   func(o *plate.OverPins) { o.Pivot = 0 },
		"a seat on the pivot":                 func(o *plate.OverPins) { o.OtherSeat = geom.Point{} },
	} {
		bad := o
		wrong(&bad)
		_, ok := bad.Place(seat)
		assert.False(t, ok, why)
	}
}
