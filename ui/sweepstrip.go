package ui

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"stopwright/detent/check"
	"stopwright/detent/plate"
	"stopwright/detent/room"
	"stopwright/ui/ink"
)

// sweepStrip shows over the turning bar what a whole sweep of the table meets: a
// line at each stop, longer where balls home, and a cross where a ball clicks
// falsely.
type sweepStrip struct {
	*sketch
	b     *turnBar
	of    *plate.Plate // whose false clicks these are
	false []room.FalseClick
}

const stripHeight = 13

func newSweepStrip(b *turnBar) *sweepStrip {
	s := &sweepStrip{b: b}
	s.sketch = newSketch(b.w, fyne.NewSize(60, stripHeight), s.paintStrip)
	return s
}

// refresh works out the false clicks of a plate that is new.
func (s *sweepStrip) refresh() {
	if pl := s.b.w.store.Report().Plate; pl != s.of {
		s.of, s.false = pl, check.FalseClicks(pl)
		s.Refresh()
	}
}

// paintStrip paints the strip to the scale of the slider below it.
func (s *sweepStrip) paintStrip(c *ink.Canvas, d float64, p ink.Palette) {
	ground := s.b.w.theme.Color(theme.ColorNameBackground, s.b.w.app.Settings().ThemeVariant())
	c.Clear(color.RGBAModel.Convert(ground).(color.RGBA))
	size := c.Img.Bounds().Size()
	from, to := s.b.slider.Min, s.b.slider.Max
	if to <= from {
		return
	}
	in := sliderEnd() * d
	x := func(turn float64) float64 { return in + (float64(size.X)-2*in)*(turn-from)/(to-from) }
	foot := float64(size.Y)
	for _, stop := range s.of.Stops {
		at := x(stop.Angle.Degrees())
		c.Line(ink.Px{X: at, Y: foot - 7*d}, ink.Px{X: at, Y: foot}, p.Weight(ink.ThinLine)*d, p.Ink, nil)
	}
	for _, f := range s.false {
		if t := f.Turn.Degrees(); t >= from && t <= to {
			at := ink.Px{X: x(t), Y: foot - 6*d}
			const r = 3.5
			for _, side := range [2]float64{1, -1} {
				c.Line(ink.Px{X: at.X - r*d, Y: at.Y - side*r*d}, ink.Px{X: at.X + r*d, Y: at.Y + side*r*d}, p.Weight(ink.ThickLine)*d, p.Fault, nil)
			}
		}
	}
}

// sliderEnd returns how far (px of layout) from its end the toolkit's slider has
// its first value: half its handle and its padding.
func sliderEnd() float64 {
	const border = 1.5
	handle := theme.IconInlineSize() - 4
	return float64(handle/2 + theme.InnerPadding() - border)
}
