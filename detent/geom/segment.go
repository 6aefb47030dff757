package geom

import "math"

// Segment is the straight line from A to B, mm. A and B may coincide.
type Segment struct{ A, B Point }

// Nearest returns the point of the segment nearest to p.
func (s Segment) Nearest(p Point) Point {
	d := s.B.Sub(s.A)
	l2 := d.Dot(d)
	if l2 == 0 {
		return s.A
	}
	t := p.Sub(s.A).Dot(d) / l2
	return s.A.Add(d.Scale(math.Max(0, math.Min(1, t))))
}

// DistanceToPoint returns the distance (mm) from p to the segment.
func (s Segment) DistanceToPoint(p Point) float64 { return p.Distance(s.Nearest(p)) }

// crossCircle returns where the segment meets the circle of the given radius
// about the pivot: no point, one or two. They lie on either side of the foot of
// the perpendicular from the pivot, so that a small circle far from the ends is
// not lost in the squares of their distances.
func (s Segment) crossCircle(radius float64) []Point {
	d := s.B.Sub(s.A)
	l2 := d.Dot(d)
	if l2 == 0 {
		return nil
	}
	foot := -s.A.Dot(d) / l2 // as a share of the segment
	h := s.A.Add(d.Scale(foot)).Norm()
	if h > radius {
		return nil
	}
	half := math.Sqrt((radius - h) * (radius + h) / l2)
	var out []Point
	for _, t := range [2]float64{foot - half, foot + half} {
		if t >= 0 && t <= 1 {
			out = append(out, s.A.Add(d.Scale(t)))
		}
	}
	return out
}

// DistanceToSegment returns the least distance (mm) between two segments; 0
// where they cross. Where they do not, an end of one is nearest.
func (s Segment) DistanceToSegment(t Segment) float64 {
	if s.crosses(t) {
		return 0
	}
	return min(s.DistanceToPoint(t.A), s.DistanceToPoint(t.B), t.DistanceToPoint(s.A), t.DistanceToPoint(s.B))
}

// crosses reports whether the ends of each segment lie strictly on either side
// of the other. Segments that only touch, or lie along each other, have an end
// on the other one.
func (s Segment) crosses(t Segment) bool {
	side := func(s Segment, p Point) float64 {
		d, e := s.B.Sub(s.A), p.Sub(s.A)
		return d.X*e.Y - d.Y*e.X
	}
	return side(s, t.A)*side(s, t.B) < 0 && side(t, s.A)*side(t, s.B) < 0
}

// DistanceToArc returns the least distance (mm) between the segment and an arc
// about the pivot.
func (s Segment) DistanceToArc(a Arc) float64 { return a.DistanceToSegment(s) }
