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
	bounds := s.Drawing.Bounds()
	o, err := newOutfit(s, bounds, paper, corrected, c)
	if err != nil || bounds.Empty() {
		return nil, err
	}
	if o.fitsOne(bounds) {
		return []drawing.Page{o.onePage(bounds).Page}, nil
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

// Count returns how many pages [Pages] would lay a sheet out on, without drawing
// them. The error is the same.
func Count(s Sheet, paper drawing.Paper, corrected Correction, c *words.Catalogue) (int, error) {
	bounds := s.Drawing.Bounds()
	o, err := newOutfit(s, bounds, paper, corrected, c)
	switch {
	case err != nil || bounds.Empty():
		return 0, err
	case o.fitsOne(bounds) || o.tooMany():
		return 1, nil
	}
	return 1 + o.grid.sheets(), nil
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

// newOutfit works out how a drawing of some bounds is shared out.
func newOutfit(s Sheet, bounds drawing.Bounds, paper drawing.Paper, corrected Correction, c *words.Catalogue) (outfit, error) {
	stretch, err := corrected.Stretch()
	if err != nil || bounds.Empty() {
		return outfit{}, err
	}
	o := outfit{sheet: s, paper: paper, stretch: stretch, correction: corrected, words: c}
	o.grid = newGrid(bounds, o.newBoard().window.size())
	return o, nil
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

// fitsOne reports whether one page has room for the drawing and the steps.
func (o outfit) fitsOne(bounds drawing.Bounds) bool {
	w := o.newBoard().window
	return o.grid.sheets() == 1 && o.stepsHeight(w.Width()-2*pad) <= o.below(w, bounds)-w.Min.Y-pad
}

// below returns where a drawing ends that stands at the top of a window.
func (o outfit) below(w window, bounds drawing.Bounds) float64 {
	return w.Max.Y - 2*spare - bounds.Height()
}

// onePage draws everything on one page: the drawing in the middle at the top,
// the steps below.
func (o outfit) onePage(bounds drawing.Bounds) *board {
	b := o.newBoard()
	at := b.window
	b.part(o.sheet.Drawing, geom.Point{
		X: (bounds.Min.X+bounds.Max.X)/2 - at.Width()/2,
		Y: bounds.Max.Y + spare - at.Height(),
	})
	b.border()
	o.steps(b, at.Min.X+pad, o.below(at, bounds), at.Width()-2*pad)
	o.foot(b, "")
	return b
}

// part draws what the page shows of the drawing; corner is the place in it that
// comes to the window's lower left corner.
func (b *board) part(d drawing.Drawing, corner geom.Point) {
	size := b.window.size()
	shown := d.Clip(drawing.Bounds{Min: corner, Max: corner.Add(size)})
	b.Place(shown, drawing.Transform{Scale: 1, Move: b.window.Min.Sub(corner)})
}
