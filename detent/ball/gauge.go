package ball

import "math"

// Gauge returns what calipers read over the face and a loose ball laid in the
// seat: from the face to the ball's top, mm. It is false where the ball falls
// in.
func (c *Contour) Gauge() (float64, bool) {
	if c.FallsIn() {
		return 0, false
	}
	return c.touch(0).z + c.r, true
}

// MouthFromGauge returns the mouth (a diameter, mm) of a sharp-edged seat from
// the reading (mm) over a loose ball of a diameter (mm) that rests on its rim:
// 2√(r² - (reading - r)²). It is false unless the reading lies between the
// ball's radius and its diameter.
func MouthFromGauge(ballDiameter, reading float64) (float64, bool) {
	r := ballDiameter / 2
	if !(r > 0 && reading >= r && reading <= ballDiameter) {
		return 0, false
	}
	h := reading - r
	return 2 * math.Sqrt((r-h)*(r+h)), true
}
