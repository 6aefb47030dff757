package plate

import (
	"math"

	"stopwright/detent/geom"
)

// OverPins is what callipers read over pins standing in holes: over the outside
// of both.
type OverPins struct {
	Pivot     float64 // over the pin on the pivot and the one in the seat, mm
	Other     float64 // over the pin in another seat and the one in this, mm
	PivotPin  float64 // diameter, mm
	SeatPins  float64 // diameter of the pins in seats, mm
	OtherSeat geom.Point
}

// Place returns where the seat is, seen as OtherSeat is: at the distance from the
// pivot and from the other seat that the readings give once the pins' radii are
// taken off, on the side of near. It is false where no place has both distances,
// so that a reading must be wrong.
func (o OverPins) Place(near geom.Point) (geom.Point, bool) {
	radius := o.Pivot - (o.PivotPin+o.SeatPins)/2
	chord := o.Other - o.SeatPins
	base := o.OtherSeat.Norm()
	if radius <= 0 || chord <= 0 || base == 0 {
		return geom.Point{}, false
	}
	// The law of cosines gives the turn from the other seat to this.
	cos := (radius*radius + base*base - chord*chord) / (2 * radius * base)
	if math.Abs(cos) > 1 {
		return geom.Point{}, false
	}
	turn := geom.FromRadians(math.Acos(cos))
	a := geom.Polar(radius, o.OtherSeat.Azimuth()+turn)
	b := geom.Polar(radius, o.OtherSeat.Azimuth()-turn)
	if b.Distance(near) < a.Distance(near) {
		return b, true
	}
	return a, true
}
