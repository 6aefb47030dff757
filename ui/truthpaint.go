package ui

import (
	"image/color"
	"math"

	"stopwright/detent/budget"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// shown returns the errors of the stop that the page is about, drilled and
// zeroed. At the reference, which is off by nothing after zeroing, the second is
// false.
func (v *truthView) shown() (drilled, zeroed plate.StopError, hasDrilled, hasZeroed bool) {
	if v.stop < 0 {
		return
	}
	t := v.w.store.Report().Plate.Trueness
	drilled, hasDrilled = t.Drilled(v.stop)
	zeroed, hasZeroed = t.Zeroed(v.stop)
	return drilled, zeroed, hasDrilled, hasZeroed && v.stop != t.Reference
}

// paintCauses paints a bar for each cause, as long as its share, the largest
// filled and the others hatched.
func (v *truthView) paintCauses(c *ink.Canvas, d float64, p ink.Palette) {
	e, zeroed, ok, hasZeroed := v.shown()
	if !ok {
		return
	}
	if hasZeroed {
		e = zeroed
	}
	most, _ := chiefCause(e)
	size := c.Img.Bounds().Size()
	const margin, figure = 10, 46 // px of layout; room for a share in figures
	left, right := margin*d, float64(size.X)-(margin+figure)*d
	step := float64(size.Y) / float64(plate.Causes)
	for cause := range plate.Causes {
		share := e.Share(cause)
		top := step*float64(cause) + 6*d
		c.Text(ink.Px{X: left, Y: top + 13*d}, letter*d, 0, drawing.Left, v.w.causeName(cause), p.Ink)
		from, to := ink.Px{X: left, Y: top + 19*d}, ink.Px{X: left + (right-left)*share, Y: top + 19*d + min(16*d, step-30*d)}
		if cause == most {
			c.Fill(from, to, p.Accent)
		} else {
			c.Fill(from, to, alphaInk(p.Ink, 0.15))
		}
		outlined(c, from, to, p.Weight(ink.ThinLine)*d, p.Ink)
		c.Text(ink.Px{X: to.X + 6*d, Y: (from.Y+to.Y)/2 + letter*d/2}, letter*d, 0, drawing.Left, percent(share), p.Ink)
	}
}

// outlined draws the outline of a rectangle.
func outlined(c *ink.Canvas, a, b ink.Px, width float64, colour color.RGBA) {
	corners := [4]ink.Px{a, {X: b.X, Y: a.Y}, b, {X: a.X, Y: b.Y}}
	for i, from := range corners {
		c.Line(from, corners[(i+1)%4], width, colour, nil)
	}
}

// bars is how many bars a histogram of trials is painted with.
const bars = 60

// paintSpread paints how the stop's error is spread: the trials as bars, and over
// them what the formulas say, after zeroing thick and as drilled thin; and the
// target to either side.
func (v *truthView) paintSpread(c *ink.Canvas, d float64, p ink.Palette) {
	drilled, zeroed, ok, hasZeroed := v.shown()
	if !ok {
		return
	}
	t := v.w.words.Text
	target := v.w.store.Plan().Shop.Target
	widest := max(drilled.Interval95, zeroed.Interval95).Degrees()
	reach := max(1.6*widest, min(1.25*target, 4*widest), 1e-6)
	const points = 240
	at := func(i int) float64 { return reach * (2*float64(i)/points - 1) }
	curve := func(s budget.Sum) (values [points + 1]float64, top float64) {
		dist := s.Distribution()
		for i := range values {
			values[i] = dist.Density(at(i))
			top = math.Max(top, values[i])
		}
		return values, top
	}
	thin, topThin := curve(drilled.Sum())
	thick, topThick := curve(zeroed.Sum())
	if !hasZeroed {
		topThick = 0
	}
	top := max(topThin, topThick, 1e-9)
	g := newPlot(c, d, p, -reach, reach, 0, 1.5*top)
	g.decimal = v.w.decimal
	g.left, g.wide = 14*d, g.wide+32*d // no figures at the side: only the shape counts
	v.paintTrials(g, hasZeroed)
	g.foot(t("truth.axis.off"))
	c.Line(g.at(-reach, 0), g.at(reach, 0), ink.ThinLine*d, p.Faint, nil)
	g.curve(points+1, func(i int) (float64, float64) { return at(i), thin[i] }, ink.ThinLine, ink.Stroke{Colour: p.Accent})
	names, strokes := []string{t("truth.legend.drilled")}, []ink.Stroke{{Colour: p.Accent}}
	if hasZeroed {
		g.curve(points+1, func(i int) (float64, float64) { return at(i), thick[i] }, ink.ThickLine, ink.Stroke{Colour: p.Ink})
		names, strokes = append(names, t("truth.legend.zeroed")), append(strokes, ink.Stroke{Colour: p.Ink})
	}
	if target <= reach {
		for _, x := range [2]float64{-target, target} { // below the legend
			c.Line(g.at(x, 0), g.at(x, 1.1*top), p.Weight(ink.ThinLine)*d, p.Fault, []float64{2 * d, 3 * d})
		}
		at := g.at(-target, 1.1*top)
		c.Text(ink.Px{X: at.X + 2*d, Y: at.Y - 4*d}, letter*d, 0, drawing.Left, t("truth.target"), p.Fault)
	}
	g.legend(names, strokes)
}

// paintTrials paints the histogram of the trials, once they are done.
func (v *truthView) paintTrials(g plot, zeroed bool) {
	r, done := v.w.store.Studied()
	if !done || r.Sampled == nil {
		return
	}
	e := r.Sampled.Drilled[v.stop]
	if zeroed {
		e = r.Sampled.Zeroed[v.stop]
	}
	low, width, density := e.Bars(bars)
	for i, y := range density {
		from, to := low+width*float64(i), low+width*float64(i+1)
		if from < g.x0 || to > g.x1 || y == 0 {
			continue
		}
		a, b := g.at(from, y), g.at(to, 0)
		b.X -= g.d // a gap between bars
		g.c.Fill(a, b, alphaInk(g.p.Faint, 0.35))
	}
}
