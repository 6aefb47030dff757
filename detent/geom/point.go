package geom

import "math"

// Point is a place in a plane, in millimetres, +x right and +y away from the
// operator, with the pivot at the origin.
type Point struct{ X, Y float64 }

// Polar returns the point at the given radius (mm) and azimuth:
// x = R sin az, y = R cos az.
func Polar(radius float64, azimuth Angle) Point {
	s, c := azimuth.SinCos()
	return Point{radius*s + 0, radius*c + 0}
}

// Add returns p + q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub returns p - q.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Scale returns p times k.
func (p Point) Scale(k float64) Point { return Point{p.X * k, p.Y * k} }

// Dot returns the scalar product of p and q.
func (p Point) Dot(q Point) float64 { return p.X*q.X + p.Y*q.Y }

// Norm returns the distance of p from the origin, mm.
func (p Point) Norm() float64 { return math.Hypot(p.X, p.Y) }

// Distance returns the distance between p and q, mm.
func (p Point) Distance(q Point) float64 { return math.Hypot(p.X-q.X, p.Y-q.Y) }

// Azimuth returns the direction of p from the origin, in (-180, 180]. The
// origin itself has azimuth 0.
func (p Point) Azimuth() Angle {
	return FromRadians(math.Atan2(p.X, p.Y+0)).Wrap() // for atan2, -0 would be behind
}

// MirrorX returns p seen from the other face: x with its sign changed.
func (p Point) MirrorX() Point { return Point{-p.X + 0, p.Y} }

// Rotate returns p turned clockwise about the origin by a.
func (p Point) Rotate(a Angle) Point {
	s, c := a.SinCos()
	return Point{p.X*c + p.Y*s + 0, -p.X*s + p.Y*c + 0}
}

// Chord returns the straight distance (mm) between two points on a circle of
// the given radius that are the angle a apart: 2R sin(a/2).
func Chord(radius float64, a Angle) float64 {
	s, _ := (a / 2).SinCos()
	return 2 * radius * math.Abs(s)
}
