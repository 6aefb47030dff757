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
// about the pivot: no point, one or two.
func (s Segment) crossCircle(radius float64) []Point {
	d := s.B.Sub(s.A)
	a, b, c := d.Dot(d), s.A.Dot(d), s.A.Dot(s.A)-radius*radius
	disc := b*b - a*c
	if a == 0 || disc < 0 {
		return nil
	}
	var out []Point
	root := math.Sqrt(disc)
	for _, t := range [2]float64{(-b - root) / a, (-b + root) / a} {
		if t >= 0 && t <= 1 {
			out = append(out, s.A.Add(d.Scale(t)))
		}
	}
	return out
}

// DistanceToArc returns the least distance (mm) between the segment and an arc
// about the pivot.
func (s Segment) DistanceToArc(a Arc) float64 { return a.DistanceToSegment(s) }
