package ball_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
)

const (
	sixDigits  = 5e-7 // mm: half the last place of a value given to six places
	fourDigits = 5e-5 // degrees: half the last place of a value given to four
	rounding   = 1e-9 // mm, degrees: far above rounding, far below any measurement
)

func contour(t *testing.T, ballDiameter float64, s ball.Seat) *ball.Contour {
	t.Helper()
	c, err := ball.NewContour(ballDiameter, s)
	require.NoError(t, err)
	return c
}

func at(t *testing.T, c *ball.Contour, offset float64) ball.Contact {
	t.Helper()
	x, ok := c.At(offset)
	require.True(t, ok, "the ball touches something at %g mm", offset)
	return x
}

// Six pairs worked from the right triangle of centre, rim and axis; the first
// two are 3-4-5 triangles.
func TestBallOnAHole(t *testing.T) {
	for _, c := range []struct{ ball, hole, height, enters, angle float64 }{
		{10, 8, 3, 2, 53.1301},
		{10, 6, 4, 1, 36.8699},
		{8, 6, 2.645751, 1.354249, 48.5904},
		{6, 5, 1.658312, 1.341688, 56.4427},
		{6.35, 5, 1.957198, 1.217802, 51.9433},
		{4.7625, 4, 1.292421, 1.088829, 57.1290},
	} {
		hole := contour(t, c.ball, ball.Seat{Diameter: c.hole})
		home := at(t, hole, 0)
		assert.Equal(t, ball.Rim, home.Rest)
		assert.InDelta(t, c.height, home.Height, sixDigits)
		assert.InDelta(t, c.enters, c.ball/2-home.Height, sixDigits)
		assert.InDelta(t, c.angle, home.Angle.Degrees(), fourDigits)
		assert.InDelta(t, c.hole/2, home.Radius, rounding)
		assert.InDelta(t, 0, home.Depth, rounding)

		reading, ok := hole.Gauge()
		require.True(t, ok)
		assert.InDelta(t, c.height+c.ball/2, reading, sixDigits)
		above := reading - c.ball/2 // of the centre over the face: the triangle gives the hole again
		assert.InDelta(t, c.hole, 2*math.Sqrt(c.ball*c.ball/4-above*above), rounding)
	}
}

func TestNoGaugeWhereTheBallFallsIn(t *testing.T) {
	_, ok := contour(t, 6, ball.Seat{Diameter: 6.2}).Gauge()
	assert.False(t, ok, "the ball falls through")
}

// What a 6 mm ball rests on, each worked by hand from the right triangle at the
// contact.
func TestWhatTheBallRestsOn(t *testing.T) {
	for name, c := range map[string]struct {
		seat          ball.Seat
		offset        float64
		rest          ball.Rest
		height, angle float64
	}{
		"through hole": {ball.Seat{Diameter: 4.5}, 0, ball.Rim, 1.9843135, 48.5904},
		"on the face":  {ball.Seat{Diameter: 4.5}, 2.25, ball.Face, 3, 0},
		"90° cone: the ball's circle (4.243) is inside a 4.5 mouth, 3/sin 45 - 2.25": {
			ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90}, 0, ball.Cone, 1.9926407, 45,
		},
		"90° cone with a mouth below the ball's circle": {
			ball.Seat{Form: ball.Countersunk, Diameter: 4.2, Countersink: 90}, 0, ball.Rim, 2.1424285, 44.4270,
		},
		"60° cone, 3/sin 30 - 2.9/tan 30": {
			ball.Seat{Form: ball.Countersunk, Diameter: 5.8, Countersink: 60}, 0, ball.Cone, 0.9770527, 60,
		},
		"flat floor 0.8 mm down holds the centre at 3 - 0.8": {
			ball.Seat{Diameter: 4.5, Depth: 0.8, DrillPoint: 180}, 0, ball.Floor, 2.2, 0,
		},
		"on that floor, against the rim at 2.25 - √(9 - 2.2²)": {
			ball.Seat{Diameter: 4.5, Depth: 0.8, DrillPoint: 180}, 0.3, ball.Rim, 2.2798026, 40.5416,
		},
		"118° point at 0.1 mm: -0.1 - 2.25/tan 59 + 3/sin 59": {
			ball.Seat{Diameter: 4.5, Depth: 0.1, DrillPoint: 118}, 0, ball.Point, 2.0479638, 31,
		},
		"relief of 2.5 in a floor at 0.7: √(9 - 1.25²) - 0.7": {
			ball.Seat{Diameter: 4.5, Depth: 0.7, DrillPoint: 180, Relief: 2.5}, 0, ball.Relief, 2.0271780, 24.6243,
		},
		"chamfer 0.5 on a 4 hole: the 45° cone is touched at 2.121, between 2 and 2.5": {
			ball.Seat{Diameter: 4, Chamfer: 0.5}, 0, ball.Chamfer, 1.7426407, 45,
		},
		"chamfer 0.5 on a 5 hole: its foot is touched, √(9 - 2.5²) - 0.5": {
			ball.Seat{Diameter: 5, Chamfer: 0.5}, 0, ball.Shoulder, 1.1583124, 56.4427,
		},
		"chamfer 0.2 on a 3.6 hole: the rim is touched, √(9 - 2²)": {
			ball.Seat{Diameter: 3.6, Chamfer: 0.2}, 0, ball.Rim, 2.2360680, 41.8103,
		},
		"chamfer 1 on a floor at 0.5 sinks the floor to its foot": {
			ball.Seat{Diameter: 2, Chamfer: 1, Depth: 0.5, DrillPoint: 180}, 0, ball.Rim, 2.2360680, 41.8103,
		},
		"flat nose 0.8 mm down in a cone": {
			ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90, Depth: 0.8}, 0, ball.Floor, 2.2, 0,
		},
		"relief of 4.4 takes the cone away where the ball would touch: √(9 - 2.2²) - 0.05": {
			ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90, Relief: 4.4}, 0, ball.Relief, 1.9896078, 47.1666,
		},
		"a chamfer of 45° cuts a flatter cone away whole: 90° cone of mouth 5": {
			ball.Seat{Form: ball.Countersunk, Diameter: 4, Countersink: 120, Chamfer: 0.5}, 0, ball.Chamfer, 1.7426407, 45,
		},
		"60° cone of 5.6, chamfered 0.05: the cone is still touched at 2.598": {
			ball.Seat{Form: ball.Countersunk, Diameter: 5.6, Countersink: 60, Chamfer: 0.05}, 0, ball.Cone, 1.1502577, 60,
		},
		"60° cone of 5, chamfered 0.1: the edge at 2.6 - 0.1/(1 - tan 30) is touched": {
			ball.Seat{Form: ball.Countersunk, Diameter: 5, Countersink: 60, Chamfer: 0.1}, 0, ball.Shoulder, 1.6111941, 51.9803,
		},
		"a relief as wide as the mouth is the mouth": {
			ball.Seat{Form: ball.Countersunk, Diameter: 4, Countersink: 90, Relief: 4.5}, 0, ball.Rim, 1.9843135, 48.5904,
		},
	} {
		t.Run(name, func(t *testing.T) {
			x := at(t, contour(t, 6, c.seat), c.offset)
			assert.Equal(t, c.rest.String(), x.Rest.String())
			assert.InDelta(t, c.height, x.Height, sixDigits)
			assert.InDelta(t, c.angle, x.Angle.Degrees(), fourDigits)
		})
	}
}

// Where a 6 mm ball passes from one part of a seat to the next, found apart from
// this package by bringing the heights over both together step by step.
func TestFromTheFloorToTheRim(t *testing.T) {
	over := func(edge, height float64) func(float64) float64 {
		return func(x float64) float64 { return height + math.Sqrt(9-(edge-x)*(edge-x)) }
	}
	for name, c := range map[string]struct {
		seat  ball.Seat
		first ball.Rest
		floor func(offset float64) float64
	}{
		"a flat floor": {
			ball.Seat{Diameter: 4.5, Depth: 0.7, DrillPoint: 180},
			ball.Floor,
			func(float64) float64 { return 2.3 },
		},
		"a point of 170°": {
			ball.Seat{Diameter: 4.5, Depth: 0.7, DrillPoint: 170},
			ball.Point,
			func(x float64) float64 {
				sin, cos := math.Sincos(85 * math.Pi / 180)
				return -0.7 - 2.25*cos/sin + 3/sin + x*cos/sin
			},
		},
		"the edge of a relief hole": {
			ball.Seat{Diameter: 4.5, Depth: 0.3, DrillPoint: 180, Relief: 3}, ball.Relief, over(1.5, -0.3),
		},
	} {
		t.Run(name, func(t *testing.T) {
			rim := over(2.25, 0)
			lo, hi := 0.0, 2.25
			for range 60 {
				if x := (lo + hi) / 2; c.floor(x) > rim(x) {
					lo = x
				} else {
					hi = x
				}
			}
			require.Greater(t, lo, 0.05, "the floor holds the ball at home")
			seat := contour(t, 6, c.seat)
			before, after := at(t, seat, lo-rounding), at(t, seat, lo+rounding)
			assert.Equal(t, c.first.String(), before.Rest.String())
			assert.Equal(t, ball.Rim.String(), after.Rest.String())
			assert.InDelta(t, rim(lo), before.Height, 2*rounding)
		})
	}
}

func TestFallsIn(t *testing.T) {
	const reaches = 1e-6 // mm: a thousand times the slack for rounding
	for name, c := range map[string]struct {
		seat  ball.Seat
		falls bool
	}{
		"as wide as the ball":                                     {ball.Seat{Diameter: 6}, true},
		"just narrower":                                           {ball.Seat{Diameter: 6 - reaches}, false},
		"wider, right through":                                    {ball.Seat{Diameter: 6.4}, true},
		"wider, with a deep floor":                                {ball.Seat{Diameter: 6.4, Depth: 8, DrillPoint: 180}, true},
		"wider, with a floor just past the centre":                {ball.Seat{Diameter: 6.4, Depth: 3.01, DrillPoint: 180}, true},
		"wider, with a floor that keeps the centre over the edge": {ball.Seat{Diameter: 6.4, Depth: 2.9, DrillPoint: 180}, false},
		"chamfered to wider than the ball, on a narrower hole":    {ball.Seat{Diameter: 5, Chamfer: 1}, false},
		"chamfered, on a hole as wide as the ball":                {ball.Seat{Diameter: 6, Chamfer: 1}, true},
		"a wide countersink":                                      {ball.Seat{Form: ball.Countersunk, Diameter: 9, Countersink: 90}, false},
		"a wide countersink with a hole as wide as the ball":      {ball.Seat{Form: ball.Countersunk, Diameter: 9, Countersink: 90, Relief: 6}, true},
	} {
		t.Run(name, func(t *testing.T) {
			assert.Equal(t, c.falls, contour(t, 6, c.seat).FallsIn())
		})
	}
	_, ok := contour(t, 6, ball.Seat{Diameter: 6.4}).At(0.1)
	assert.False(t, ok, "nothing is touched")
}

func TestFloorClearance(t *testing.T) {
	for name, c := range map[string]struct {
		seat      ball.Seat
		clearance float64
	}{
		"flat floor: the ball's lowest point is 1.0157 mm down": {ball.Seat{Diameter: 4.5, Depth: 6, DrillPoint: 180}, 4.9843135},
		"shallow flat floor holds it up":                        {ball.Seat{Diameter: 4.5, Depth: 0.8, DrillPoint: 180}, -0.2156865},
		"118° point":                                            {ball.Seat{Diameter: 4.5, Depth: 0.1, DrillPoint: 118}, -0.0636503},
		"edge of a relief hole in the floor":                    {ball.Seat{Diameter: 4.5, Depth: 0.7, DrillPoint: 180, Relief: 2.5}, -0.0428645},
		"flat nose of a countersink":                            {ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90, Depth: 1.5}, 0.4926407},
	} {
		t.Run(name, func(t *testing.T) {
			clearance, ok := contour(t, 6, c.seat).FloorClearance()
			require.True(t, ok)
			assert.InDelta(t, c.clearance, clearance, sixDigits)

			if clearance < 0 {
				c.seat.Depth -= clearance
				freed, ok := contour(t, 6, c.seat).FloorClearance()
				require.True(t, ok)
				assert.InDelta(t, 0, freed, rounding, "that much deeper, the ball just touches")
			}
		})
	}
	for name, s := range map[string]ball.Seat{
		"right through":               {Diameter: 4.5},
		"held by its floor only":      {Diameter: 6.4, Depth: 1, DrillPoint: 180},
		"a cone to its tip":           {Form: ball.Countersunk, Diameter: 4.5, Countersink: 90},
		"a relief as wide as the rim": {Diameter: 4.5, Depth: 3, DrillPoint: 180, Relief: 4.5},
	} {
		_, ok := contour(t, 6, s).FloorClearance()
		assert.False(t, ok, name)
	}
}

// Depth of a point for each millimetre of its diameter, (1/2)·cot(angle/2).
func TestPointLength(t *testing.T) {
	for angle, depth := range map[geom.Angle]float64{
		60: 0.866025, 82: 0.575184, 90: 0.5, 100: 0.419550, 118: 0.300430, 120: 0.288675, 135: 0.207107, 180: 0,
	} {
		assert.InDelta(t, depth, ball.PointLength(1, angle), sixDigits, "%g°", angle.Degrees())
	}
	assert.InDelta(t, 0.031, ball.PointLength(0.104, 118), 5e-4, "0.104 inch, 118°, to a thousandth")
}

func TestBottomAndMouth(t *testing.T) {
	for name, c := range map[string]struct {
		seat   ball.Seat
		bottom float64
		blind  bool
		mouth  float64
	}{
		"drilled through":            {ball.Seat{Diameter: 4.5}, 0, false, 2.25},
		"6 mm and a 118° point":      {ball.Seat{Diameter: 4.5, Depth: 6, DrillPoint: 118}, 7.351936, true, 2.25},
		"6 mm and flat":              {ball.Seat{Diameter: 4.5, Depth: 6, DrillPoint: 180, Chamfer: 0.5}, 6, true, 2.75},
		"countersunk to its tip":     {ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90, Depth: 6}, 2.25, true, 2.25},
		"countersunk with a nose":    {ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90, Depth: 1.5}, 1.5, true, 2.25},
		"countersunk, no depth said": {ball.Seat{Form: ball.Countersunk, Diameter: 4.5, Countersink: 90, Relief: 5}, 2.25, true, 2.5},
	} {
		bottom, blind := c.seat.Bottom()
		assert.Equal(t, c.blind, blind, name)
		assert.InDelta(t, c.bottom, bottom, sixDigits, name)
		assert.InDelta(t, c.mouth, c.seat.Mouth(), rounding, name)
	}
}
