package ui

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/ui/ink"
)

// sketch is a picture that is painted anew only when it is refreshed. An upright
// line may move over it in between.
type sketch struct {
	widget.BaseWidget
	w      *Window
	least  fyne.Size
	paint  func(c *ink.Canvas, dense float64, p ink.Palette)
	canvas *ink.Canvas
	raster *canvas.Raster
	stale  bool // it is to be painted anew
	mark   *canvas.Line
	plot   plot                        // the last painted, if it is one
	marked func() (x float64, ok bool) // where on the plot the line stands; nil: there is none
}

// newSketch makes a sketch of a least size (px of layout). Paint gets the
// canvas and how many of its px make one of layout.
func newSketch(w *Window, least fyne.Size, paint func(*ink.Canvas, float64, ink.Palette)) *sketch {
	s := &sketch{w: w, least: least, paint: paint, canvas: ink.New(0, 0)}
	s.raster = canvas.NewRaster(s.generate)
	s.mark = canvas.NewLine(nil)
	s.mark.StrokeWidth = ink.ThinLine
	s.mark.Hide()
	s.ExtendBaseWidget(s)
	return s
}

func (s *sketch) generate(width, height int) image.Image {
	s.stale = false
	s.canvas.Resize(width, height)
	p := s.w.palette()
	s.canvas.Clear(p.Paper)
	dense := 1.0
	if w := s.Size().Width; w > 0 {
		dense = float64(width) / float64(w)
	}
	s.paint(s.canvas, dense, p)
	s.move()
	return s.canvas.Img
}

// move puts the line where it belongs, which is much less work than to paint the
// sketch anew.
func (s *sketch) move() {
	if s.marked == nil || s.plot.d == 0 {
		return
	}
	x, ok := s.marked()
	if s.mark.Hidden = !ok; ok {
		low, high := s.plot.at(x, s.plot.y0), s.plot.at(x, s.plot.y1)
		s.mark.StrokeColor = s.w.palette().Fault
		s.mark.Position1 = fyne.NewPos(float32(low.X/s.plot.d), float32(low.Y/s.plot.d))
		s.mark.Position2 = fyne.NewPos(float32(high.X/s.plot.d), float32(high.Y/s.plot.d))
	}
	s.mark.Refresh()
}

// MinSize is the least size the sketch was made with.
func (s *sketch) MinSize() fyne.Size { return s.least }

// Refresh paints the sketch anew.
func (s *sketch) Refresh() {
	s.stale = true
	canvas.Refresh(s.raster)
}

// CreateRenderer draws the raster, and the line over it.
func (s *sketch) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewStack(s.raster, container.NewWithoutLayout(s.mark)))
}
