package pdf

import (
	"math"

	"stopwright/detent/geom"
)

// mostSweep is the most that one curve stands for, degrees. A cubic curve with
// ends and tangents of the arc and arms of 4/3 tan(sweep/4) leaves a circle by
// less than 5 parts in a million at 45 degrees: exact mathematics. (The
// library's own arcs are up to 3 parts in a thousand too small.)
const mostSweep = 45.0

// arc adds part of a circle to the path, anticlockwise from start, degrees.
func (p *pen) arc(centre geom.Point, radius, start, sweep float64) {
	n := int(math.Ceil(sweep / mostSweep))
	step := sweep / float64(n)
	arm := radius * 4 / 3 * math.Tan(step/4*math.Pi/180)
	place := func(deg float64) (at, along geom.Point) {
		out := geom.Polar(1, geom.Angle(90-deg))
		return centre.Add(out.Scale(radius)), geom.Point{X: -out.Y, Y: out.X}.Scale(arm)
	}
	at, along := place(start)
	p.f.MoveTo(at.X, p.down(at))
	for i := range n {
		to, onward := place(start + step*float64(i+1))
		a, b := at.Add(along), to.Sub(onward)
		p.f.CurveBezierCubicTo(a.X, p.down(a), b.X, p.down(b), to.X, p.down(to))
		at, along = to, onward
	}
}
