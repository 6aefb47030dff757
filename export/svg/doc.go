// Package svg writes a drawing as SVG 1.1 in true millimetres: the file says how
// many millimetres wide and high it is, and one user unit is one millimetre, so
// that a browser, a drawing program and a laser cutter take it at full size.
//
// Each layer is one group that bears the layer's name, in the order of
// [drawing.Pens]. SVG measures y downwards: a point x, y of the drawing stands at
// x, -y, so the pivot stays at 0, 0. Nothing is transformed but turned letters,
// since not every machine's program reads transforms.
//
// Lines and arcs that follow each other end to end are one path, closed where it
// comes back to its beginning. The same drawing always gives the same bytes.
package svg
