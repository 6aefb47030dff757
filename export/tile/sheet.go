package tile

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// Sheet is a drawing to be printed at full size, and what is said with it.
type Sheet struct {
	Title   string
	What    string // the part and the face that is up
	Date    string // as the caller writes it; empty: none
	Drawing drawing.Drawing
	Steps   []string // what to do with it, in order
}

// Pages lays a sheet out on paper, corrected for the printer. A drawing that one
// page holds, with its steps below, is one page; any other begins with a page
// that has the steps and the map of the pages that follow. One that takes more
// paper than is sensible has only that page, which says so. A drawing of nothing
// has no pages. The error is an [*OffError].
func Pages(s Sheet, paper drawing.Paper, corrected Correction, c *words.Catalogue) ([]drawing.Page, error) {
	stretch, err := corrected.Stretch()
	if err != nil {
		return nil, err
	}
	bounds := s.Drawing.Bounds()
	if bounds.Empty() {
		return nil, nil
	}
	o := outfit{sheet: s, paper: paper, stretch: stretch, correction: corrected, words: c}
	o.grid = newGrid(bounds, o.newBoard().window.size())
	if b, done := o.onePage(bounds); done {
		return []drawing.Page{b.Page}, nil
	}
	pages := []drawing.Page{o.first().Page}
	if o.tooMany() {
		return pages, nil
	}
	for n := range o.grid.sheets() {
		pages = append(pages, o.numbered(n+1).Page)
	}
	return pages, nil
}

// outfit is all that the pages of one sheet have in common.
type outfit struct {
	sheet      Sheet
	paper      drawing.Paper
	stretch    drawing.Stretch
	correction Correction
	words      *words.Catalogue
	grid       grid
}

// tooMany reports whether the drawing takes more paper than is sensible.
func (o outfit) tooMany() bool { return o.grid.sheets() > mostSheets }

// numbered draws one page of the drawing.
func (o outfit) numbered(n int) *board {
	b := o.newBoard()
	col, row := o.grid.at(n)
	corner := o.grid.corner(col, row)
	b.part(o.sheet.Drawing, corner)
	b.border()
	o.joins(b, col, row)
	o.foot(b, o.words.Text("tile.sheet", words.Args{"N": n, "Of": o.grid.sheets()}))
	return b
}

// onePage draws everything on one page, if it has the room.
func (o outfit) onePage(bounds drawing.Bounds) (*board, bool) {
	if o.grid.sheets() > 1 {
		return nil, false
	}
	b := o.newBoard()
	at := b.window
	// In the middle, at the top.
	corner := geom.Point{
		X: (bounds.Min.X+bounds.Max.X)/2 - at.Width()/2,
		Y: bounds.Max.Y + spare - at.Height(),
	}
	left, below := at.Min.X+pad, at.Max.Y-2*spare-bounds.Height()
	if o.stepsHeight(at.Width()-2*pad) > below-at.Min.Y-pad {
		return nil, false
	}
	b.part(o.sheet.Drawing, corner)
	b.border()
	o.steps(b, left, below, at.Width()-2*pad)
	o.foot(b, "")
	return b, true
}

// part draws what the page shows of the drawing; corner is the place in it that
// comes to the window's lower left corner.
func (b *board) part(d drawing.Drawing, corner geom.Point) {
	size := b.window.size()
	shown := d.Clip(drawing.Bounds{Min: corner, Max: corner.Add(size)})
	b.Place(shown, drawing.Transform{Scale: 1, Move: b.window.Min.Sub(corner)})
}
