package figures

import (
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The figure of two holes near an edge, seen from above, mm. The edge is at
// x = 0.
const (
	hole   = 2.6 // radius
	first  = 6.2 // of the nearer hole's middle from the edge
	second = 14.4
	tall   = 5.0 // of the edge to either side of the holes
)

// clearance measures the material left at holes.
var clearance = map[string]func(*drafter){
	"rules.edge": func(d *drafter) { d.level(-4, 0, first-hole, 0) },
	"rules.web":  func(d *drafter) { d.level(-4, first+hole, second-hole, 0) },
}

// drawClear draws two holes near an edge.
func drawClear(d *drafter) {
	d.frame(-5, -tall-2.2, second+hole+5, tall+1)
	d.add(drawing.Outline, drawing.Line{A: geom.Point{Y: tall}, B: geom.Point{Y: -tall}})
	for _, x := range [2]float64{first, second} {
		d.add(drawing.Seats, drawing.Circle{Centre: geom.Point{X: x}, Radius: hole})
		const arm = 1.0
		d.path(Axis, geom.Point{X: x - arm}, geom.Point{X: x + arm})
		d.path(Axis, geom.Point{X: x, Y: -arm}, geom.Point{X: x, Y: arm})
	}
}
