package ui

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/cutline"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// paintPlate paints tool and fence over the plate with the table turned, and
// says how much larger than it is the wander is drawn.
func (v *toolPane) paintPlate(c *ink.Canvas, d float64, p ink.Palette) {
	if !v.hasCut {
		return
	}
	scene := drawing.Setting(v.w.store.Report().Plate, v.cut, v.w.store.Turn())
	size := c.Img.Bounds().Size()
	// The same room at every turn, or the picture would breathe.
	far := math.Max(v.cut.Farthest(v.cut.Body), plate.OutlineOf(v.w.store.Plan(), "base").Reach(90))
	room := drawing.Bounds{Min: geom.Point{X: -far, Y: -far * 0.8}, Max: geom.Point{X: far, Y: far * 0.8}}
	const margin, foot = 8, 20 // px of layout; a line of text below
	view := ink.Fit(room, float64(size.X)/d, float64(size.Y)/d-foot, margin).Dense(d)
	base := p.Style()
	ink.Paint(c, scene.Drawing, view, func(e drawing.Entity) ink.Stroke {
		s := base(e)
		s.Hatch = ink.Hatch{}
		switch e.Layer {
		case drawing.Witness:
			s.Colour, s.Width, s.Fill = p.Accent, p.Weight(ink.ThinLine), alphaInk(p.Accent, 0)
		case drawing.Seats:
			s.Colour, s.Width = p.Ink, p.Weight(ink.ThickLine)
		case drawing.Outline, drawing.Pivot, drawing.Screws, drawing.PocketRim:
			s.Colour, s.Width = p.Ink, p.Weight(ink.ThinLine)
		}
		return s
	})
	key := "setting.scale"
	if scene.Wander == 0 {
		key = "setting.scale.none"
	}
	text := v.w.words.Text(key, words.Args{"Times": measure.Trim(scene.Wander, 0), "Wander": words.MM(v.cut.Travel.Wander())})
	c.Text(ink.Px{X: 8 * d, Y: float64(size.Y) - 7*d}, letter*d, 0, drawing.Left, text, p.Ink)
}

// paintWander paints where the cut crosses the fence over the table's angle: as
// planned, as the marks show it, and with the fence at its best for that.
func (v *toolPane) paintWander(c *ink.Canvas, d float64, p ink.Palette) {
	n := len(v.cut.Crossings)
	if !v.hasCut || v.cut.Travel.Leans == 0 {
		return
	}
	u := v.w.units()
	from, to := v.cut.Crossings[0].Angle.Degrees(), v.cut.Crossings[n-1].Angle.Degrees()
	lines := []cutline.Line{v.cut.Line}
	names := []string{v.w.words.Text("setting.planned")}
	strokes := []ink.Stroke{{Colour: p.Ink}}
	if f := v.cut.Marks; f != nil {
		lines = append(lines, f.Line, cutline.Line{Offset: f.Offset, Fence: f.Best.At})
		names = append(names, v.w.words.Text("setting.found"), v.w.words.Text("setting.after"))
		strokes = append(strokes, ink.Stroke{Colour: p.Fault}, ink.Stroke{Colour: p.Accent})
	}
	low, high := math.Inf(1), math.Inf(-1)
	for _, l := range lines {
		t := l.Travel(v.cut.Leans())
		low, high = min(low, t.Least), max(high, t.Most)
	}
	plain := u.Unit().FromMillimetres
	pad := (high-low)*0.12 + 0.05
	high += (high - low) * headroom * float64(len(names)) // for the legend
	aside := math.Max(1, (to-from)*0.04)
	g := newPlot(c, d, p, from-aside, to+aside, plain(low-pad), plain(high+pad))
	g.decimal = v.w.decimal
	g.axes(v.w.words.Text("click.axis.table"), u.LengthSign())
	for i, l := range lines {
		v.curve(g, l, from, to, plain, strokes[i])
	}
	for _, x := range v.cut.Crossings {
		if x.Meets {
			c.Disc(g.at(x.Angle.Degrees(), plain(x.X)), 2.5*d, p.Ink)
		}
	}
	if f := v.cut.Marks; f != nil {
		for _, m := range v.w.store.Plan().Tool.Marks {
			if m.Angle >= from && m.Angle <= to {
				v.mark(g, m.Angle, plain(m.X-f.Datum))
			}
		}
	}
	g.legend(names, strokes)
	turn := v.w.store.Turn().Degrees()
	if turn >= from && turn <= to {
		c.Line(g.at(turn, g.y0), g.at(turn, g.y1), ink.ThinLine*d, p.Faint, nil)
	}
}

// headroom is how much of a plot's range its legend takes, a name.
const headroom = 0.12

// curve draws where a line crosses the fence from one turn to another.
func (v *toolPane) curve(g plot, l cutline.Line, from, to float64, plain func(float64) float64, s ink.Stroke) {
	const pieces = 120 // smooth at any size of window
	width := ink.ThickLine
	if l == v.cut.Line {
		width = ink.ThinLine
	}
	g.curve(pieces+1, func(i int) (float64, float64) {
		turn := from + (to-from)*float64(i)/pieces
		x, ok := l.Crossing(plate.Lean(v.w.store.Plan(), geom.Angle(turn)))
		if !ok {
			return turn, math.NaN()
		}
		return turn, plain(x)
	}, width, s)
}

// mark draws a measured mark: a cross, which no curve has.
func (v *toolPane) mark(g plot, x, y float64) {
	at, arm := g.at(x, y), 4*g.d
	for _, s := range [2]float64{1, -1} {
		g.c.Line(ink.Px{X: at.X - arm, Y: at.Y - s*arm}, ink.Px{X: at.X + arm, Y: at.Y + s*arm}, ink.ThickLine*g.d, g.p.Fault, nil)
	}
}
