// Package measure reads and writes lengths and angles as workshop people type
// them: 12,5 or 12.5 mm, 1 3/16", 31°37′08″, 180/7.
//
// Reading is exact until the last step. A number is held as a fraction of whole
// numbers while units, divisions, minutes and seconds are worked out, and is
// rounded once, to the nearest float64; so 3/16" is the same length as 4.7625
// mm to the last bit. Text that could be read two ways is refused, with a
// [SyntaxError] that says what would be understood.
//
// Everything is independent of the machine's language: a decimal point and a
// decimal comma are always both understood, a point is always written.
package measure
