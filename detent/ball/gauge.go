package ball

// Gauge returns what calipers read over the face and a loose ball laid in the
// seat: from the face to the ball's top, mm. It is false where the ball falls
// in.
func (c *Contour) Gauge() (float64, bool) {
	if c.FallsIn() {
		return 0, false
	}
	return c.touch(0).z + c.r, true
}
