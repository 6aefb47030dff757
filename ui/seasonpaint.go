package ui

import (
	"math"

	"stopwright/detent/plate"
	"stopwright/ui/ink"
)

// paintSeason paints the clearance between turntable and collar from dry to damp
// air: below nothing the table binds. Without a collar there is nothing to paint.
func (v *truthView) paintSeason(c *ink.Canvas, d float64, p ink.Palette) {
	p0 := v.w.store.Plan()
	air := p0.Shop.Humidity
	s := plate.NewSeason(p0)
	if !s.HasCollar || air.High <= air.Low {
		return
	}
	t := v.w.words.Text
	const points = 40
	at := func(i int) float64 { return air.Low + (air.High-air.Low)*float64(i)/points }
	var values [points + 1]float64
	low, high := 0.0, 0.1
	for i := range values {
		values[i], _ = plate.ClearanceAt(p0, at(i))
		low, high = math.Min(low, values[i]), math.Max(high, values[i])
	}
	room := 0.2 * (high - low)
	g := newPlot(c, d, p, air.Low, air.High, low-room, high+room)
	g.sign, g.decimal = " %", v.w.decimal
	if bottom := g.at(air.Low, 0); bottom.Y < g.at(air.Low, g.y0).Y {
		c.Fill(bottom, g.at(air.High, g.y0), alphaInk(p.Fault, 0.12))
		hatchBinding(g, p)
	}
	g.axes(t("truth.axis.humidity"), t("truth.axis.clearance"))
	g.curve(points+1, func(i int) (float64, float64) { return at(i), values[i] }, ink.ThickLine, ink.Stroke{Colour: p.Ink})
	if air.MadeAt >= air.Low && air.MadeAt <= air.High {
		g.upright(air.MadeAt, t("truth.season.made"), ink.Stroke{Colour: p.Accent})
	}
}

// hatchBinding hatches where the table binds, so that it is not told by colour
// alone.
func hatchBinding(g plot, p ink.Palette) {
	top, bottom := g.at(g.x0, 0).Y, g.at(g.x0, g.y0).Y
	step := 9 * g.d
	for x := g.left; x < g.left+g.wide; x += step {
		run := min(bottom-top, g.left+g.wide-x)
		g.c.Line(ink.Px{X: x, Y: bottom}, ink.Px{X: x + run, Y: bottom - run}, ink.ThinLine*g.d, alphaInk(p.Fault, 0.5), nil)
	}
}
