package chart

import (
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The two weights of ink on a sheet are those of the drawing model.
const (
	thick = drawing.Outline
	thin  = drawing.Lettering
)

// The sizes of a sheet's lettering: height of a capital, mm (ISO 3098-1 series
// where the space allows).
const (
	titleSize = 5.0
	headSize  = 3.0  // of a panel
	bodySize  = 2.2  // table and text
	valueSize = 2.5  // in a title block
	labelSize = 1.8  // names of a title block's cells
	lineStep  = 1.75 // base line to base line, over size
)

// Spaces of a sheet, mm.
const (
	border = 10.0 // paper's edge to the border: outside every printer's dead edge
	pad    = 3.0  // border or rule to lettering
)

// board is one page being drawn.
type board struct {
	drawing.Page
	cutNotes bool // it has a place for notes, which they do not fit
}

func newBoard(p drawing.Paper) *board {
	return &board{Page: drawing.Page{Width: p.Width, Height: p.Height}}
}

func (b *board) left() float64   { return border }
func (b *board) right() float64  { return b.Width - border }
func (b *board) bottom() float64 { return border }
func (b *board) top() float64    { return b.Height - border }

func (b *board) text(x, y, size float64, align drawing.Align, s string) {
	if s = drawing.Lettered(s); s != "" {
		b.Add(thin, drawing.Text{At: geom.Point{X: x, Y: y}, Size: size, Align: align, Text: s})
	}
}

func (b *board) line(l drawing.Layer, x1, y1, x2, y2 float64) {
	b.Add(l, drawing.Line{A: geom.Point{X: x1, Y: y1}, B: geom.Point{X: x2, Y: y2}})
}

// shade tints an upright rectangle.
func (b *board) shade(x1, y1, x2, y2 float64) {
	b.Add(drawing.Shade, drawing.Polygon{Points: []geom.Point{{X: x1, Y: y1}, {X: x2, Y: y1}, {X: x2, Y: y2}, {X: x1, Y: y2}}})
}

// What is too wide is shortened or wrapped as on every sheet.
var (
	fit    = drawing.Fit
	fitEnd = drawing.FitEnd
	wrap   = drawing.Wrap
)
