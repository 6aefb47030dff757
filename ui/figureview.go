package ui

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"stopwright/ui/figures"
	"stopwright/ui/ink"
)

// figureView shows a figure on a slip of paper.
type figureView struct {
	widget.BaseWidget
	w      *Window
	figure figures.Figure
	canvas *ink.Canvas
	raster *canvas.Raster
}

// How high the slip is, px of layout: a share of the panel, within limits.
const (
	leastFigure = 96
	mostFigure  = 168
	figureShare = 0.27
)

func newFigureView(w *Window) *figureView {
	v := &figureView{w: w, canvas: ink.New(0, 0)}
	v.raster = canvas.NewRaster(v.paint)
	v.raster.SetMinSize(fyne.NewSize(0, mostFigure))
	v.ExtendBaseWidget(v)
	return v
}

// CreateRenderer draws the raster.
func (v *figureView) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(v.raster) }

// fit gives the slip its share of the height of a panel.
func (v *figureView) fit(height float32) {
	v.raster.SetMinSize(fyne.NewSize(0, min(max(figureShare*height, leastFigure), mostFigure)))
}

// show shows a figure.
func (v *figureView) show(f figures.Figure) {
	v.figure = f
	v.raster.Refresh()
}

// paint is the raster's generator: width and height are px of the screen.
func (v *figureView) paint(width, height int) image.Image {
	const margin = 4 // px of layout
	p := v.w.palette()
	v.canvas.Resize(width, height)
	v.canvas.Clear(p.Paper)
	dense := 1.0
	if w := v.raster.Size().Width; w > 0 {
		dense = float64(width) / float64(w)
	}
	view := ink.Fit(v.figure.Bounds, float64(width)/dense, float64(height)/dense, margin).Dense(dense)
	ink.Paint(v.canvas, v.figure.Drawing, view, figures.Style(p))
	return v.canvas.Img
}
