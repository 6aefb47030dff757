package proving

import (
	"math"

	"stopwright/detent/geom"
)

// Plate is what the readings are of.
type Plate struct {
	Sigma float64 // +1 or -1: by which a seat's azimuth grows with its stop's angle
	Stops []Stop
}

// Stop is one stop with the seats that hold it: one for each catch that drops.
type Stop struct{ Arms []Arm }

// Arm is where one seat lies.
type Arm struct {
	Azimuth geom.Angle
	Radius  float64 // mm, above 0
}

// Reading is one measurement of a stop.
type Reading struct {
	Stop     int     // into the plate's stops
	Residual float64 // measured less wanted, degrees
	Way      Way
}

// Way is the sense in which the table was turned to the stop.
type Way int

// The ways.
const (
	Backwards Way = -1 // against the positive turn
	Unknown   Way = 0
	Onwards   Way = 1
)

// perRadian is degrees in a radian.
const perRadian = 180 / math.Pi

// row returns what a common error of 1 degree and a ring 1 mm off along x and
// along y each add to a stop's residual. Catches that drop together share what
// their seats say: opposite ones cancel a ring that is off.
func (p Plate) row(stop int) []float64 {
	arms := p.Stops[stop].Arms
	x, y := 0.0, 0.0
	for _, a := range arms {
		s, c := a.Azimuth.SinCos()
		k := p.Sigma * perRadian / a.Radius / float64(len(arms))
		x, y = x+k*c, y-k*s
	}
	return []float64{1, x, y}
}

// Move returns how far (mm) along the ring, clockwise +, the seat of a stop must
// be moved so that its own error is gone: -sigma·R·(π/180)·error. For catches
// that drop together it is the mean of their radii that counts.
func (p Plate) Move(stop int, own float64) float64 {
	radius := 0.0
	for _, a := range p.Stops[stop].Arms {
		radius += a.Radius / float64(len(p.Stops[stop].Arms))
	}
	return -p.Sigma*radius/perRadian*own + 0
}
