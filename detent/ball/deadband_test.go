package ball_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/ball"
)

// slides works out, from vectors and with a sampled seat, whether a ball at t
// along a track that misses the seat's axis by miss slides home when it is let
// go, against drag (N at the ring).
func slides(s ball.Setup, t, miss, drag float64) bool {
	r := s.BallDiameter / 2
	offset := math.Hypot(t, miss)
	height, rho := lower(s.BallDiameter, s.Seat, offset)
	limit := r - s.Spring.Travel + s.FaceGap
	if height < limit || offset == 0 {
		return false // hangs in its housing, or lies at the bottom
	}
	sin := (rho - offset) / r
	cos := math.Sqrt(1 - sin*sin)
	type vector [3]float64                                         // along the track, across it, up
	normal := vector{-sin * t / offset, -sin * miss / offset, cos} // from the contact to the centre

	// Sliding home the centre goes along the track and down the slope, never
	// across: its housing keeps it on the track.
	slide := vector{-1, 0, normal[0] / normal[2]}
	length := math.Hypot(slide[0], slide[2])
	rub := vector{-s.Friction * slide[0] / length, 0, -s.Friction * slide[2] / length}

	spring := s.Spring.Force(s.FaceGap + r - height)
	push := spring / (normal[2] + rub[2]) // so that what is up balances the spring
	return -push*(normal[0]+rub[0]) > drag
}

// settle pushes the ball home in small steps from the mouth until it slides by
// itself, and then follows it until it stops.
func settle(s ball.Setup, miss, drag, step float64) (pulls, rests float64) {
	t := math.Sqrt(s.Seat.Mouth()*s.Seat.Mouth() - miss*miss)
	for ; t > 0 && !slides(s, t, miss, drag); t -= step {
	}
	pulls = max(t, 0)
	for ; t > 0 && slides(s, t, miss, drag); t -= step {
	}
	return pulls, max(t, 0)
}

func TestDeadBandAgainstSmallSteps(t *testing.T) {
	cone := ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90}
	for name, c := range map[string]struct {
		change     func(*ball.Setup)
		miss, drag float64 // mm, N·m
	}{
		"a hole missed by 0.35":             {func(*ball.Setup) {}, 0.35, 0},
		"with a heavy table":                {func(*ball.Setup) {}, 0.35, 0.5},
		"barely missed":                     {func(*ball.Setup) {}, 0.01, 0.2},
		"not missed at all":                 {func(*ball.Setup) {}, 0, 0.2},
		"missed by half the mouth":          {func(*ball.Setup) {}, 1.1, 0.1},
		"a cone":                            {func(s *ball.Setup) { s.Seat = cone }, 0.35, 0.1},
		"a cone, much friction":             {func(s *ball.Setup) { s.Seat, s.Friction = cone, 0.7 }, 0.35, 0.1},
		"a chamfered hole":                  {func(s *ball.Setup) { s.Seat.Chamfer = 0.4 }, 0.35, 0.1},
		"a flat floor, missed within play":  {func(s *ball.Setup) { s.Seat = ball.Seat{Diameter: 4.5, Depth: 0.5, DrillPoint: 180} }, 0.2, 0.05},
		"a flat floor, missed by more":      {func(s *ball.Setup) { s.Seat = ball.Seat{Diameter: 4.5, Depth: 0.5, DrillPoint: 180} }, 0.7, 0.05},
		"a ball short of the rim":           {func(s *ball.Setup) { s.Spring.Travel = 1 }, 0.3, 0.1},
		"drag that nothing overcomes":       {func(*ball.Setup) {}, 0.35, 40},
		"a drill's point under the ball":    {func(s *ball.Setup) { s.Seat = ball.Seat{Diameter: 4.5, Depth: 0.1, DrillPoint: 118} }, 0.3, 0.1},
		"friction that holds it everywhere": {func(s *ball.Setup) { s.Seat.Diameter, s.Friction = 1, 0.3 }, 0.1, 0},
	} {
		t.Run(name, func(t *testing.T) {
			s := example()
			s.Seat.Relief = 0
			c.change(&s)
			againstSmallSteps(t, s, c.miss, c.drag)
		})
	}
}

func TestDeadBandAgainstSmallStepsForAnySeat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, k := drawClick(t, func(s *ball.Setup) { s.Friction = math.Min(s.Friction, 0.5) })
		for part := 0.0; part < 1; part += 0.01 {
			if k.At(part*s.Seat.Mouth()).Angle > steep {
				t.Skip("too steep for a sampled seat")
			}
		}
		riding, _ := k.Riding()
		miss := s.Seat.Mouth() * rapid.Float64Range(0.02, 0.5).Draw(t, "miss")
		drag := riding.Force * s.RingRadius / 1000 * rapid.Float64Range(0, 0.2).Draw(t, "drag")
		againstSmallSteps(t, s, miss, drag)
	})
}

// tester is a test, plain or of random values.
type tester interface {
	require.TestingT
	Helper()
}

func againstSmallSteps(t tester, s ball.Setup, miss, drag float64) {
	t.Helper()
	k, err := ball.NewClick(s)
	require.NoError(t, err)
	band, ok := k.DeadBand(miss, drag)
	require.True(t, ok)

	step := s.Seat.Mouth() / 500
	pulls, rests := settle(s, miss, drag/(s.RingRadius/1000), step)
	if pulls == 0 { // nowhere does it slide, or over less than a step
		require.LessOrEqual(t, band.Pulls-band.Rests, step)
		return
	}
	require.InDelta(t, pulls, band.Pulls, 1.001*step)
	if rests > step && math.Abs(rests-band.Rests) > 1.001*step {
		// It may have been caught further out than where the unbroken band ends.
		require.Greater(t, rests, band.Rests)
		require.False(t, slides(s, rests, miss, drag/(s.RingRadius/1000)))
		return
	}
	require.InDelta(t, rests, band.Rests, 2.001*step)
}

func TestDeadBandByHand(t *testing.T) {
	s := example()
	k := click(t, s)
	home, _ := k.Home()
	torques, _ := k.Torques()

	band, ok := k.DeadBand(0, 0.99*torques.Centring)
	require.True(t, ok)
	assert.Zero(t, band.Rests, "not missed, and centring overcomes the drag")
	band, ok = k.DeadBand(0, 1.01*torques.Centring)
	require.True(t, ok)
	assert.InDelta(t, 2.25, band.Rests, rounding, "it does not: the ball rests anywhere in the mouth")
	assert.Zero(t, band.Pulls)

	// On a cone without drag the ball slides where p·cos α = µ/√(1+p²).
	s.Seat = ball.Seat{Form: ball.Countersunk, Diameter: 5, Countersink: 90}
	k = click(t, s)
	band, ok = k.DeadBand(0.3, 0)
	require.True(t, ok)
	p := band.Rests / math.Hypot(band.Rests, 0.3) // tan 45° is 1
	assert.InDelta(t, 0.2, p*math.Sqrt(1+p*p)/math.Sqrt2, rounding)
	assert.InDelta(t, band.Rests/105*180/math.Pi, band.RestsAngle.Degrees(), rounding)
	assert.InDelta(t, band.Pulls/105*180/math.Pi, band.PullsAngle.Degrees(), rounding)

	mirrored, ok := k.DeadBand(-0.3, 0)
	require.True(t, ok)
	assert.Equal(t, band, mirrored, "either side")
	_, ok = k.DeadBand(2.5, 0)
	assert.False(t, ok, "the track misses the mouth")

	// Near the lip the slope is less than friction: a ball let go there stays.
	s = example()
	k = click(t, s)
	band, ok = k.DeadBand(0, 0)
	require.True(t, ok)
	assert.InDelta(t, 2.25-3*math.Sin(math.Atan(0.2)), band.Pulls, rounding, "tan α = µ there")

	s.Spring.Travel = 1
	k = click(t, s)
	home, _ = k.Home()
	band, ok = k.DeadBand(0, 0)
	require.True(t, ok)
	assert.InDelta(t, home.Play, band.Rests, rounding, "the play is part of it")
	band, ok = k.DeadBand(0.1, 0)
	require.True(t, ok)
	assert.InDelta(t, math.Sqrt(home.Play*home.Play-0.01), band.Rests, rounding, "beyond it the rim is too steep to rest on")
}

func TestDeadBandGrowsWithMissAndDrag(t *testing.T) {
	k := click(t, example())
	for name, missAndDrag := range map[string]func(part float64) (float64, float64){
		"miss, mm":  func(part float64) (float64, float64) { return 0.7 * part, 0.1 },
		"drag, N·m": func(part float64) (float64, float64) { return 0.3, 0.5 * part },
	} {
		last := -1.0
		for part := 0.0; part <= 1; part += 0.0625 {
			miss, drag := missAndDrag(part)
			band, ok := k.DeadBand(miss, drag)
			require.True(t, ok)
			require.Positive(t, band.Pulls, "it still comes home")
			require.Greater(t, band.Rests, last, "%s: part %g", name, part)
			require.Less(t, band.Rests, band.Pulls)
			last = band.Rests
		}
	}
}
