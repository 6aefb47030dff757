package ball_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
)

const (
	// quadrature is by how much the trapezium rule over 20,000 steps may miss
	// the energy, as a part of the largest torque times the turn: half a step
	// for each of at most six jumps of the angle.
	quadrature = 6.0 / 20000
	// steep is the contact angle beyond which the torque rises too fast for
	// steps of that size, degrees.
	steep geom.Angle = 80
	// relative is what is left of a number after a few dozen roundings, and
	// after a peak is found to where the force is level.
	relative = 1e-9
)

// drawClick draws a setup that clicks without a contact too steep to integrate.
func drawClick(t *rapid.T, change func(*ball.Setup)) (ball.Setup, *ball.Click) {
	s := drawSetup(t)
	change(&s)
	k, err := ball.NewClick(s)
	require.NoError(t, err)
	if k.State() != ball.Clicks {
		t.Skip("does not click")
	}
	return s, k
}

func TestTorqueIntegratesToTheSpringsEnergy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, k := drawClick(t, func(s *ball.Setup) { s.Friction = 0 })
		mouth := k.Contour().Mouth()
		curve := k.Curve(mouth, 20003)
		var sum, top float64
		for i := range curve[1:] {
			a, b := curve[i], curve[i+1]
			if i >= 2 && k.At(a.Offset).Angle > steep {
				t.Skip("too steep")
			}
			sum += (a.Out + b.Out) / 2 * (b.Turn - a.Turn).Radians()
			top = math.Max(top, b.Out)
		}
		torques, ok := k.Torques()
		require.True(t, ok)
		allowed := quadrature*top*curve[len(curve)-1].Turn.Radians() + rounding/1000
		require.InDelta(t, torques.Energy/1000, sum, allowed, "N·m over radians are joules, and the spring's are mJ")
		require.LessOrEqual(t, top, torques.Holding*(1+relative), "nothing on the way is harder")
		require.InDelta(t, torques.Holding, top, quadrature*torques.Holding*20+rounding, "and the hardest is reached")

		// The spring by itself: its two forces and the way between them.
		home, ok := k.Home()
		require.True(t, ok)
		riding, ok := k.Riding()
		require.True(t, ok)
		if s.FaceGap >= 0 { // else the spring is at its end before the ball is out
			require.InDelta(t, (home.Force+riding.Force)/2*home.Drop, torques.Energy, rounding*(1+torques.Energy))
		}
	})
}

func TestWithoutFrictionOutIsHome(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, k := drawClick(t, func(s *ball.Setup) {
			s.Friction = 0
			s.Spring.Flush++ // a spring without force pulls nothing home
		})
		for _, x := range k.Curve(1.3*k.Contour().Mouth(), 100) {
			require.InEpsilon(t, 1+x.Out, 1+x.Home, relative)
		}
		band, ok := k.DeadBand(0, 0)
		require.True(t, ok)
		home, _ := k.Home()
		require.InDelta(t, home.Play, band.Rests, rounding, "nothing holds it beyond the play")
	})
}

func TestFrictionTakesFromBothWays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, k := drawClick(t, func(*ball.Setup) {})
		phi := math.Atan(s.Friction)
		for _, x := range k.Curve(1.3*k.Contour().Mouth(), 100)[2:] {
			alpha := k.At(x.Offset).Angle.Radians()
			if x.Height > k.At(x.Offset).Height+slackHeight {
				continue // rests on its housing still, to rounding
			}
			f := s.Spring.Force(s.FaceGap + s.BallDiameter/2 - x.Height)
			if alpha+phi < math.Pi/2-0.01 {
				require.InDelta(t, f*math.Tan(alpha+phi)*s.RingRadius/1000, x.Out, 1e-6*(1+math.Abs(x.Out)))
			}
			require.InDelta(t, f*math.Tan(alpha-phi)*s.RingRadius/1000, x.Home, 1e-6*(1+math.Abs(x.Home)))
		}
	})
}

// slackHeight is the slack by which a ball may miss what it rests on, mm.
const slackHeight = 2e-9

// A catch twice as large with the same forces has the same angles, and twice
// the lengths, torques and energy.
func TestTwiceTheSize(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, k := drawClick(t, func(*ball.Setup) {})
		s.BallDiameter *= 2
		s.Seat.Diameter *= 2
		s.Seat.Chamfer *= 2
		s.Seat.Depth *= 2
		s.Seat.Relief *= 2
		s.Spring.Travel *= 2
		s.FaceGap *= 2
		s.RingRadius *= 2
		big, err := ball.NewClick(s)
		require.NoError(t, err)
		require.Equal(t, ball.Clicks, big.State())

		a, _ := k.Torques()
		b, _ := big.Torques()
		require.InDelta(t, 2*a.Holding, b.Holding, relative*(1+b.Holding))
		require.InDelta(t, 2*a.Centring, b.Centring, relative*(1+math.Abs(b.Centring)))
		require.InDelta(t, 2*a.Energy, b.Energy, relative*(1+b.Energy))
		require.InDelta(t, k.Capture().Degrees(), big.Capture().Degrees(), rounding)
		ha, _ := k.Home()
		hb, _ := big.Home()
		require.InDelta(t, 2*ha.Play, hb.Play, rounding)
		require.InDelta(t, ha.Angle.Degrees(), hb.Angle.Degrees(), 1e-6)
		da, _ := k.DeadBand(0.1*k.Contour().Mouth(), a.Centring/10)
		db, _ := big.DeadBand(0.1*big.Contour().Mouth(), a.Centring/5)
		require.InDelta(t, 2*da.Rests, db.Rests, 1e-6)
	})
}

func TestNoResultIsNotANumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		k, err := ball.NewClick(s)
		require.NoError(t, err)
		home, _ := k.Home()
		torques, _ := k.Torques()
		riding, _ := k.Riding()
		gauge, _ := k.Contour().Gauge()
		clearance, _ := k.Contour().FloorClearance()
		miss := s.Seat.Mouth() * rapid.Float64Range(0, 1.1).Draw(t, "miss")
		band, _ := k.DeadBand(miss, rapid.Float64Range(0, 5).Draw(t, "drag"))
		all := []float64{
			home.Height, home.Drop, home.Short, home.Play, home.PlayAngle.Degrees(), home.Angle.Degrees(), home.Force,
			torques.Holding, torques.HoldingAt, torques.Centring, torques.Energy, riding.Force, riding.Torque,
			gauge, clearance, band.Rests, band.RestsAngle.Degrees(), band.Pulls, band.PullsAngle.Degrees(), k.Capture().Degrees(),
		}
		for _, x := range k.Curve(1.2*s.Seat.Mouth(), 50) {
			all = append(all, x.Turn.Degrees(), x.Offset, x.Height, x.Out, x.Home)
		}
		for offset := 0.0; offset < 2*s.BallDiameter; offset += s.BallDiameter / 20 {
			x := k.At(offset)
			all = append(all, x.Height, x.Angle.Degrees(), x.Radius, x.Depth)
		}
		for i, x := range all {
			require.False(t, math.IsNaN(x) || math.IsInf(x, 0), "number %d is %g", i, x)
		}
	})
}

func TestLimits(t *testing.T) {
	with := func(change func(*ball.Setup)) *ball.Click {
		s := example()
		s.Spring.Travel = 3.2 // out to its equator through the gap: reaches any rim
		change(&s)
		return click(t, s)
	}
	holding := func(k *ball.Click) float64 {
		t.Helper()
		torques, ok := k.Torques()
		require.True(t, ok)
		return torques.Holding
	}

	pinprick := with(func(s *ball.Setup) { s.Seat, s.Friction = ball.Seat{Diameter: 0.01}, 0 })
	assert.Less(t, holding(pinprick), 0.005, "a pinprick holds nothing")

	scratch := with(func(s *ball.Setup) { s.Seat = ball.Seat{Diameter: 4.5, Depth: 1e-20, DrillPoint: 180} })
	riding, ok := scratch.Riding()
	require.True(t, ok)
	assert.InDelta(t, riding.Torque, holding(scratch), rounding, "a seat without depth holds as the face does")

	last := 0.0
	for _, mouth := range []float64{5, 5.9, 5.99, 5.9999, 5.999999} {
		h := holding(with(func(s *ball.Setup) { s.Seat, s.Friction = ball.Seat{Diameter: mouth}, 0 }))
		assert.Greater(t, h, 2*last, "without end towards the ball's size")
		last = h
	}

	some := holding(with(func(s *ball.Setup) { s.Friction = 0 }))
	for _, friction := range []float64{1e-3, 1e-6, 1e-9} {
		h := holding(with(func(s *ball.Setup) { s.Friction = friction }))
		assert.InEpsilon(t, some, h, 5*friction, "friction adds no more than its own order")
	}
}

func TestCurve(t *testing.T) {
	s := example()
	s.Spring.Travel = 1 // leaves 0.2104 mm of play
	k := click(t, s)
	home, _ := k.Home()
	curve := k.Curve(5, 5)
	require.Len(t, curve, 5)
	assert.Equal(t, ball.Sample{Height: 2.2}, curve[0])
	assert.Equal(t, ball.Sample{Turn: home.PlayAngle, Offset: home.Play, Height: 2.2}, curve[1])
	assert.Equal(t, home.Play, curve[2].Offset)
	assert.InDelta(t, (5+home.Play)/2, curve[3].Offset, rounding)
	assert.InDelta(t, 5, curve[4].Offset, rounding)
	assert.InDelta(t, 5.0/105*180/math.Pi, curve[4].Turn.Degrees(), rounding, "the arc on the ring")
	for _, x := range curve[2:] {
		e, ok := k.Effort(-x.Offset)
		require.True(t, ok)
		assert.Equal(t, e, x.Effort, "at %g mm to the other side", x.Offset)
	}
	inside, ok := k.Effort(home.Play / 2)
	require.True(t, ok)
	assert.Zero(t, inside, "free within the play")
	riding, _ := k.Riding()
	assert.InDelta(t, riding.Torque, curve[4].Out, rounding)
	assert.InDelta(t, -riding.Torque, curve[4].Home, rounding, "on the face it takes a push either way")

	assert.Nil(t, k.Curve(5, 3), "too few")
	assert.Nil(t, k.Curve(home.Play, 10), "no further than the play")

	s = example()
	s.Seat = ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90}
	s.Friction = 1
	locked := click(t, s).Curve(2.3, 10)
	require.Len(t, locked, 10)
	assert.True(t, locked[2].Locked)
	assert.Zero(t, locked[2].Out)
	assert.False(t, locked[9].Locked, "on the face it rides")
	assert.Positive(t, locked[9].Out)
}
