package plate_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// ballSlack is the rounding of a coordinate at some 100 mm, mm.
const ballSlack = 1e-9

// At every stop each of its balls stands on the axis of a seat that serves it,
// whichever part holds the catch and whichever way the table turns.
func TestBallsStandInTheirSeatsAtEveryStop(t *testing.T) {
	for _, in := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		for _, turn := range []plan.Sense{plan.Clockwise, plan.Counterclockwise} {
			p := plan.Default()
			p.Arrangement = plan.Arrangement{CatchIn: in, PositiveTurn: turn}
			p.Catches = []plan.Placement{{Name: "A", Azimuth: 20, Radius: 105}, {Name: "B", Azimuth: -150, Radius: 80}}
			p.Stops = []plan.Stop{{Angle: 0}, {Angle: 36, BothSides: true}, {Angle: 71.5, Catches: []string{"A", "B"}}}
			pl := plate.New(p)
			for _, s := range pl.Stops {
				balls := pl.Balls(s.Angle)
				for _, c := range s.Catches {
					assert.InDelta(t, 0, balls[c].Offset, ballSlack, "%s %s stop %v catch %d", in, turn, s.Angle, c)
					assert.True(t, balls[c].Served && balls[c].Over(p.Seat.Mouth()))
				}
			}
		}
	}
}

func TestBallsBetweenStops(t *testing.T) {
	p := plan.Default()
	p.Stops = []plan.Stop{{Angle: 10}}
	b := plate.New(p).Balls(30)[0]
	assert.InDelta(t, geom.Chord(105, 20), b.Offset, ballSlack)
	assert.False(t, b.Over(p.Seat.Mouth()))
	assert.False(t, b.Served)

	p.Stops = nil
	b = plate.New(p).Balls(30)[0]
	assert.Equal(t, -1, b.Seat)
	assert.True(t, math.IsInf(b.Offset, 1))
}

// A ball of one catch over a seat cut for another clicks where nobody wants it.
func TestBallOverAnothersSeatIsNotServed(t *testing.T) {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "A", Radius: 105}, {Name: "B", Azimuth: 90, Radius: 105}}
	p.Stops = []plan.Stop{{Angle: 40, Catches: []string{"A"}}}
	b := plate.New(p).Balls(-50)[1] // B stands where A stands at 40
	assert.InDelta(t, 0, b.Offset, ballSlack)
	assert.True(t, b.Over(p.Seat.Mouth()))
	assert.False(t, b.Served)
}

func TestBallsFindTheNearestSeat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plan.Default()
		p.Catches = nil
		for i := range rapid.IntRange(1, 4).Draw(t, "catches") {
			p.Catches = append(p.Catches, plan.Placement{
				Name:    string(rune('A' + i)),
				Azimuth: rapid.Float64Range(-180, 180).Draw(t, "azimuth"), Radius: rapid.Float64Range(20, 120).Draw(t, "radius"),
			})
		}
		for range rapid.IntRange(0, 20).Draw(t, "stops") {
			c := rapid.SampledFrom(p.Catches).Draw(t, "catch")
			p.Stops = append(p.Stops, plan.Stop{Angle: rapid.Float64Range(-180, 180).Draw(t, "angle"), Catches: []string{c.Name}})
		}
		pl := plate.New(p)
		for _, b := range pl.Balls(geom.Angle(rapid.Float64Range(-180, 180).Draw(t, "turn"))) {
			least := math.Inf(1)
			for _, s := range pl.Seats {
				least = math.Min(least, s.Centre.Distance(b.Centre))
			}
			if len(pl.Seats) > 0 {
				assert.InDelta(t, least, b.Offset, ballSlack)
			}
		}
	})
}
