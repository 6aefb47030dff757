package figures

import (
	"math"

	"stopwright/detent/geom"
)

// The figure of a catch in its part, mm. The part's face is at y = 0.
const (
	top   = 10.6 // of the part, as far as it is shown
	above = top + 1.2
	under = -4.4 // y of level dimensions under the ball
)

// out is the height of the middle of a ball fully out: its lip holds it.
var out = recessRoom + math.Sqrt(ballRadius*ballRadius-lip*lip)

// alone measures each size of the figure of a catch in its part.
var alone = map[string]func(*drafter){
	"catch.ball_diameter":    func(d *drafter) { d.level(under, -ballRadius, ballRadius, out) },
	"catch.protrusion":       func(d *drafter) { d.upright(margin, wide, 0, 0, out-ballRadius) },
	"catch.body_diameter":    func(d *drafter) { d.level(above, -body, body, recessRoom+bodyLong) },
	"catch.body_length":      func(d *drafter) { d.upright(margin, flange, recessRoom, body, recessRoom+bodyLong) },
	"catch.flange_diameter":  func(d *drafter) { d.level(under, -flange, flange, recessRoom) },
	"catch.flange_thickness": func(d *drafter) { d.upright(margin, flange, recessRoom, flange, recessRoom+flangeHigh) },
	"catch.recess_allowance": func(d *drafter) { d.upright(margin, wide, 0, flange, recessRoom) },
	"catch.body_allowance": func(d *drafter) {
		// The allowance is on the diameter: half of it lies at either side.
		d.level(above, body, body+bodyRoom, recessRoom+bodyLong)
		for _, x := range [2]float64{-body - bodyRoom, -body} {
			d.path(Measure, geom.Point{X: x, Y: recessRoom + bodyLong}, geom.Point{X: x, Y: above + overshoot})
		}
		d.span(geom.Point{X: -body - bodyRoom, Y: above}, geom.Point{X: -body, Y: above})
	},
	"catch.free_force":  func(d *drafter) { d.push(out) },
	"catch.flush_force": func(d *drafter) { d.push(ballRadius) },
}

// push draws the force on a ball whose middle is at a height.
func (d *drafter) push(centre float64) {
	tip := centre - ballRadius - 0.2
	d.path(Measure, geom.Point{Y: tip - 3}, geom.Point{Y: tip})
	d.arrow(geom.Point{Y: tip}, geom.Point{Y: 1})
	d.beside(1, tip-2)
}

// drawAlone draws a catch in its part with the ball fully out, or pushed in
// flush where that is what is asked about.
func drawAlone(d *drafter, path string) {
	d.frame(-wide-0.5, under-2.6, wide+11.2, above+2.8)
	centre := out
	if path == "catch.flush_force" {
		centre = ballRadius
	}
	d.pocket(0, top)
	d.spring(centre+ballRadius, recessRoom+bodyLong-0.8)
	d.ball(0, centre, ballRadius)
	d.path(Axis, geom.Point{Y: centre - ballRadius - 0.8}, geom.Point{Y: top + 0.4})
}
