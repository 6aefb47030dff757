package angles

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
)

// printed, in degrees, is half the last digit of the published tables.
const printed = 0.5e-5

// rounding, in degrees, is what a dozen operations in float64 may leave.
const rounding = 1e-12

// published are settings from printed tables for crown moulding cut lying flat:
// the three usual spring angles, in a square corner and round eight sides.
var published = []struct{ spring, corner, mitre, bevel geom.Angle }{
	{38, 90, 31.61901, 33.86291},
	{45, 90, 35.26439, 30.00000},
	{52, 90, 38.23849, 25.80683},
	{38, 135, 14.30638, 17.55124},
	{45, 135, 16.32495, 15.69986},
	{52, 135, 18.07693, 13.62720},
}

func TestMouldingAsPublished(t *testing.T) {
	for _, c := range published {
		mitre, bevel, err := Moulding(c.spring, c.corner)
		require.NoError(t, err)
		assert.InDelta(t, c.mitre.Degrees(), mitre.Degrees(), printed, "mitre at %v in %v", c.spring, c.corner)
		assert.InDelta(t, c.bevel.Degrees(), bevel.Degrees(), printed, "bevel at %v in %v", c.spring, c.corner)
	}
}

// The bevel is printed here and there with the sine of half the corner. The
// published values tell the two apart wherever the corner is not square.
func TestMouldingIsNotTheMisprint(t *testing.T) {
	for _, c := range published {
		_, cos := c.spring.SinCos()
		sinHalf, _ := (c.corner / 2).SinCos()
		misprint := math.Asin(cos*sinHalf) * 180 / math.Pi
		_, bevel, err := Moulding(c.spring, c.corner)
		require.NoError(t, err)
		if c.corner == 90 {
			assert.InDelta(t, misprint, bevel.Degrees(), rounding, "alike in a square corner")
			continue
		}
		assert.Greater(t, math.Abs(misprint-bevel.Degrees()), 10.0, "at %v in %v", c.spring, c.corner)
	}
}

func TestMouldingAtTheEnds(t *testing.T) {
	for _, c := range []struct {
		spring, corner, mitre, bevel geom.Angle
		why                          string
	}{
		{90, 90, 45, 0, "flat against the ceiling: a picture frame"},
		{90, 120, 30, 0, "the same with six sides: 180/6"},
		{0, 90, 0, 45, "flat against the wall: a bevel only"},
		{0, 135, 0, 22.5, "the same round eight sides"},
		{38, 180, 0, 0, "no corner: square cuts"},
	} {
		mitre, bevel, err := Moulding(c.spring, c.corner)
		require.NoError(t, err, c.why)
		assert.InDelta(t, c.mitre.Degrees(), mitre.Degrees(), rounding, c.why)
		assert.InDelta(t, c.bevel.Degrees(), bevel.Degrees(), rounding, c.why)
	}
}

func TestMouldingRefuses(t *testing.T) {
	nan := geom.Angle(math.NaN())
	for _, c := range []struct {
		spring, corner geom.Angle
		want           string
	}{
		{-1, 90, "spring angle must be 0 to 90, not -1"},
		{91, 90, "spring angle must be 0 to 90, not 91"},
		{nan, 90, "spring angle must be 0 to 90, not NaN"},
		{38, 0, "corner must be above 0 and at most 180, not 0"},
		{38, 181, "corner must be above 0 and at most 180, not 181"},
		{38, nan, "corner must be above 0 and at most 180, not NaN"},
	} {
		_, _, err := Moulding(c.spring, c.corner)
		assert.EqualError(t, err, c.want)
	}
}

// vector is a direction in the room: x along the first wall, y out of it, z up.
type vector [3]float64

func (a vector) dot(b vector) float64 { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }

// Built up in space without the formulas: the plane that halves the corner
// stands upright and meets the moulding's back in a line. How that line lies in
// the back is the mitre; how the plane leans to the back's normal is the bevel.
func TestMouldingInSpace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		spring := geom.Angle(rapid.Float64Range(0.1, 89.9).Draw(t, "spring"))
		corner := geom.Angle(rapid.Float64Range(1, 179).Draw(t, "corner"))
		sinS, cosS := math.Sincos(spring.Radians())
		sinC, cosC := math.Sincos(corner.Radians() / 2)
		along := vector{1, 0, 0}
		across := vector{0, sinS, cosS}  // up the back, away from the wall as it rises
		normal := vector{0, cosS, -sinS} // of the back
		plane := vector{sinC, -cosC, 0}  // normal of the upright plane through (cos C/2, sin C/2)
		// The line of the cut in the back is at right angles to plane and normal:
		// p along + q across with p·(plane·along) + q·(plane·across) = 0.
		mitre := math.Atan2(math.Abs(plane.dot(across)), math.Abs(plane.dot(along)))
		bevel := math.Asin(math.Abs(plane.dot(normal)))
		gotMitre, gotBevel, err := Moulding(spring, corner)
		require.NoError(t, err)
		const steep = 1e-6 // degrees: the arcsine near its ends loses half its digits
		require.InDelta(t, mitre*180/math.Pi, gotMitre.Degrees(), steep)
		require.InDelta(t, bevel*180/math.Pi, gotBevel.Degrees(), steep)
	})
}
