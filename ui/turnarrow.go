package ui

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// turnArrow draws, just outside the turntable's edge, which way the table turns
// towards positive angles.
func (sc scene) turnArrow(c *ink.Canvas, v ink.View, p ink.Palette) {
	const (
		outside = 11.0 // px of layout from the edge
		sweep   = 26.0 // px of layout along the edge
		head    = 5.0  // px of layout: length of the arrowhead
	)
	d := density(v)
	rim := plate.OutlineOf(sc.plate.Plan, plan.PartTurntable).Diameter / 2
	radius := rim + outside*d/v.Scale // mm
	turn := geom.FromRadians(sweep * d / v.Scale / radius)
	dir := geom.Angle(1)
	if sc.plate.Plan.Arrangement.PositiveTurn == plan.Counterclockwise {
		dir = -1
	}
	if sc.view().Mirrored(sc.part) {
		dir = -dir // the turntable, seen from its underside
	}
	at := func(r float64, az geom.Angle) ink.Px { return v.Pixel(geom.Polar(r, az)) }
	arc := geom.ArcBetween(radius, 0, dir*turn)
	c.Arc(v.Origin, radius*v.Scale, drawing.FromAzimuth(arc.From+arc.Sweep), arc.Sweep.Degrees(), p.Weight(ink.ThinLine)*d, p.Ink, nil)
	tip := at(radius, dir*turn)
	back := dir * (turn - geom.FromRadians(head*d/v.Scale/radius))
	half := head / 2 * d / v.Scale
	c.Polygon([]ink.Px{tip, at(radius+half, back), at(radius-half, back)}, p.Ink)
	sign := at(radius, dir*turn+dir*geom.FromRadians(7*d/v.Scale/radius))
	c.Text(ink.Px{X: sign.X, Y: math.Round(sign.Y)}, letter*d, 0, drawing.Centre, "+", p.Ink)
}
