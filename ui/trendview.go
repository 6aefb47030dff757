package ui

import (
	"math"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/ui/ink"
)

// trendView shows how one stop has read over time.
type trendView struct {
	w      *Window
	stop   *widget.Select
	said   *widget.Label
	sketch *sketch
	angles []geom.Angle
	trend  detent.Trend
	object fyne.CanvasObject
}

func newTrendView(w *Window) *trendView {
	v := &trendView{w: w, stop: widget.NewSelect(nil, nil), said: wrapped("")}
	v.stop.PlaceHolder = w.words.Text("reading.stop")
	v.sketch = newSketch(w, fyne.NewSize(200, 150), v.paint)
	v.stop.OnChanged = func(string) { v.show() }
	v.object = container.NewVBox(v.stop, v.sketch, v.said)
	return v
}

// refresh offers the plan's stops and shows the chosen one's readings.
func (v *trendView) refresh() {
	angles, names := v.w.stopChoices()
	at := v.stop.SelectedIndex()
	var keep geom.Angle
	if at >= 0 && at < len(v.angles) {
		keep = v.angles[at]
	}
	v.angles, v.stop.Options = angles, names
	if i := slices.Index(angles, keep); i >= 0 {
		v.stop.Selected = names[i]
	} else {
		v.stop.Selected = ""
	}
	v.stop.Refresh()
	v.show()
}

// show shows the chosen stop's readings.
func (v *trendView) show() {
	t := v.w.words.Text
	i := v.stop.SelectedIndex()
	v.trend = detent.Trend{}
	if i >= 0 && i < len(v.angles) {
		v.trend = v.w.store.Report().TrendOf(v.angles[i])
	}
	args := words.Args{
		"First": words.Deg(v.trend.Trend.First), "Last": words.Deg(v.trend.Last), "Days": int(v.trend.Trend.Days),
		"Year": words.Deg(v.trend.Slope.Is), "Std": words.Deg(v.trend.Slope.Std), "Since": v.trend.First,
	}
	key := "trend.few"
	switch {
	case v.trend.Known && v.trend.Slope.Judged:
		key = "trend.is"
	case v.trend.Known:
		key = "trend.two"
	}
	v.said.SetText(t(key, args))
	if v.trend.Known {
		v.sketch.Show()
	} else {
		v.sketch.Hide()
	}
	v.sketch.Refresh()
}

// paint paints residuals over days.
func (v *trendView) paint(c *ink.Canvas, d float64, p ink.Palette) {
	if !v.trend.Known {
		return
	}
	days := v.trend.Days
	last, low, high := 0.0, 0.0, 0.0
	for i, x := range days {
		last, low, high = max(last, x), min(low, v.trend.Residuals[i]), max(high, v.trend.Residuals[i])
	}
	pad := math.Max((high-low)*0.15, 1e-3)
	g := newPlot(c, d, p, -0.04*last, last*1.04, low-pad, high+pad)
	g.sign, g.decimal = "", v.w.decimal
	g.axes(v.w.words.Text("trend.axis", words.Args{"Since": v.trend.First}), v.w.words.Text("reading.axis"))
	for i, x := range days {
		c.Disc(g.at(x, v.trend.Residuals[i]), 3*d, p.Ink)
	}
}
