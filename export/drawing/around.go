package drawing

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// around returns the closed outline at distance half from a feature's centre
// line: a circle, a slot with round ends, or a curved slot with round ends.
func around(c plate.Core, half float64) []Shape {
	switch c := c.(type) {
	case geom.Arc:
		return aroundArc(c, half)
	case geom.Segment:
		return aroundSegment(c, half)
	}
	return nil
}

func aroundSegment(s geom.Segment, half float64) []Shape {
	if s.A == s.B {
		return []Shape{Circle{s.A, half}}
	}
	d := s.B.Sub(s.A)
	n := geom.Point{X: -d.Y, Y: d.X}.Scale(half / d.Norm()) // to the left, going from A to B
	left := FromAzimuth(n.Azimuth())
	return []Shape{
		Line{s.A.Sub(n), s.B.Sub(n)},
		Arc{s.B, half, math.Mod(left+180, 360), 180},
		Line{s.B.Add(n), s.A.Add(n)},
		Arc{s.A, half, left, 180},
	}
}

// aroundArc returns two concentric arcs and two round ends. Where the slot is
// wider than its radius the inner arc is gone and the ends meet on the pivot
// side; where it goes all round it is two circles.
func aroundArc(a geom.Arc, half float64) []Shape {
	outer := geom.Arc{Radius: a.Radius + half, From: a.From, Sweep: a.Sweep}
	inner := geom.Arc{Radius: a.Radius - half, From: a.From, Sweep: a.Sweep}
	var out []Shape
	if a.Sweep > 0 {
		out = append(out, ArcOf(outer))
		if inner.Radius > 0 {
			out = append(out, ArcOf(inner))
		}
	}
	if a.Whole() {
		return out
	}
	if a.Sweep == 0 {
		return append(out, Circle{a.Start(), half})
	}
	return append(out,
		Arc{a.Start(), half, FromAzimuth(a.From), 180},
		Arc{a.End(), half, math.Mod(FromAzimuth(a.From+a.Sweep)+180, 360), 180},
	)
}
