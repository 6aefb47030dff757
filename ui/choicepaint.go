package ui

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/plate"
	"stopwright/detent/stock"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// paintChoices paints what the suggestion weighs: for each drill that would do,
// how hard the ball holds, and how much of that push it gives back on the way
// home. The chosen drill and the suggested one are marked.
func (v *clickView) paintChoices(c *ink.Canvas, d float64, p ink.Palette) {
	pl := v.w.store.Report().Plate
	all := pl.SeatChoices([]int{v.catch})
	if len(all) == 0 {
		at := ink.Px{X: 10 * d, Y: 24 * d}
		c.Text(at, letter*d, 0, drawing.Left, v.w.words.Text("click.nosuggest"), p.Ink)
		return
	}
	most, low, high := 0.0, 0.0, 0.0
	for _, s := range all {
		most = math.Max(most, s.Holding)
		low, high = math.Min(low, share(s)), math.Max(high, share(s))
	}
	g := newPlot(c, d, p, 0, most*1.1+1e-9, low*1.1, high*1.2+1)
	g.sign, g.decimal = "", v.w.decimal
	g.axes(v.w.words.Text("click.axis.holding"), v.w.words.Text("click.axis.return"))
	g.curve(len(all), func(i int) (float64, float64) { return all[i].Holding, share(all[i]) }, ink.ThinLine, ink.Stroke{Colour: p.Faint})

	var taken spots
	best, found := pl.BestSeat([]int{v.catch}, nil)
	name := func(s plate.SeatChoice, key string, up float64, colour ink.Stroke) {
		at := g.at(s.Holding, share(s))
		text := v.w.words.Text(key, words.Args{"Drill": words.MM(s.Seat.Diameter)})
		at.Y += up * d
		half := c.TextWidth(text, letter*d) / 2
		at.X = math.Min(at.X, g.left+g.wide-half) // not out of the picture
		if taken.take(at, half+8*d, letter*d) {   // with room around it
			c.Text(at, letter*d, 0, drawing.Centre, text, colour.Colour)
		}
	}
	// The two that matter take their places first.
	if found {
		at := g.at(best.Holding, share(best))
		c.Circle(at, 7*d, ink.ThickLine*d, p.Accent, nil)
		name(best, "click.choice.suggested", -16, ink.Stroke{Colour: p.Accent})
	}
	for _, s := range all {
		if math.Abs(s.Seat.Diameter-pl.Plan.Seat.Diameter) <= stock.SameSize {
			c.Disc(g.at(s.Holding, share(s)), 5*d, p.Fault)
			name(s, "click.choice.chosen", 16, ink.Stroke{Colour: p.Fault})
		}
	}
	for _, s := range all {
		c.Disc(g.at(s.Holding, share(s)), 2.5*d, p.Ink)
		name(s, "click.choice", -13, ink.Stroke{Colour: p.Faint})
	}
}

// share returns how much of the push out of a stop comes back on the way home,
// in per cent.
func share(s plate.SeatChoice) float64 { return 100 * s.Return() }
