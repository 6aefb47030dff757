package geom

import "math"

// Arc is a part of a circle about the pivot, running clockwise from azimuth
// From through Sweep degrees. Sweep is at least 0; 360 or more is the whole
// circle. Radius is in mm, at least 0.
type Arc struct {
	Radius float64
	From   Angle
	Sweep  Angle
}

// ArcBetween returns the arc between two azimuths, given in either order.
func ArcBetween(radius float64, a, b Angle) Arc {
	if b < a {
		a, b = b, a
	}
	return Arc{Radius: radius, From: a, Sweep: b - a}
}

// Whole reports whether the arc is a full circle, rounding allowed for.
func (a Arc) Whole() bool { return a.Sweep >= FullTurn-angleSlack }

// Contains reports whether azimuth az lies on the arc, end points included.
func (a Arc) Contains(az Angle) bool {
	if a.Whole() {
		return true
	}
	t := (az - a.From).Turn()
	// An azimuth a rounding error before From turns up just under 360.
	return t <= a.Sweep+angleSlack || t >= FullTurn-angleSlack
}

// angleSlack absorbs rounding when azimuths are added and wrapped: some tens of
// units in the last place of 360 degrees. At 10 m radius it is under 2e-9 mm.
const angleSlack Angle = 1e-11

// Start returns the arc's first point, clockwise.
func (a Arc) Start() Point { return Polar(a.Radius, a.From) }

// End returns the arc's last point, clockwise.
func (a Arc) End() Point { return Polar(a.Radius, a.From+a.Sweep) }

// Nearest returns the point of the arc nearest to p; from the pivot, from where
// all are equally far, its first.
func (a Arc) Nearest(p Point) Point {
	switch {
	case p.Norm() == 0:
		return a.Start()
	case a.Contains(p.Azimuth()):
		return Polar(a.Radius, p.Azimuth())
	case p.Distance(a.End()) < p.Distance(a.Start()):
		return a.End()
	}
	return a.Start()
}

// DistanceToPoint returns the distance (mm) from p to the nearest point of the
// arc; 0 where p is on it.
func (a Arc) DistanceToPoint(p Point) float64 {
	if n := p.Norm(); n == 0 || a.Contains(p.Azimuth()) {
		return math.Abs(n - a.Radius)
	}
	return math.Min(p.Distance(a.Start()), p.Distance(a.End()))
}

// DistanceToArc returns the least distance (mm) between two arcs about the same
// centre.
func (a Arc) DistanceToArc(b Arc) float64 {
	if a.overlaps(b) {
		return math.Abs(a.Radius - b.Radius)
	}
	return min(
		a.DistanceToPoint(b.Start()), a.DistanceToPoint(b.End()),
		b.DistanceToPoint(a.Start()), b.DistanceToPoint(a.End()),
	)
}

// overlaps reports whether some azimuth lies on both arcs. Where two arcs share
// any, one of them starts on the other.
func (a Arc) overlaps(b Arc) bool { return a.Contains(b.From) || b.Contains(a.From) }

// DistanceToSegment returns the least distance (mm) between the arc and a
// straight segment; 0 where they cross.
//
// Along the segment the distance to the circle changes monotonically between
// its ends, its foot from the pivot, and its crossings of the circle, so those
// points and the ends of the arc are the only candidates.
func (a Arc) DistanceToSegment(s Segment) float64 {
	d := math.Min(a.DistanceToPoint(s.A), a.DistanceToPoint(s.B))
	d = math.Min(d, a.DistanceToPoint(s.Nearest(Point{})))
	for _, p := range s.crossCircle(a.Radius) {
		if a.Contains(p.Azimuth()) {
			return 0
		}
	}
	if !a.Whole() {
		d = min(d, s.DistanceToPoint(a.Start()), s.DistanceToPoint(a.End()))
	}
	return d
}
