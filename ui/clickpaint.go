package ui

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// paintSection paints the section with the ball where the table's turn puts it.
func (v *clickView) paintSection(c *ink.Canvas, d float64, p ink.Palette) {
	pl := v.w.store.Report().Plate
	section := drawing.Section(pl, v.catch, v.offset())
	// Ball and seat fill the picture; what lies farther off runs out of it.
	ball := v.click.Setup.BallDiameter
	part := drawing.Bounds{Min: geom.Point{X: -1.3 * ball, Y: -1.5 * ball}, Max: geom.Point{X: 1.3 * ball, Y: 1.4 * ball}}
	size := c.Img.Bounds().Size()
	view := ink.Fit(part, float64(size.X)/d, float64(size.Y)/d, 4).Dense(d)
	base := p.Style()
	ink.Paint(c, section, view, func(e drawing.Entity) ink.Stroke {
		s := base(e)
		switch {
		case e.Item.Kind == drawing.BallItem:
			s.Colour, s.Fill = p.Accent, alphaInk(p.Accent, 0.25)
		case e.Layer == drawing.PocketBody || e.Layer == drawing.PocketRim:
			s.Colour, s.Width = p.Faint, ink.ThinLine
		case e.Layer == drawing.Centres:
			s.Colour, s.Width = p.Ink, ink.ThinLine
		}
		return s
	})
	v.contactPoint(c, view, p)
}

// contactPoint marks where the ball touches.
func (v *clickView) contactPoint(c *ink.Canvas, view ink.View, p ink.Palette) {
	s := v.offset()
	at := v.click.At(s)
	side := 1.0
	if s > 0 {
		side = -1 // the seat stands to the right: the ball touches its left rim
	}
	r := v.click.Setup.BallDiameter / 2
	sin, cos := at.Angle.SinCos()
	place := geom.Point{X: side * r * sin, Y: at.Height - r*cos}
	d := density(view)
	c.Disc(view.Pixel(place), 3*d, p.Fault)
	if s == 0 { // at home both sides touch
		c.Disc(view.Pixel(place.MirrorX()), 3*d, p.Fault)
	}
}

// paintTorque paints the torque of leaving and of coming home, the table's
// drag, and where the ball begins to drop.
func (v *clickView) paintTorque(c *ink.Canvas, d float64, p ink.Palette) {
	t := v.w.words.Text
	top := v.click.Drag
	for _, k := range v.curves {
		for _, s := range k.samples {
			if !s.Locked {
				top = math.Max(top, s.Out)
			}
		}
	}
	low := 0.0
	for _, s := range v.curves[0].samples {
		low = math.Min(low, s.Home)
	}
	reach := v.angle(v.reach())
	g := newPlot(c, d, p, -reach, reach, low*1.1, top*1.15+1e-9)
	g.decimal = v.w.decimal
	v.torque.plot = g
	g.axes(t("click.axis.turn"), t("click.axis.torque"))
	faint := ink.Stroke{Colour: p.Faint}
	g.level(v.click.Drag, t("click.drag"), faint)
	capture := math.Min(v.click.Capture().Degrees(), reach)
	g.upright(capture, "", faint)
	g.upright(-capture, t("click.capture"), faint)
	// As it may come out, thin; as planned, thick.
	for i := 1; i >= 0; i-- {
		if i == 1 && v.whatIf.None() {
			continue
		}
		width := []float64{ink.ThickLine, ink.ThinLine}[i]
		samples := v.curves[i].samples
		for _, side := range [2]float64{1, -1} {
			out := func(k int) (float64, float64) {
				if samples[k].Locked {
					return 0, math.NaN()
				}
				return side * samples[k].Turn.Degrees(), samples[k].Out
			}
			home := func(k int) (float64, float64) { return side * samples[k].Turn.Degrees(), samples[k].Home }
			g.curve(len(samples), out, width, ink.Stroke{Colour: p.Ink})
			g.curve(len(samples), home, width, ink.Stroke{Colour: p.Accent})
		}
	}
	g.legend([]string{t("click.out"), t("click.home")}, []ink.Stroke{{Colour: p.Ink}, {Colour: p.Accent}})
}

// fromStop returns the table's turn from the stop, in degrees, and whether the
// torque there is drawn.
func (v *clickView) fromStop() (x float64, drawn bool) {
	x = (v.w.store.Turn() - v.stop()).Degrees()
	return x, math.Abs(x) <= v.angle(v.reach())
}

// legend names curves in the upper right corner, each beside a piece of it.
func (g plot) legend(names []string, strokes []ink.Stroke) {
	size := letter * g.d
	for i, name := range names {
		y := g.top + (float64(i)*15+8)*g.d
		right := g.left + g.wide
		width := g.c.TextWidth(name, size)
		g.c.Line(ink.Px{X: right - width - 26*g.d, Y: y}, ink.Px{X: right - width - 6*g.d, Y: y}, ink.ThickLine*g.d, strokes[i].Colour, nil)
		g.c.Text(ink.Px{X: right, Y: y + size/2}, size, 0, drawing.Right, name, strokes[i].Colour)
	}
}

// paintTravel paints the torque that turns the table onward through its whole
// travel: below 0 a ball pulls it along.
func (v *clickView) paintTravel(c *ink.Canvas, d float64, p ink.Palette) {
	pl := v.w.store.Report().Plate
	from, to := pl.Plan.Travel.From, pl.Plan.Travel.To
	if to-from > 360 {
		from, to = -180, 180
	}
	if to <= from {
		return
	}
	n := max(2, int((to-from)/travelStep)+1)
	values := make([]float64, n)
	low, high := 0.0, 1e-9
	for i := range values {
		values[i] = pl.Onward(geom.Angle(from + (to-from)*float64(i)/float64(n-1)))
		low, high = math.Min(low, values[i]), math.Max(high, values[i])
	}
	g := newPlot(c, d, p, from, to, low*1.1, high*1.15)
	g.decimal = v.w.decimal
	v.travel.plot = g
	g.axes(v.w.words.Text("click.axis.table"), v.w.words.Text("click.axis.torque"))
	g.curve(n, func(i int) (float64, float64) { return from + (to-from)*float64(i)/float64(n-1), values[i] },
		ink.ThinLine, ink.Stroke{Colour: p.Ink})
}

// inTravel returns the table's turn in degrees, and whether the travel that is
// drawn has it.
func (v *clickView) inTravel() (x float64, drawn bool) {
	x, g := v.w.store.Turn().Degrees(), v.travel.plot
	return x, g.x0 <= x && x <= g.x1
}

// travelStep is how finely (degrees) the whole travel is drawn: several points
// to a seat on any ring that can be made by hand.
const travelStep = 0.1
