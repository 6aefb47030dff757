package ball_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/ball"
)

// example is a common press-in catch over a 4.5 mm hole, with numbers that a
// calculator checks.
func example() ball.Setup {
	return ball.Setup{
		BallDiameter: 6,
		Seat:         ball.Seat{Diameter: 4.5, Depth: 6, DrillPoint: 118, Relief: 2.5},
		Spring:       ball.Spring{Free: 8, Flush: 20, Travel: 2},
		FaceGap:      0.2,
		RingRadius:   105,
		Friction:     0.2,
	}
}

func click(t *testing.T, s ball.Setup) *ball.Click {
	t.Helper()
	c, err := ball.NewClick(s)
	require.NoError(t, err)
	return c
}

// The expected values were worked out apart from this package, from the right
// triangle at the rim and the straight line of the spring, the holding torque by
// trying 200,000 offsets.
func TestClickOnARim(t *testing.T) {
	type values struct {
		drop, short, play, playAngle, angle, seated, riding float64
		holding, holdingAt, centring, energy, ridingTorque  float64
	}
	const (
		places    = 5e-7 // half the last place of the values below
		holdingAt = 2e-5 // mm: the spacing of the offsets tried
	)
	for name, c := range map[string]struct {
		change func(*ball.Setup)
		rest   ball.Rest
		want   values
	}{
		"home on the rim": {
			func(*ball.Setup) {}, ball.Rim,
			values{1.0156865, 0, 0, 0, 48.5903779, 12.7058809, 18.8, 2.3015022, 0, 1.0156058, 16.0000492, 0.3948},
		},
		"held 0.2157 mm short by the housing; the force out peaks on the way": {
			func(s *ball.Setup) { s.Spring.Travel = 1 }, ball.Housing,
			values{0.8, 0.2156865, 0.2103922, 0.1148056, 42.8334281, 8, 17.6, 1.2208584, 0.4738585, 0.5152266, 10.24, 0.3696},
		},
		"a gap of 1.8 leaves 0.2 mm of drop": {
			func(s *ball.Setup) { s.FaceGap = 1.8 }, ball.Housing,
			values{0.2, 0.8156865, 1.1729670, 0.6400577, 21.0394698, 8, 9.2, 0.5320402, 1.1729670, 0.1440296, 1.72, 0.1932},
		},
		"no preload and a stiff spring": {
			func(s *ball.Setup) { s.Spring = ball.Spring{Flush: 60, Travel: 2} }, ball.Rim,
			values{1.0156865, 0, 0, 0, 48.5903779, 23.5294045, 54, 4.3604190, 0.1817212, 1.8807511, 39.3727854, 1.134},
		},
	} {
		t.Run(name, func(t *testing.T) {
			s := example()
			c.change(&s)
			k := click(t, s)
			require.Equal(t, ball.Clicks.String(), k.State().String())
			home, ok := k.Home()
			require.True(t, ok)
			torques, ok := k.Torques()
			require.True(t, ok)
			riding, ok := k.Riding()
			require.True(t, ok)

			assert.Equal(t, c.rest.String(), home.Rest.String())
			assert.InDelta(t, c.want.drop, home.Drop, places)
			assert.InDelta(t, 3-c.want.drop, home.Height, places)
			assert.InDelta(t, c.want.short, home.Short, places)
			assert.InDelta(t, c.want.play, home.Play, places)
			assert.InDelta(t, c.want.playAngle, home.PlayAngle.Degrees(), places)
			assert.InDelta(t, c.want.angle, home.Angle.Degrees(), places)
			assert.InDelta(t, c.want.seated, home.Force, places)
			assert.InDelta(t, c.want.riding, riding.Force, places)
			assert.InDelta(t, c.want.ridingTorque, riding.Torque, places)
			assert.InDelta(t, c.want.holding, torques.Holding, places)
			assert.InDelta(t, c.want.holdingAt, torques.HoldingAt, holdingAt)
			assert.InDelta(t, c.want.centring, torques.Centring, places)
			assert.InDelta(t, c.want.energy, torques.Energy, places)
			assert.InDelta(t, 1.2277902, k.Capture().Degrees(), places, "2·asin(2.25/210)")

			lifting, ok := k.Effort(home.Play)
			require.True(t, ok)
			assert.InDelta(t, torques.Centring, lifting.Home, rounding)
			peak, ok := k.Effort(torques.HoldingAt)
			require.True(t, ok)
			assert.InDelta(t, torques.Holding, peak.Out, rounding)
		})
	}
}

func TestPlayOnAFlatFloor(t *testing.T) {
	s := example()
	s.Seat = ball.Seat{Diameter: 4.5, Depth: 0.8, DrillPoint: 180}
	home, ok := click(t, s).Home()
	require.True(t, ok)
	assert.Equal(t, ball.Floor, home.Rest)
	assert.Zero(t, home.Short)
	assert.InDelta(t, 0.8, home.Drop, rounding)
	assert.InDelta(t, 2.25-math.Sqrt(9-2.2*2.2), home.Play, rounding, "until the rim is 3 mm from the centre")
	assert.InDelta(t, math.Acos(2.2/3)*180/math.Pi, home.Angle.Degrees(), rounding, "against the rim")
}

func TestACentringConeHasNoPlay(t *testing.T) {
	for name, seat := range map[string]ball.Seat{
		"countersink":                  {Form: ball.Countersunk, Diameter: 4.5, Countersink: 90},
		"the drill's point":            {Diameter: 4.5, Depth: 0.1, DrillPoint: 118},
		"the relief's edge in a floor": {Diameter: 4.5, Depth: 0.7, DrillPoint: 180, Relief: 2.5},
	} {
		s := example()
		s.Seat = seat
		home, ok := click(t, s).Home()
		require.True(t, ok, name)
		assert.Zero(t, home.Play, name)
	}
}

func TestStates(t *testing.T) {
	const just = 1e-6 // mm, or of friction: a thousand times the slack for rounding
	for name, c := range map[string]struct {
		change func(*ball.Setup)
		state  ball.State
	}{
		"gap equal to the protrusion": {func(s *ball.Setup) { s.FaceGap = 2 }, ball.CannotReach},
		"equal but for rounding":      {func(s *ball.Setup) { s.Spring.Travel, s.FaceGap = 0.1+0.2, 0.3 }, ball.CannotReach},
		"just less":                   {func(s *ball.Setup) { s.FaceGap = 2 - just }, ball.Clicks},
		"out of reach counts before all else": {
			func(s *ball.Setup) { s.FaceGap, s.Seat.Diameter = 3, 8 }, ball.CannotReach,
		},
		"mouth as wide as the ball": {func(s *ball.Setup) { s.Seat = ball.Seat{Diameter: 6} }, ball.FallsIn},
		"a mouth of 0.99 of the ball locks a ball that gets to its rim": {
			func(s *ball.Setup) { s.Seat, s.Spring.Travel = ball.Seat{Diameter: 5.94}, 2.9 }, ball.Locks,
		},
		"but not one that its housing holds where the angle is less": {
			func(s *ball.Setup) { s.Seat = ball.Seat{Diameter: 5.94} }, ball.Clicks,
		},
		"a floor that keeps the ball where the angle is less": {
			func(s *ball.Setup) { s.Seat = ball.Seat{Diameter: 5.94, Depth: 1, DrillPoint: 180} }, ball.Clicks,
		},
		"without friction it does not lock": {
			func(s *ball.Setup) { s.Seat, s.Spring.Travel, s.Friction = ball.Seat{Diameter: 5.94}, 2.9, 0 }, ball.Clicks,
		},
		"a 45° cone with a friction of 1 locks": {
			func(s *ball.Setup) {
				s.Seat, s.Friction = ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90}, 1
			}, ball.Locks,
		},
		"with just less friction it does not": {
			func(s *ball.Setup) {
				s.Seat, s.Friction = ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90}, 1-just
			}, ball.Clicks,
		},
		"home on a flat cone, but a steep rim on the way locks": {
			func(s *ball.Setup) {
				s.Seat, s.Spring.Travel = ball.Seat{Diameter: 5.96, Depth: 1.5, DrillPoint: 170}, 2.9
				s.Friction = 0.6
			}, ball.Locks,
		},
	} {
		t.Run(name, func(t *testing.T) {
			s := example()
			c.change(&s)
			k := click(t, s)
			assert.Equal(t, c.state.String(), k.State().String())

			_, hasTorques := k.Torques()
			assert.Equal(t, c.state == ball.Clicks, hasTorques)
			_, hasBand := k.DeadBand(0.1, 0)
			assert.Equal(t, c.state == ball.Clicks, hasBand)
			_, hasHome := k.Home()
			assert.Equal(t, c.state == ball.Clicks || c.state == ball.Locks, hasHome)
			_, hasEffort := k.Effort(0)
			assert.Equal(t, hasHome, hasEffort)
			assert.Equal(t, hasHome, k.Curve(5, 10) != nil)
			_, rides := k.Riding()
			assert.Equal(t, c.state != ball.CannotReach, rides)
		})
	}
}

// As drawn, the ball is wherever seat, face and housing hold it.
func TestWhereTheBallIsDrawn(t *testing.T) {
	s := example()
	for name, c := range map[string]struct {
		change func(*ball.Setup)
		offset float64
		want   ball.Contact
	}{
		"on the face": {func(*ball.Setup) {}, -4, ball.Contact{Rest: ball.Face, Height: 3, Radius: 4}},
		"hanging in its housing inside the play": {
			func(s *ball.Setup) { s.Spring.Travel = 1 }, 0.1,
			ball.Contact{Rest: ball.Housing, Height: 2.2, Radius: 0.1, Depth: 0.8},
		},
		"hanging over a hole that swallows it": {
			func(s *ball.Setup) { s.Seat = ball.Seat{Diameter: 7} }, 0.1,
			ball.Contact{Rest: ball.Housing, Height: 1.2, Radius: 0.1, Depth: 1.8},
		},
		"clear of a face it cannot reach": {
			func(s *ball.Setup) { s.FaceGap = 2.5 }, 9,
			ball.Contact{Rest: ball.Housing, Height: 3.5, Radius: 9, Depth: -0.5},
		},
	} {
		set := s
		c.change(&set)
		got := click(t, set).At(c.offset)
		assert.Equal(t, c.want.Rest.String(), got.Rest.String(), name)
		for _, pair := range [][2]float64{{c.want.Height, got.Height}, {c.want.Radius, got.Radius}, {c.want.Depth, got.Depth}, {c.want.Angle.Degrees(), got.Angle.Degrees()}} {
			assert.InDelta(t, pair[0], pair[1], rounding, name)
		}
	}
	k := click(t, s)
	seat, ok := k.Contour().At(1)
	require.True(t, ok)
	assert.Equal(t, seat, k.At(1), "where the seat holds the ball, it is drawn on the seat")
	assert.Equal(t, 2.25, k.Contour().Mouth())
}

func TestCaptureOfASeatWiderThanTheRing(t *testing.T) {
	s := example()
	s.RingRadius = 1
	assert.InDelta(t, 180, click(t, s).Capture().Degrees(), rounding, "the ball is always over it")
}

func TestNames(t *testing.T) {
	for want, got := range map[string]string{
		"nothing": ball.Nothing.String(), "point": ball.Point.String(), "housing": ball.Housing.String(),
		"clicks": ball.Clicks.String(), "locks": ball.Locks.String(),
	} {
		assert.Equal(t, want, got)
	}
	assert.Equal(t, "unknown", ball.Rest(99).String())
	assert.Equal(t, "unknown", ball.State(-1).String())
}

func TestWhatIsOutOfRangeIsNamed(t *testing.T) {
	_, err := ball.NewClick(ball.Setup{
		BallDiameter: math.NaN(),
		Spring:       ball.Spring{Free: -1, Flush: math.Inf(1), Travel: 0},
		FaceGap:      math.Inf(-1),
		RingRadius:   -5,
		Friction:     11,
	})
	for _, text := range []string{
		"ball diameter is NaN, must be 0.001 to 100000 mm", "free force is -1, must be 0 to 1e+06 N", "flush force is +Inf",
		"protrusion is 0", "face gap is -Inf", "ring radius is -5", "friction is 11, must be 0 to 10",
	} {
		assert.ErrorContains(t, err, text)
	}
	for want, seat := range map[string]ball.Seat{
		"seat diameter is 0":                                             {},
		"chamfer is -1":                                                  {Diameter: 1, Chamfer: -1},
		"seat depth is -1":                                               {Diameter: 1, Depth: -1},
		"relief diameter is NaN":                                         {Diameter: 1, Relief: math.NaN()},
		"drill point is 181, must be 1 to 180 degrees":                   {Diameter: 1, Depth: 1, DrillPoint: 181},
		"countersink angle is 180, must be 1 to 179 degrees":             {Form: ball.Countersunk, Diameter: 1, Countersink: 180},
		"seat form 2 is unknown, must be 0 (drilled) or 1 (countersunk)": {Form: 2, Diameter: 1},
	} {
		_, err := ball.NewContour(6, seat)
		assert.ErrorContains(t, err, want)
	}
}
