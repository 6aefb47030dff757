package drawing

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// around returns the closed outline at distance half from a feature's centre
// line: a circle, a slot with round ends, or a curved slot with round ends.
func around(c plate.Core, half float64) []Shape {
	if a, curved := c.(geom.Arc); curved {
		return aroundArc(a, half)
	}
	return aroundSegment(c.(geom.Segment), half) // the only other kind there is
}

func aroundSegment(s geom.Segment, half float64) []Shape {
	if s.A == s.B {
		return []Shape{Circle{s.A, half}}
	}
	left := s.B.Sub(s.A).Azimuth() - 90 // going from A to B
	n := geom.Polar(half, left)
	return []Shape{
		Line{s.A.Sub(n), s.B.Sub(n)},
		Arc{s.B, half, FromAzimuth(left + 180), 180},
		Line{s.B.Add(n), s.A.Add(n)},
		Arc{s.A, half, FromAzimuth(left), 180},
	}
}

// aroundArc returns the outer edge, the inner edge if there is one, and the
// round ends between them, in the order of a pen that follows the outline. Where
// the ends meet each other, across a gap narrower than the slot or over the
// pivot, there are two outlines, or the outer one alone.
func aroundArc(a geom.Arc, half float64) []Shape {
	if a = settled(a); a.Sweep == 0 {
		return []Shape{Circle{a.Start(), half}}
	}
	outerEdge := ArcOf(geom.Arc{Radius: a.Radius + half, From: a.From, Sweep: a.Sweep})
	innerEdge := ArcOf(geom.Arc{Radius: a.Radius - half, From: a.From, Sweep: a.Sweep})
	if a.Whole() {
		if a.Radius > half {
			return []Shape{outerEdge, innerEdge}
		}
		return []Shape{outerEdge}
	}
	round := func(centre geom.Point, from geom.Angle, sweep float64) Shape {
		return Arc{centre, half, from.Turn().Degrees(), sweep}
	}
	// Anticlockwise the end at From runs from the outer edge to the inner one,
	// the end at To the other way.
	first, last := 90-a.From, 270-(a.From+a.Sweep)
	outer, inner, meet := endsMeet(a, half)
	if !meet {
		return []Shape{outerEdge, round(a.Start(), first, 180), innerEdge, round(a.End(), last, 180)}
	}
	out := []Shape{
		outerEdge,
		round(a.Start(), first, outer),
		round(a.End(), last+180-geom.Angle(outer), outer),
	}
	if inner > 0 {
		out = append(out,
			innerEdge,
			round(a.End(), last, inner),
			round(a.Start(), first+180-geom.Angle(inner), inner),
		)
	}
	return out
}

// endsMeet reports whether the round ends of a slot meet, and how far (degrees)
// each then runs from the outer edge, and from the inner edge if there is one.
//
// They meet on the line from the pivot through the middle of the gap. With g
// half the gap, an end's middle is R sin g off that line, and so the directions
// from it to the meeting points are asin(R sin g / half) off the line, on either
// side; the direction away from the pivot is g off it.
func endsMeet(a geom.Arc, half float64) (outer, inner float64, meet bool) {
	g := (geom.FullTurn - a.Sweep) / 2
	sin, cos := g.SinCos()
	off := a.Radius * sin
	open := a.Radius > half // there is material left on the pivot
	if open && (cos <= 0 || off >= half) {
		return 0, 0, false
	}
	to := geom.FromRadians(math.Asin(math.Min(1, off/half)))
	if open {
		inner = (to - g).Degrees()
	}
	return (g + to).Degrees(), inner, true
}
