package store_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// turned returns p turned clockwise by deg, by a rotation matrix: the judge of
// the signs in these tests.
func turned(p geom.Point, deg float64) geom.Point {
	s, c := math.Sincos(deg * math.Pi / 180)
	return geom.Point{X: p.X*c + p.Y*s, Y: p.Y*c - p.X*s}
}

// A place of the seats' part comes under a catch's ball when the table is
// turned by what StopAt says. The place is put there by turning the table, for
// both parts and both senses and a second catch of another ring.
func TestStopAtBringsThePlaceUnderTheCatch(t *testing.T) {
	for _, catchIn := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		for _, sense := range []plan.Sense{plan.Clockwise, plan.Counterclockwise} {
			p := plan.Default()
			p.Arrangement = plan.Arrangement{CatchIn: catchIn, PositiveTurn: sense}
			p.Catches = []plan.Placement{{Name: "A", Azimuth: 0, Radius: 105}, {Name: "B", Azimuth: 137, Radius: 60}}
			s := store.New(p)
			for catch, c := range p.Catches {
				for _, want := range []float64{0, 22.5, -37.25, 90, 179, -179, 180} {
					clockwise := want
					if sense == plan.Counterclockwise {
						clockwise = -want
					}
					// The ball where it is with the table at zero, and then after the
					// turn, in the frame of the part that holds the seats.
					ball := turned(geom.Point{Y: c.Radius}, c.Azimuth)
					seat := turned(ball, clockwise) // it went round over the base
					if catchIn == plan.PartBase {
						seat = turned(ball, -clockwise) // the table went round over it
					}
					got := s.StopAt(seat, catch, 0)
					off := math.Mod(got.Degrees()-want+540, 360) - 180
					assert.InDelta(t, 0, off, angleSlack, "catch %s in the %s, %s, %v", c.Name, catchIn, sense, want)
				}
			}
		}
	}
}

// at returns a place on the ring of the default plan's catch.
func at(azimuth float64) geom.Point { return turned(geom.Point{Y: 105}, azimuth) }

func TestStopAtRoundsToAStep(t *testing.T) {
	s := store.New(plan.Default())
	for _, c := range []struct {
		azimuth, step, want float64
		why                 string
	}{
		{22.3, 0.5, 22.5, "to the nearest step"},
		{22.2, 0.5, 22, "to the nearest step"},
		{0.31, 0.1, 0.3, "no rounding of a sum left over"},
		{-0.2, 1, 0, "minus nothing is nothing"},
		{-37.6, 7.5, -37.5, "a step that does not divide a degree"},
		{179.9, 0.5, 180, "half a turn is the positive one"},
		{-179.9, 0.5, 180, "half a turn is the positive one, from the other side too"},
	} {
		got := s.StopAt(at(c.azimuth), 0, c.step).Degrees()
		assert.Equal(t, c.want, got, "%v by %v: %s", c.azimuth, c.step, c.why)
		assert.False(t, math.Signbit(got) && got == 0, "never -0")
	}
}

// The same place can be reached by turns a full turn apart. The one inside the
// travel is meant.
func TestStopAtPrefersTheTravel(t *testing.T) {
	for _, c := range []struct {
		why               string
		from, to, azimuth float64
		want              float64
	}{
		{"inside as it is", -60, 60, 30, 30},
		{"inside after a full turn more", 170, 200, -175, 185},
		{"inside after a full turn less", -300, -200, 150, -210},
		{"at the very end of the travel", 0, 350, -10, 350},
		{"outside either way: as near to 0", -60, 60, 100, 100},
		{"inside both ways: as near to 0", -360, 360, -170, -170},
	} {
		p := plan.Default()
		p.Travel = plan.Span{From: c.from, To: c.to}
		require.NoError(t, plan.Validate(p))
		got := store.New(p).StopAt(at(c.azimuth), 0, 0.5)
		assert.InDelta(t, c.want, got.Degrees(), angleSlack, c.why)
	}
}

func TestTidyTakesOffTheRoundingOfASum(t *testing.T) {
	for in, want := range map[float64]float64{
		0.1 + 0.2: 0.3, 360.0 / 7: 51.428571, -1e-9: 0, 22.5: 22.5,
	} {
		got := store.Tidy(in).Degrees()
		assert.Equal(t, want, got)
		assert.False(t, got == 0 && math.Signbit(got), "never -0")
	}
}
