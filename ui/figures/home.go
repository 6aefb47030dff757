package figures

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

// The figure of a ball at home, mm. The seat's face is at y = 0.
const (
	wide      = 12.0 // of the part to either side of the axis
	deep      = 8.2  // of the part with the seat, as far as it is shown
	high      = 7.6  // of the part with the catch, likewise
	gap       = 0.7
	mouth     = 2.2 // radius
	cylinder  = 4.6
	point     = 118.0 // degrees
	cone      = 90.0  // degrees
	coneMouth = 2.5   // radius
	coneFloor = 2.1   // depth
	relief    = 0.85  // radius
	chamfer   = 0.55
	margin    = wide + 2 // x of upright dimensions
)

// home measures each size of the figure of a ball at home.
var home = map[string]func(*drafter){
	"seat.form":     func(*drafter) {},
	"face_gap":      func(d *drafter) { d.upright(margin, wide, 0, wide, gap) },
	"seat.depth":    func(d *drafter) { d.upright(margin, wide, 0, d.rim-0.3, -d.floor) },
	"seat.diameter": func(d *drafter) { d.level(-deep-1.6, -d.tool, d.tool, 0) },
	"seat.chamfer":  func(d *drafter) { d.level(-deep-1.6, d.tool, d.rim, 0) },
	"seat.drill_point": func(d *drafter) {
		tip := -cylinder - tipOf(d.tool, point)
		d.angle(0, tip, 90-point/2, point, 2.4)
		d.text(0, tip+3.3)
	},
	"seat.countersink_angle": func(d *drafter) {
		// The sides carried on below the tip enclose the same angle.
		apex := -coneMouth / math.Tan(cone/2*math.Pi/180)
		d.path(Measure, geom.Point{X: coneMouth, Y: 0}, geom.Point{X: -2.6, Y: apex - 2.6})
		d.path(Measure, geom.Point{X: -coneMouth, Y: 0}, geom.Point{X: 2.6, Y: apex - 2.6})
		d.angle(0, apex, 270-cone/2, cone, 3.2)
		d.text(0, -deep-1.6)
	},
	"seat.relief_diameter": func(d *drafter) { d.level(-deep-1.6, -relief, relief, -deep) },
}

// tipOf returns the height of a drill's point.
func tipOf(radius, included float64) float64 { return radius / math.Tan(included/2*math.Pi/180) }

// angle draws an arc about a place from one angle through another, with an
// arrowhead at either end; degrees anticlockwise from the right.
func (d *drafter) angle(x, y, start, sweep, r float64) {
	arc := drawing.Arc{Centre: d.at(x, y), Radius: r, Start: start, Sweep: sweep}
	if d.below {
		arc.Start = math.Mod(360-start-sweep+360, 360)
	}
	d.add(Measure, arc)
	for _, end := range [2]struct{ at, way float64 }{{start, -1}, {start + sweep, 1}} {
		sin, cos := math.Sincos(end.at * math.Pi / 180)
		d.arrow(geom.Point{X: x + r*cos, Y: y + r*sin}, geom.Point{X: -end.way * sin, Y: end.way * cos})
	}
}

// drawHome draws the ball at home on its seat. The relief hole and the chamfer
// are shown where the seat has them or they are asked for.
func drawHome(d *drafter, s plan.Seat, path string) {
	d.frame(-wide-0.5, -deep-4.2, wide+11.2, high+0.6)
	d.rim, d.tool, d.floor = mouth, mouth, cylinder
	countersunk := path != "seat.drill_point" && path != "seat.chamfer" && (path == "seat.countersink_angle" || s.Form == plan.Countersunk)
	if countersunk {
		d.rim, d.tool, d.floor = coneMouth, coneMouth, coneFloor
	}
	if !countersunk && (path == "seat.chamfer" || s.Chamfer > 0) {
		d.tool = mouth - chamfer
	}
	profile := d.drilled(s.DrillPoint == 180 && path != "seat.drill_point")
	if countersunk {
		profile = []geom.Point{{X: d.rim}, {X: coneMouth - coneFloor, Y: -coneFloor}, {Y: -coneFloor}}
	}
	if path == "seat.relief_diameter" || s.ReliefDiameter > 0 {
		profile = relieved(profile)
	}
	d.part(Hatch, 1.15, true, mirrored(profile, wide, -deep))

	centre := math.Sqrt(ballRadius*ballRadius - d.rim*d.rim)
	if countersunk {
		sin, cos := math.Sincos(cone / 2 * math.Pi / 180)
		centre = ballRadius/sin - d.rim*cos/sin
	}
	d.pocket(gap, high)
	d.spring(centre+ballRadius, high)
	d.ball(0, centre, ballRadius)
	d.path(Axis, geom.Point{Y: -deep - 0.6}, geom.Point{Y: high + 0.4})
}

// drilled returns the right side of a drilled seat, from its rim down to the
// axis.
func (d *drafter) drilled(flat bool) []geom.Point {
	out := []geom.Point{{X: d.rim}}
	if d.tool < d.rim {
		out = append(out, geom.Point{X: d.tool, Y: d.tool - d.rim})
	}
	tip := tipOf(d.tool, point)
	if flat {
		tip = 0
	}
	return append(out, geom.Point{X: d.tool, Y: -cylinder}, geom.Point{Y: -cylinder - tip})
}

// relieved returns a profile that ends in a smaller hole right through, from
// where it has come in as far as that.
func relieved(profile []geom.Point) []geom.Point {
	out := profile[:1:1]
	for _, p := range profile[1:] {
		last := out[len(out)-1]
		if p.X < relief {
			k := (last.X - relief) / (last.X - p.X)
			out = append(out, geom.Point{X: relief, Y: last.Y + k*(p.Y-last.Y)})
			break
		}
		out = append(out, p)
	}
	return append(out, geom.Point{X: relief, Y: -deep})
}
