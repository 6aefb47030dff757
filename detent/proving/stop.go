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
// Several settle as springs of one stiffness do, by least squares: with arms R
// and seats off along their rings, the turn is ΣR·off/ΣR².
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
// along y each add to a stop's residual. Opposite catches on one ring cancel a
// ring that is off.
func (p Plate) row(stop int) []float64 {
	arms, squares := p.Stops[stop].Arms, p.Stops[stop].squares()
	x, y := 0.0, 0.0
	for _, a := range arms {
		s, c := a.Azimuth.SinCos()
		k := p.Sigma * perRadian * a.Radius / squares
		x, y = x+k*c, y-k*s
	}
	return []float64{1, x, y}
}

// squares returns the sum of the squares of a stop's radii, mm².
func (s Stop) squares() float64 {
	sum := 0.0
	for _, a := range s.Arms {
		sum += a.Radius * a.Radius
	}
	return sum
}

// Move returns how far (mm) along its ring, clockwise +, the seat of a stop must
// be moved so that the stop's own error is gone: -sigma·R·(π/180)·error. Where
// catches drop together each of their seats is moved by as much: ΣR²/ΣR then
// stands for R.
func (p Plate) Move(stop int, own float64) float64 {
	sum := 0.0
	for _, a := range p.Stops[stop].Arms {
		sum += a.Radius
	}
	return -p.Sigma*p.Stops[stop].squares()/sum/perRadian*own + 0
}
