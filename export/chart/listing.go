package chart

import (
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// listing letters one thing below another, on as many pages as it takes.
type listing struct {
	paper  drawing.Paper
	boards []*board
	b      *board // the page being filled
	y      float64
}

// rowStep is from one line of a listing to the next, mm: room for a pencil.
const rowStep = 5.6

func newListing(paper drawing.Paper) *listing {
	f := &listing{paper: paper}
	f.turn()
	return f
}

// turn begins a page.
func (f *listing) turn() {
	f.b = newBoard(f.paper)
	f.boards = append(f.boards, f.b)
	f.y = f.b.top()
}

// room reports whether a height is left on the page.
func (f *listing) room(height float64) bool { return f.y-height >= f.b.bottom()+blockHeight+pad }

// take returns the base line of the next line of a height, on a new page where
// this one is full.
func (f *listing) take(height float64) float64 {
	if !f.room(height) {
		f.turn()
	}
	f.y -= height
	return f.y
}

// head letters a heading, below a rule where something stands above it, on a new page where no line would follow it on this
// one.
func (f *listing) head(text string) {
	if !f.room(headSize + 2*pad + 3*rowStep) {
		f.turn()
	}
	if f.y < f.b.top() {
		f.y -= pad / 2
		f.b.line(thin, f.b.left(), f.y, f.b.right(), f.y)
	}
	y := f.take(headSize + pad)
	f.b.text(f.b.left()+pad, y, headSize, drawing.Left, fit(text, headSize, f.b.right()-f.b.left()-2*pad))
	f.y -= pad * 0.5
}

// paragraph letters a text, wrapped.
func (f *listing) paragraph(text string) {
	if f.y == f.b.top() {
		f.y -= pad
	}
	for _, line := range wrap(text, bodySize, f.b.right()-f.b.left()-2*pad) {
		y := f.take(leading(bodySize))
		f.b.text(f.b.left()+pad, y, bodySize, drawing.Left, line)
	}
	f.y -= pad * 0.3
}

// box draws a box to tick on a base line; a ticked one is crossed.
func (f *listing) box(x, y float64, ticked bool) {
	lo := geom.Point{X: x, Y: y + (bodySize-boxSide)/2}
	hi := lo.Add(geom.Point{X: boxSide, Y: boxSide})
	f.b.Rect(thin, lo, hi)
	if ticked {
		f.b.line(thick, lo.X, lo.Y, hi.X, hi.Y)
		f.b.line(thick, lo.X, hi.Y, hi.X, lo.Y)
	}
}
