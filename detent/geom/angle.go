package geom

import "math"

// Angle is an angle in degrees.
//
// Degrees are stored, not radians, because every angle a maker types is a short
// decimal of a degree and must come back as typed, and because sine and cosine
// can then be exact where a drawing needs them to be: see [Angle.SinCos].
// Conversion to and from radians rounds.
//
// As an azimuth, 0 lies along +y (away from the operator) and positive is
// clockwise, seen from above. As a table's turn the sign is the plan's own.
type Angle float64

// FullTurn is one turn of the table.
const FullTurn Angle = 360

// FromRadians converts radians to an Angle.
func FromRadians(r float64) Angle { return Angle(r * (180 / math.Pi)) }

// Degrees returns the angle as a plain number of degrees, exactly.
func (a Angle) Degrees() float64 { return float64(a) }

// Radians returns the angle in radians, for use inside a formula.
func (a Angle) Radians() float64 { return float64(a) * (math.Pi / 180) }

// Abs returns the magnitude of the angle.
func (a Angle) Abs() Angle { return Angle(math.Abs(float64(a))) }

// Wrap returns the angle brought into (-180, 180], the range in which azimuths
// are reported. It never returns -0. Angles already in range are unchanged to
// the last bit. NaN and infinities give NaN.
func (a Angle) Wrap() Angle {
	d := float64(a)
	if d <= -180 || d > 180 {
		d = math.Mod(d, 360)
		switch {
		case d > 180:
			d -= 360
		case d <= -180:
			d += 360
		}
	}
	return Angle(d + 0) // -0 + 0 is +0
}

// Turn returns the angle brought into [0, 360).
func (a Angle) Turn() Angle {
	d := math.Mod(float64(a), 360)
	if d < 0 {
		d += 360
	}
	if d >= 360 { // a tiny negative angle rounds up to a full turn
		d = 0
	}
	return Angle(d + 0)
}

// SinCos returns the sine and cosine of the angle, exact at every multiple of
// 90 degrees, with sin 30 = 1/2 and sin 45 = cos 45, so that a hole meant to lie
// on an axis or a diagonal of the drawing does. The reduction to a quarter turn is done in degrees, where
// it is exact, and not in radians, where it is not.
func (a Angle) SinCos() (sin, cos float64) {
	d := math.Mod(float64(a), 360)
	q := math.Round(d / 90)
	r := d - 90*q // exact: both terms are multiples of the same power of two
	s, c := quarter(r)
	switch (int(q) + 8) % 4 {
	case 0:
		sin, cos = s, c
	case 1:
		sin, cos = c, -s
	case 2:
		sin, cos = -s, -c
	default:
		sin, cos = -c, s
	}
	return sin + 0, cos + 0
}

// quarter returns sine and cosine for -45 to 45 degrees.
func quarter(deg float64) (sin, cos float64) {
	switch deg {
	case 0:
		return 0, 1
	case 30:
		return 0.5, math.Sqrt(3) / 2
	case -30:
		return -0.5, math.Sqrt(3) / 2
	case 45:
		return math.Sqrt2 / 2, math.Sqrt2 / 2
	case -45:
		return -math.Sqrt2 / 2, math.Sqrt2 / 2
	}
	return math.Sincos(deg * (math.Pi / 180))
}
