package ball_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/ball"
)

const (
	// sampled is how much lower than the true ball one lowered on sampled points
	// may stand, mm for each unit of slope: the points of the last pass are 1e-8
	// of a radius apart, and the pass before may have led to one of two points
	// that hold alike to within 1e-4 of that.
	sampled = 2e-6
	// vertical is the slope from which on a wall is too steep to compare by.
	vertical = 50
	// offsetRounding is by how much an offset or a radius may be rounded, mm. A
	// wall makes of it that much times its slope in height.
	offsetRounding = 1e-14
	// step is that of finite differences, mm.
	step = 1e-6
	// stepError is how far a central difference over that step may miss the
	// tangent of the contact angle, for each cubed unit of slope: rounding of
	// the heights is 1e-15/1e-6, and the curve's own bending far less.
	stepError = 1e-7
)

func TestHeightAgainstSampledSeat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.Float64Range(1, 20).Draw(t, "ball")
		s := drawSeat(t, d)
		c, err := ball.NewContour(d, s)
		require.NoError(t, err)
		offset := s.Mouth() * rapid.Float64Range(0, 1.2).Draw(t, "offset")

		height, _ := lower(d, s, offset)
		x, ok := c.At(offset)
		if !ok {
			require.Truef(t, math.IsInf(height, -1), "touches at %g", height)
			require.True(t, c.FallsIn())
			return
		}
		slope := math.Tan(x.Angle.Radians())
		require.LessOrEqual(t, height, x.Height+rounding+slope*offsetRounding, "the ball goes into the material")
		if slope < vertical {
			require.InDelta(t, height, x.Height, sampled*(1+slope), "%v", x.Rest)
		}
	})
}

// The seat's other side and what lies across the track are never in the way:
// the whole face of the seat is sampled, round and across.
func TestNothingOfTheSeatGoesIntoTheBall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.Float64Range(1, 20).Draw(t, "ball")
		s := drawSeat(t, d)
		c, err := ball.NewContour(d, s)
		require.NoError(t, err)
		offset := s.Mouth() * rapid.Float64Range(0, 1.2).Draw(t, "offset")
		x, ok := c.At(offset)
		if !ok {
			return
		}
		r := d / 2
		room := rounding + math.Tan(x.Angle.Radians())*offsetRounding
		rhos := corners(s)
		for k := range 60 {
			rhos = append(rhos, (s.Mouth()+r)*float64(k)/60)
		}
		for _, rho := range rhos {
			h := surface(s, rho)
			for k := range 24 {
				sin, cos := math.Sincos(2 * math.Pi * float64(k) / 24)
				away := math.Hypot(rho*cos-offset, rho*sin)
				if away >= r || math.IsInf(h, -1) {
					continue
				}
				require.LessOrEqual(t, h+math.Sqrt(r*r-away*away), x.Height+room, "the ball goes into the material")
			}
		}
	})
}

func TestAngleIsTheSlopeOfTheHeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.Float64Range(1, 20).Draw(t, "ball")
		s := drawSeat(t, d)
		c, err := ball.NewContour(d, s)
		require.NoError(t, err)
		offset := s.Mouth() * rapid.Float64Range(0.001, 1.2).Draw(t, "offset")
		before, ok1 := c.At(offset - step)
		here, ok2 := c.At(offset)
		after, ok3 := c.At(offset + step)
		if !ok1 || !ok2 || !ok3 || before.Rest != after.Rest {
			return // the angle jumps where the ball passes from one thing to another
		}
		slope := math.Tan(here.Angle.Radians())
		if slope > vertical {
			return
		}
		require.InDelta(t, slope, (after.Height-before.Height)/(2*step), stepError*(1+slope*slope*slope), "%v", here.Rest)
		// The contact lies on the ball.
		r := d / 2
		require.InDelta(t, r, math.Hypot(here.Radius-offset, here.Height+here.Depth), rounding*r)
	})
}

func TestHeightNeverFallsTowardsTheMouth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.Float64Range(1, 20).Draw(t, "ball")
		s := drawSeat(t, d)
		c, err := ball.NewContour(d, s)
		require.NoError(t, err)
		last := math.Inf(-1)
		const looks = 500
		for k := range looks + 1 {
			offset := s.Mouth() * float64(k) / looks
			x, ok := c.At(offset)
			mirrored, ok2 := c.At(-offset)
			require.Equal(t, ok, ok2)
			require.Equal(t, x, mirrored, "alike on both sides")
			if !ok {
				require.True(t, math.IsInf(last, -1), "once touched, always touched")
				continue
			}
			require.GreaterOrEqual(t, x.Height, last-rounding)
			require.GreaterOrEqual(t, x.Angle.Degrees(), 0.0)
			require.LessOrEqual(t, x.Angle.Degrees(), 90.0)
			last = x.Height
		}
		require.InDelta(t, d/2, last, rounding, "on the face the ball touches with its lowest point")
	})
}
