// Package ink paints a [drawing.Drawing] into an image, as ink on a sheet of
// paper: lines of two weights, dashes, hatched edges, lettering. It needs no
// window, so what the window shows can be tested without one.
//
// Every edge is smoothed by its distance to the centre of each pixel, and only
// pixels near a stroke are visited, so a plate with hundreds of seats costs a
// few milliseconds and one zoomed in a millionfold costs no more.
//
// Pixel coordinates run right and down; pixel (i, j) covers the square from
// (i, j) to (i+1, j+1). Angles are draughting angles, as in package drawing:
// degrees, anticlockwise on the screen from the direction to the right. Colours
// are premultiplied ([color.RGBA]); the zero colour leaves no mark.
package ink
