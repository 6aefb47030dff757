package ball

// Spring is a catch's spring, fitted: its force falls evenly as the ball comes
// out, from flush to free.
type Spring struct {
	Free   float64 // force with the ball fully out, N (0 to 1,000,000)
	Flush  float64 // force with the ball pushed in level with the face, N (0 to 1,000,000)
	Travel float64 // from flush to fully out, mm (0.001 to 100,000): the catch's protrusion
}

// SpringFromRate returns the spring of a rate (N/mm) that presses with preload
// (N) when the ball is fully out, travel (mm) from flush. It fails where a value,
// or a force that follows, is out of the range that Spring gives.
func SpringFromRate(rate, preload, travel float64) (Spring, error) {
	s := Spring{Free: preload, Flush: preload + rate*travel, Travel: travel}
	if err := check(quantity{"spring rate", rate, 0, mostForce, "N/mm"}); err != nil {
		return Spring{}, err
	}
	if err := s.check(); err != nil {
		return Spring{}, err
	}
	return s, nil
}

// Rate returns the spring's rate in N/mm. A force that grows as the ball comes
// out gives a negative one.
func (s Spring) Rate() float64 { return (s.Flush - s.Free) / s.Travel }

// Force returns the force (N) with the ball standing out (mm) from the face of
// its own part. Beyond the two ends it stays as it is there: the housing lets
// the ball out no further, and what it does pushed in below flush is not known.
func (s Spring) Force(out float64) float64 {
	return s.Flush - s.Rate()*min(max(out, 0), s.Travel)
}

// Work returns what the spring gives (mJ, that is N·mm) while the ball comes
// out from one standing to another, mm; negative where it is pushed in.
func (s Spring) Work(from, to float64) float64 {
	a, b := min(max(from, 0), s.Travel), min(max(to, 0), s.Travel)
	// The mean of a straight line is its middle; beyond the ends it is level.
	beyond := s.Flush*(min(to, 0)-min(from, 0)) + s.Free*(max(to, s.Travel)-max(from, s.Travel))
	return (s.Force(a)+s.Force(b))/2*(b-a) + beyond
}

// check returns an error that names every value out of its range, or nil.
func (s Spring) check() error {
	return check(
		force("free force", s.Free),
		force("flush force", s.Flush),
		size("protrusion", s.Travel),
	)
}
