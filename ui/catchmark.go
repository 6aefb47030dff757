package ui

import (
	"image/color"
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// catchInks are the colours of the catches after the first, which is in plain
// ink: apart from the accent and from what is at fault, on light and dark paper.
var catchInks = [2][]color.RGBA{
	{{0x2E, 0x6B, 0x34, 0xFF}, {0x6A, 0x3D, 0x9A, 0xFF}, {0x8A, 0x5A, 0x00, 0xFF}},
	{{0x8F, 0xD1, 0x8A, 0xFF}, {0xC7, 0xA6, 0xF2, 0xFF}, {0xE6, 0xB8, 0x5C, 0xFF}},
}

// catchInk returns the colour of a catch. In high contrast all are in ink: the
// shape of its mark tells a catch as well.
func catchInk(p ink.Palette, catch int) color.RGBA {
	if catch == 0 || p.Bold > 0 {
		return p.Ink
	}
	inks := catchInks[0]
	if p.Paper.G < 0x80 {
		inks = catchInks[1]
	}
	return inks[(catch-1)%len(inks)]
}

// catchOf returns the catch that a seat was cut for or a pocket holds; -1 for
// anything else, and in a plan of one catch.
func (sc scene) catchOf(e drawing.Entity) int {
	if len(sc.plate.Plan.Catches) < 2 {
		return -1
	}
	switch e.Item.Kind {
	case drawing.SeatItem:
		return sc.plate.Seats[e.Item.Index].Catch
	case drawing.PocketItem:
		return e.Item.Index
	}
	return -1
}

const (
	catchMarkSize = 3.2 // px of layout, from the middle to a corner
	catchMarkRoom = 16  // between two seats, below which there is no room for marks
)

// catchMarks puts the mark of its catch beside every seat, on the pivot's side,
// and at every pocket, in a plan of several catches. Where seats stand too close
// their colour has to do.
func (sc scene) catchMarks(c *ink.Canvas, v ink.View, p ink.Palette) {
	if len(sc.plate.Plan.Catches) < 2 {
		return
	}
	d := density(v)
	mark := func(at geom.Point, radius float64, catch int) {
		px := v.Pixel(at)
		in, _ := direction(px, v.Origin)
		drawCatchMark(c, along(px, in, radius*v.Scale+(catchMarkSize+4)*d), catchMarkSize*d, catch, catchInk(p, catch), p.Weight(ink.ThinLine)*d)
	}
	if sc.shows(sc.plate.SeatsPart) {
		mouth := sc.plate.Plan.Seat.Mouth()
		for _, s := range sc.plate.Seats {
			if (s.Web+mouth)*v.Scale >= catchMarkRoom*d {
				mark(sc.fromPart(sc.plate.SeatsPart, s.Centre), mouth/2, s.Catch)
			}
		}
	}
	if sc.shows(sc.plate.CatchPart) {
		for i, k := range sc.plate.Pockets {
			mark(sc.fromPart(sc.plate.CatchPart, k.Centre), k.Widest()/2, i)
		}
	}
}

// catchShapes are the marks of the catches, as corners about the middle; nil is
// round. Further catches have the same again, hollow, and then once more.
var catchShapes = [][]ink.Px{
	nil,
	{{X: -0.9, Y: -0.9}, {X: 0.9, Y: -0.9}, {X: 0.9, Y: 0.9}, {X: -0.9, Y: 0.9}},
	{{X: 0, Y: -1.2}, {X: 1.1, Y: 0.8}, {X: -1.1, Y: 0.8}},
	{{X: 0, Y: -1.3}, {X: 1.3, Y: 0}, {X: 0, Y: 1.3}, {X: -1.3, Y: 0}},
}

// drawCatchMark draws the mark of a catch, size px from its middle to a corner.
func drawCatchMark(c *ink.Canvas, at ink.Px, size float64, catch int, colour color.RGBA, width float64) {
	shape := catchShapes[catch%len(catchShapes)]
	hollow := catch/len(catchShapes)%2 == 1
	switch {
	case shape == nil && hollow:
		c.Circle(at, size, width, colour, nil)
		return
	case shape == nil:
		c.Disc(at, size, colour)
		return
	}
	corners := make([]ink.Px, len(shape))
	for i, q := range shape {
		corners[i] = ink.Px{X: at.X + size*q.X, Y: at.Y + size*q.Y}
	}
	if !hollow {
		c.Polygon(corners, colour)
		return
	}
	for i, a := range corners {
		c.Line(a, corners[(i+1)%len(corners)], math.Max(width, 1), colour, nil)
	}
}
