// Package geom holds the plane geometry of a turning plate: angles in degrees,
// points in millimetres, arcs about the pivot, and the distances between them.
//
// Everything here is plain numbers in and plain numbers out; the directions and
// signs that all other packages rely on are stated once, on [Angle], [Point]
// and [Arc].
package geom
