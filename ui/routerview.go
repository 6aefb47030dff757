package ui

import (
	"image"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
	"stopwright/export/router"
	"stopwright/ui/ink"
)

// routerView shows what a router does to one part: its tool's paths over the
// part, as far as they have come at a time of one's choice.
type routerView struct {
	w       *Window
	part    plan.Part
	program router.Program
	refused bool
	canvas  *ink.Canvas
	raster  *canvas.Raster
	time    *widget.Slider
	said    *widget.Label
	object  fyne.CanvasObject
}

func newRouterView(w *Window) *routerView {
	v := &routerView{w: w, canvas: ink.New(0, 0), said: widget.NewLabel("")}
	v.raster = canvas.NewRaster(v.paint)
	v.raster.SetMinSize(fyne.NewSize(240, 200))
	v.said.Truncation = fyne.TextTruncateEllipsis
	v.time = widget.NewSlider(0, 1)
	v.time.OnChanged = func(float64) { v.tell() }
	v.object = container.NewBorder(nil, container.NewVBox(v.time, v.said), nil, nil, v.raster)
	return v
}

// show shows a part's program, run to its end; of one that is refused or has
// nothing to do only the part.
func (v *routerView) show(part plan.Part, p router.Program, refused bool) {
	v.part, v.program, v.refused = part, p, refused
	v.time.Max = math.Max(p.Seconds, 1)
	v.time.Step = v.time.Max / 1000
	v.time.Value = v.time.Max
	v.time.Refresh()
	v.tell()
}

// after returns the time shown, s.
func (v *routerView) after() float64 { return v.time.Value / v.time.Max * v.program.Seconds }

// tell says how far the program has come.
func (v *routerView) tell() {
	p, t := v.program, v.w.words
	text := t.Text("router.view.nothing")
	switch {
	case v.refused:
		text = t.Text("router.view.refused")
	case len(p.Steps) > 0:
		text = t.Text("router.view.time", words.Args{
			"Now": router.Clock(t, v.after()), "All": router.Clock(t, p.Seconds), "N": p.Holes(), "Tools": len(p.Tools),
		})
	}
	v.said.SetText(text)
	v.raster.Refresh()
}

// paint paints the part and what has been cut of it.
func (v *routerView) paint(width, height int) image.Image {
	const margin = 10 // px of layout
	pl, p := v.w.store.Report().Plate, v.w.palette()
	v.canvas.Resize(width, height)
	v.canvas.Clear(p.Paper)
	dense := 1.0
	if w := v.raster.Size().Width; w > 0 {
		dense = float64(width) / float64(w)
	}
	part := drawing.Part(pl, v.part, drawing.AsAtDrill)
	view := ink.Fit(part.Bounds(), float64(width)/dense, float64(height)/dense, margin).Dense(dense)
	ink.Paint(v.canvas, part, view, faded(p))
	ink.Paint(v.canvas, v.program.Draw(v.after()), view, toolStyle(p))
	return v.canvas.Img
}

// faded draws a part as the ground that paths are drawn on: thin, with nothing
// filled.
func faded(p ink.Palette) ink.Style {
	base := p.Style()
	return func(e drawing.Entity) ink.Stroke {
		s := base(e)
		s.Fill = base(drawing.Entity{}).Fill
		if e.Layer != drawing.Outline && e.Layer != drawing.Witness {
			s.Colour, s.Width = p.Faint, p.Weight(ink.ThinLine)
		}
		return s
	}
}

// toolStyle draws travels broken, paths thin, finished holes thick, and the tool
// filled: none is told by colour alone.
func toolStyle(p ink.Palette) ink.Style {
	thin := p.Weight(ink.ThinLine)
	return ink.Layers(map[drawing.Layer]ink.Stroke{
		router.TravelLayer: {Colour: p.Faint, Width: thin, Dash: []float64{3, 3}},
		router.PathLayer:   {Colour: p.Accent, Width: 0.7 * thin},
		router.CutLayer:    {Colour: p.Ink, Width: p.Weight(ink.ThickLine), Fill: p.Hollow},
		router.ToolLayer:   {Colour: p.Accent, Width: thin, Fill: p.Accent, Sign: ink.Halo},
	})
}
