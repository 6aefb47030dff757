package ui

import (
	"stopwright/detent/plate"
	"stopwright/ui/ink"
)

// paintBalls draws each catch's ball where it is with the table as it is
// turned: hollow where it rides on the face, the fuller the deeper it has
// dropped into a seat meant for it, struck out where it drops into one that is
// not.
func (sc scene) paintBalls(c *ink.Canvas, v ink.View, p ink.Palette) {
	radius := sc.plate.Plan.Catch.BallDiameter / 2 * v.Scale
	d := density(v)
	for _, b := range sc.balls {
		at := v.Pixel(sc.fromPart(sc.plate.SeatsPart, b.Centre))
		switch sc.stateOf(b) {
		case riding:
			c.Circle(at, radius, p.Weight(ink.ThinLine)*d, p.Accent, []float64{3 * d, 2 * d})
		case dropped:
			sunk := 1 - b.Offset/(sc.plate.Plan.Seat.Mouth()/2)
			c.Circle(at, radius, p.Weight(ink.ThinLine)*d, p.Accent, nil)
			c.Disc(at, radius*(0.2+0.5*sunk), p.Accent)
		case falseClick:
			c.Disc(at, radius*0.7, p.Fault)
			for _, s := range [2]float64{1, -1} {
				r := radius * 1.4
				c.Line(ink.Px{X: at.X - r, Y: at.Y - s*r}, ink.Px{X: at.X + r, Y: at.Y + s*r}, p.Weight(ink.ThickLine)*d, p.Fault, nil)
			}
		}
	}
}

// ballState is what a ball is doing.
type ballState int

const (
	riding ballState = iota
	dropped
	falseClick
)

func (sc scene) stateOf(b plate.Ball) ballState {
	switch {
	case b.Seat < 0 || !b.Over(sc.plate.Plan.Seat.Mouth()):
		return riding
	case b.Served:
		return dropped
	}
	return falseClick
}
