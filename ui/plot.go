package ui

import (
	"math"

	"stopwright/detent/measure"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// plot draws curves on axes of round numbers.
type plot struct {
	c          *ink.Canvas
	d          float64 // px of the canvas to a px of layout
	p          ink.Palette
	x0, x1     float64             // range across
	sign       string              // behind the figures across
	decimal    func(string) string // writes a number as the window does; nil: with a point
	y0, y1     float64             // range up
	left, top  float64             // of the plotting area, px
	wide, high float64
}

// newPlot lays out a plot on the whole canvas, with room for its figures.
func newPlot(c *ink.Canvas, d float64, p ink.Palette, x0, x1, y0, y1 float64) plot {
	const left, right, top, bottom = 46, 14, 22, 34
	size := c.Img.Bounds().Size()
	return plot{
		c: c, d: d, p: p, x0: x0, x1: x1, y0: y0, y1: y1, sign: "°",
		left: left * d, top: top * d,
		wide: float64(size.X) - (left+right)*d, high: float64(size.Y) - (top+bottom)*d,
	}
}

// at returns where a value lies on the canvas.
func (g plot) at(x, y float64) ink.Px {
	return ink.Px{
		X: g.left + g.wide*(x-g.x0)/(g.x1-g.x0),
		Y: g.top + g.high*(g.y1-y)/(g.y1-g.y0),
	}
}

// axes draws the frame, round figures along it and the names of both.
func (g plot) axes(across, up string) {
	thin := ink.ThinLine * g.d
	size := letter * g.d
	for _, y := range ticks(g.y0, g.y1, 5) {
		g.c.Line(g.at(g.x0, y), g.at(g.x1, y), thin, alphaInk(g.p.Faint, 0.35), nil)
		at := g.at(g.x0, y)
		g.c.Text(ink.Px{X: at.X - 6*g.d, Y: at.Y + size/2}, size, 0, drawing.Right, g.figure(y), g.p.Faint)
	}
	g.c.Line(g.at(g.x0, 0), g.at(g.x1, 0), thin, g.p.Faint, nil)
	g.c.Line(g.at(g.x0, g.y0), g.at(g.x0, g.y1), thin, g.p.Faint, nil)
	g.c.Text(ink.Px{X: g.left - 38*g.d, Y: g.top - 8*g.d}, size, 0, drawing.Left, up, g.p.Ink)
	g.foot(across)
}

// foot draws round figures along the foot of the plot, and what they are.
func (g plot) foot(across string) {
	thin := ink.ThinLine * g.d
	size := letter * g.d
	const apart, most = 48, 7 // px of layout between figures; figures where there is room
	for _, x := range ticks(g.x0, g.x1, max(2, min(most, int(g.wide/(apart*g.d))))) {
		at := g.at(x, g.y0)
		g.c.Line(at, ink.Px{X: at.X, Y: at.Y + 4*g.d}, thin, g.p.Faint, nil)
		g.c.Text(ink.Px{X: at.X, Y: at.Y + 8*g.d}, size, 0, drawing.Top, g.figure(x)+g.sign, g.p.Faint)
	}
	end := g.at(g.x1, g.y0)
	g.c.Text(ink.Px{X: end.X, Y: end.Y + 30*g.d}, size, 0, drawing.Right, across, g.p.Ink)
}

// figure writes a round number.
func (g plot) figure(x float64) string {
	text := measure.Trim(x, 3)
	if g.decimal != nil {
		text = g.decimal(text)
	}
	return text
}

// curve draws a line through values; a gap where y is not a number.
func (g plot) curve(n int, value func(i int) (x, y float64), width float64, s ink.Stroke) {
	for i := 1; i < n; i++ {
		x0, y0 := value(i - 1)
		x1, y1 := value(i)
		if !math.IsNaN(y0) && !math.IsNaN(y1) {
			g.c.Line(g.at(x0, y0), g.at(x1, y1), width*g.d, s.Colour, nil)
		}
	}
}

// level draws a dashed line across at a value, named at its left end.
func (g plot) level(y float64, name string, s ink.Stroke) {
	g.c.Line(g.at(g.x0, y), g.at(g.x1, y), ink.ThinLine*g.d, s.Colour, []float64{6 * g.d, 4 * g.d})
	at := g.at(g.x0, y)
	g.c.Text(ink.Px{X: at.X + 4*g.d, Y: at.Y + 13*g.d}, letter*g.d, 0, drawing.Left, name, s.Colour)
}

// upright draws a dashed line up at a value, named at its top.
func (g plot) upright(x float64, name string, s ink.Stroke) {
	g.c.Line(g.at(x, g.y0), g.at(x, g.y1), ink.ThinLine*g.d, s.Colour, []float64{2 * g.d, 3 * g.d})
	at := g.at(x, g.y1)
	g.c.Text(ink.Px{X: at.X + 2*g.d, Y: at.Y - 4*g.d}, letter*g.d, 0, drawing.Left, name, s.Colour)
}

// ticks returns about n round values in a range.
func ticks(lo, hi float64, n int) []float64 {
	if !(hi > lo) {
		return nil
	}
	step := math.Pow(10, math.Floor(math.Log10((hi-lo)/float64(n))))
	for _, k := range [3]float64{2, 5, 10} {
		if (hi-lo)/step <= float64(n) {
			break
		}
		step = math.Pow(10, math.Floor(math.Log10((hi-lo)/float64(n)))) * k
	}
	var out []float64
	for i := math.Ceil(lo/step - 1e-9); i*step <= hi+step*1e-9; i++ {
		out = append(out, i*step+0)
	}
	return out
}
