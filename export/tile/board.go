package tile

import (
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The two weights of ink on a sheet.
const (
	thick = drawing.Outline
	thin  = drawing.Lettering
)

// The sizes of a sheet's lettering: height of a capital, mm.
const (
	titleSize = 5.0
	headSize  = 3.0
	bodySize  = 2.5
	smallSize = 1.8
	lineStep  = 1.75 // base line to base line, over size
)

// Spaces of a sheet, mm.
const (
	edge       = 10.0 // paper's edge to all ink: outside every printer's dead edge
	pad        = 3.0
	footHeight = 24.0 // below the window: bar, names, cautions
	sideWidth  = 9.0  // left of it: the other bar
)

// window is the part of a page that shows the drawing.
type window struct{ drawing.Bounds }

func (w window) size() geom.Point { return w.Max.Sub(w.Min) }

// board is one page being drawn. Its measures are those of the drawing, before
// the page is stretched.
type board struct {
	drawing.Page
	window window
}

// newBoard returns an empty page.
func (o outfit) newBoard() *board {
	wide, high := o.paper.Width/o.stretch.X, o.paper.Height/o.stretch.Y
	b := &board{Page: drawing.Page{Width: o.paper.Width, Height: o.paper.Height, Stretch: o.stretch}}
	b.window.Min = geom.Point{X: edge + sideWidth, Y: edge + footHeight}
	b.window.Max = geom.Point{X: wide - edge, Y: high - edge}
	return b
}

func (b *board) line(l drawing.Layer, x1, y1, x2, y2 float64) {
	b.Add(l, drawing.Line{A: geom.Point{X: x1, Y: y1}, B: geom.Point{X: x2, Y: y2}})
}

func (b *board) text(x, y, size float64, align drawing.Align, s string) {
	b.turned(x, y, size, 0, align, s)
}

func (b *board) turned(x, y, size, angle float64, align drawing.Align, s string) {
	if s = drawing.Lettered(s); s != "" {
		b.Add(thin, drawing.Text{At: geom.Point{X: x, Y: y}, Size: size, Angle: angle, Align: align, Text: s})
	}
}

// border draws the edge of the window.
func (b *board) border() { b.Rect(thin, b.window.Min, b.window.Max) }
