package ui

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/proving"
	"stopwright/ui/ink"
)

// paint paints what each stop was measured off by, with the law that the stops
// have in common; a seat that is out is a cross.
func (v *proofPane) paint(c *ink.Canvas, d float64, p ink.Palette) {
	if !v.proved {
		return
	}
	seats := slices.Clone(v.proving.Seats)
	stop := func(s proving.Seat) float64 { return v.proving.Stops[s.Stop].Degrees() }
	slices.SortFunc(seats, func(a, b proving.Seat) int { return cmp.Compare(stop(a), stop(b)) })
	target := v.w.store.Plan().Shop.Target
	low, high := 0.0, 0.0
	for _, s := range seats {
		low, high = min(low, s.Difference, s.Difference-s.Own), max(high, s.Difference, s.Difference-s.Own)
	}
	from, to := stop(seats[0]), stop(seats[len(seats)-1])
	pad, aside := (high-low)*0.15+target*0.3+1e-3, math.Max(2, (to-from)*0.05)
	g := newPlot(c, d, p, from-aside, to+aside, low-pad, high+pad+2*headroom*(high-low))
	g.decimal = v.w.decimal
	g.axes(v.w.words.Text("click.axis.table"), v.w.words.Text("reading.axis"))
	faint := ink.Stroke{Colour: p.Faint}
	if v.proving.Common.Is+target < g.y1 {
		g.level(v.proving.Common.Is+target, v.w.words.Text("reading.target"), faint)
	}
	if v.proving.Common.Is-target > g.y0 {
		g.level(v.proving.Common.Is-target, "", faint)
	}
	g.curve(len(seats), func(i int) (float64, float64) { return stop(seats[i]), seats[i].Difference - seats[i].Own },
		ink.ThickLine, ink.Stroke{Colour: p.Accent})
	for _, s := range seats {
		if s.Out {
			v.cross(g, stop(s), s.Difference)
			continue
		}
		c.Disc(g.at(stop(s), s.Difference), 3*d, p.Ink)
	}
	g.legend([]string{v.w.words.Text("reading.measured"), v.w.words.Text("reading.law")}, []ink.Stroke{{Colour: p.Ink}, {Colour: p.Accent}})
}

// cross marks a seat that is out.
func (v *proofPane) cross(g plot, x, y float64) {
	at, arm := g.at(x, y), 5*g.d
	for _, s := range [2]float64{1, -1} {
		g.c.Line(ink.Px{X: at.X - arm, Y: at.Y - s*arm}, ink.Px{X: at.X + arm, Y: at.Y + s*arm}, ink.ThickLine*g.d, g.p.Fault, nil)
	}
}

// stopChoices returns the stops of the plate as they are told, ascending.
func (w *Window) stopChoices() (angles []geom.Angle, names []string) {
	angles = detent.StopAngles(w.store.Report().Plate)
	for _, a := range angles {
		names = append(names, w.words.Angle(a.Degrees()))
	}
	return angles, names
}
