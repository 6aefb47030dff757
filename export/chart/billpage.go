package chart

import (
	"strconv"

	"stopwright/assets/words"
	"stopwright/export/drawing"
)

// billColumns are the columns of the parts list, by the ends of their keys.
var billColumns = [...]string{"count", "name", "size", "note"}

// empty reports whether there is nothing on the list.
func (b Bill) empty() bool { return len(b.Parts)+len(b.Hardware)+len(b.Tools) == 0 }

// billPages letters the parts and cutting list, section by section.
func billPages(c Chart, paper drawing.Paper) (footing, []*board) {
	k := footing{shown: c.Words.Text("bill.title"), sheet: c.Words.Text("bill.sheet"), scale: dash, holes: dash}
	if c.Bill.empty() {
		return k, nil
	}
	f := newListing(paper)
	f.paragraph(c.Words.Text("bill.stock.note", words.Args{"Room": words.MM(sawCut)}))
	for _, s := range c.Bill.sections(c.Words) {
		if len(s.pieces) == 0 {
			continue
		}
		f.head(s.head)
		for _, p := range s.pieces {
			f.piece(p)
		}
	}
	return k, f.boards
}

// The columns of a piece, as shares of the page's width.
var pieceAt = [...]float64{0, 0.06, 0.32, 0.66}

// piece letters one line of the list, with a box to tick when it is at hand.
func (f *listing) piece(p Piece) {
	width := f.b.right() - f.b.left() - 2*pad - boxSide - pad
	y := f.take(rowStep)
	f.box(f.b.left()+pad, y, false)
	for i, text := range [...]string{strconv.Itoa(p.Count), p.Name, p.Size, p.Note} {
		next := 1.0
		if i+1 < len(pieceAt) {
			next = pieceAt[i+1]
		}
		x := f.b.left() + pad + boxSide + pad/2 + pieceAt[i]*width
		f.b.text(x, y, bodySize, drawing.Left, fit(text, bodySize, (next-pieceAt[i])*width-cellPad))
	}
}
