package ui

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"stopwright/ui/ink"
)

// sketch is a picture that is painted anew only when it is refreshed.
type sketch struct {
	widget.BaseWidget
	w      *Window
	least  fyne.Size
	paint  func(c *ink.Canvas, dense float64, p ink.Palette)
	canvas *ink.Canvas
	raster *canvas.Raster
}

// newSketch makes a sketch of a least size (px of layout). Paint gets the
// canvas and how many of its px make one of layout.
func newSketch(w *Window, least fyne.Size, paint func(*ink.Canvas, float64, ink.Palette)) *sketch {
	s := &sketch{w: w, least: least, paint: paint, canvas: ink.New(0, 0)}
	s.raster = canvas.NewRaster(s.generate)
	s.ExtendBaseWidget(s)
	return s
}

func (s *sketch) generate(width, height int) image.Image {
	s.canvas.Resize(width, height)
	p := s.w.palette()
	s.canvas.Clear(p.Paper)
	dense := 1.0
	if w := s.Size().Width; w > 0 {
		dense = float64(width) / float64(w)
	}
	s.paint(s.canvas, dense, p)
	return s.canvas.Img
}

// MinSize is the least size the sketch was made with.
func (s *sketch) MinSize() fyne.Size { return s.least }

// Refresh paints the sketch anew.
func (s *sketch) Refresh() { canvas.Refresh(s.raster) }

// CreateRenderer draws the raster.
func (s *sketch) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(s.raster) }
