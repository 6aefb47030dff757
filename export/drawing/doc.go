// Package drawing holds the one drawing model from which every view and every
// file is made: lines, circles, arcs and text in millimetres, each on a named
// layer. What the window shows and what a file holds therefore cannot differ.
//
// Coordinates are mm, +x right and +y away from the operator. Angles of arcs
// and text, here only, are in the draughting sense that all formats share:
// degrees anticlockwise from +x. [FromAzimuth] is the one place that converts.
package drawing
