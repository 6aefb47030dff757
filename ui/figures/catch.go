package figures

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The catch of every figure, mm.
const (
	ballRadius = 3.2
	body       = 4.1 // radius
	bore       = 3.4 // radius of the bore the ball slides in
	lip        = 3.0 // radius of the rim that keeps the ball in
	bodyLong   = 8.4 // flange included
	flange     = 5.6 // radius
	flangeHigh = 1.3
	bodyRoom   = 0.4 // allowance at each side
	recessRoom = 0.5 // allowance in depth
	lipHigh    = 0.45
)

// pocket draws, from a face at height y up to top, the part that holds a catch,
// cut through its pocket, and the catch's housing.
func (d *drafter) pocket(y, top float64) {
	floor := y + recessRoom + bodyLong + 0.5
	right := []geom.Point{
		{X: flange + bodyRoom, Y: y},
		{X: flange + bodyRoom, Y: y + recessRoom + flangeHigh},
		{X: body + bodyRoom, Y: y + recessRoom + flangeHigh},
		{X: body + bodyRoom, Y: min(floor, top)},
	}
	if floor < top {
		right = append(right, geom.Point{Y: floor})
	}
	d.part(Hatch, 1.15, false, mirrored(right, wide, top))
	d.housing(y+recessRoom, top)
}

// housing draws the catch's housing from its face at height y, as far as top.
func (d *drafter) housing(y, top float64) {
	end := min(y+bodyLong, top)
	crown := end == y+bodyLong // its closed end is shown
	wall := func(side float64) []geom.Point {
		out := []geom.Point{
			{X: side * lip, Y: y},
			{X: side * flange, Y: y},
			{X: side * flange, Y: y + flangeHigh},
			{X: side * body, Y: y + flangeHigh},
			{X: side * body, Y: end},
		}
		if crown {
			const thick = 0.8
			return append(out, geom.Point{Y: end}, geom.Point{Y: end - thick},
				geom.Point{X: side * bore, Y: end - thick}, geom.Point{X: side * bore, Y: y + lipHigh})
		}
		return append(out, geom.Point{X: side * bore, Y: end}, geom.Point{X: side * bore, Y: y + lipHigh})
	}
	for _, side := range [2]float64{-1, 1} {
		o := wall(side)
		d.hatch(Metal, 0.55, true, o)
		for i, q := range o {
			p := o[(i+len(o)-1)%len(o)]
			open := p.Y == top && q.Y == top // carried on beyond what is shown
			if middle := p.X == 0 && q.X == 0; !middle && !open {
				d.path(Cut, p, q)
			}
		}
	}
}

// spring draws the spring from a height up to the housing's end or top.
func (d *drafter) spring(from, to float64) {
	const turns = 1.5 // mm from coil to coil
	x, y := -bore+0.4, from
	last := geom.Point{X: x, Y: y}
	for y+turns/2 <= to {
		x, y = -x, y+turns/2
		next := geom.Point{X: x, Y: y}
		d.path(Spring, last, next)
		last = next
	}
}

// part hatches a part and draws those of its edges that are not where the
// figure breaks it off.
func (d *drafter) part(l drawing.Layer, apart float64, rising bool, cut cutPart) {
	d.hatch(l, apart, rising, cut.outlines...)
	for _, e := range cut.edges {
		d.path(Cut, e...)
	}
}

// cutPart is a part cut through a hole in it.
type cutPart struct {
	outlines [][]geom.Point // closed, to be hatched
	edges    [][]geom.Point // to be drawn
}

// mirrored returns the part that reaches w to either side of the axis and from
// the face, where profile begins, to the height end; profile is the right side
// of the hole in it. A profile that stops short of the axis goes right through.
func mirrored(profile []geom.Point, w, end float64) cutPart {
	face, last := profile[0].Y, profile[len(profile)-1]
	right := append([]geom.Point{{X: w, Y: face}}, profile...)
	left := make([]geom.Point, len(right))
	for i, p := range right {
		left[i] = geom.Point{X: -p.X, Y: p.Y}
	}
	cut := cutPart{edges: [][]geom.Point{right, left}}
	for _, side := range [2][]geom.Point{right, left} {
		x := math.Copysign(w, side[0].X)
		o := append([]geom.Point{}, side...)
		if last.Y != end {
			o = append(o, geom.Point{X: last.X, Y: end})
		}
		cut.outlines = append(cut.outlines, append(o, geom.Point{X: x, Y: end}))
	}
	return cut
}
