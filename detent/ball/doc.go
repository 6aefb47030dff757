// Package ball holds what happens between a sprung ball and the seat it drops
// into: where the ball lies, what it rests on, with what force it holds and
// centres, how far it rattles, and what it does to the face it runs on.
//
// Plain numbers in, plain numbers out: millimetres, newtons, degrees, newton
// metres, kilograms. Offsets are measured sideways from the seat's axis, and
// everything is alike on both sides of it. Heights are those of the ball's
// centre over the face the seat is cut in; up is out of the seat.
//
// A [Contour] is the seat as the ball's centre feels it, geometry alone. A
// [Click] adds spring, gap, friction and ring. Numbers that mean nothing come
// with false; no result is NaN or infinite.
//
// Everything is exact mathematics, or statics of rigid bodies with Coulomb
// friction, unless a comment names a source or calls it an estimate.
package ball
