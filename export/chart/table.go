package chart

import (
	"strings"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// kind says what stands in a column of the table.
type kind int

const (
	number kind = iota // lines whose decimal points stand under each other
	right              // lines that end under each other
	name               // two lines or more, left-aligned
	tick               // a box to tick; the heading is turned
	blank              // left free, to write in
)

// column is one column of a table: a heading of up to two lines, and for each
// hole the lines of its cell. A nil cells has nothing to say.
type column struct {
	kind  kind
	head  []string
	cells func(i int) []string
	least float64 // width, mm
	most  float64 // of a name; 0: no limit
	apart bool    // a thin rule stands before it
	share float64 // of the space that is left over
	width float64 // as laid out
	point float64 // decimal points to the column's right-hand edge, as laid out
}

// The measures of a table, mm.
const (
	cellPad   = 1.3 // rule to lettering, sideways
	rowPad    = 1.7 // rule to lettering, up and down
	headPad   = 1.8
	boxSide   = 4.2
	tickWidth = 6.4
)

func leading(size float64) float64 { return size * lineStep }

// table is a list of columns laid out for one width.
type table struct {
	columns []column
	rows    int
	size    float64 // of its letters
	head    float64 // height of the heading
}

// tableSizes are the sizes of letter tried in turn until a table fits. Nothing
// smaller is read at arm's length.
var tableSizes = []float64{bodySize, 2.0}

// layOut sets the columns' widths to fill a width.
func layOut(columns []column, rows int, width float64) table {
	t := table{columns: columns, rows: rows}
	for _, t.size = range tableSizes {
		if t.measure() <= width {
			break
		}
	}
	t.spread(width - t.measure())
	for _, c := range t.columns {
		h := float64(len(c.head))*leading(t.size) - leading(t.size) + t.size
		if c.kind == tick {
			h = drawing.TextWidth(c.head[0], t.size)
		}
		t.head = max(t.head, h+2*headPad)
	}
	return t
}

// measure sets each column's least width and returns their sum.
func (t *table) measure() float64 {
	var sum float64
	for k := range t.columns {
		c := &t.columns[k]
		c.width = c.least
		if c.kind == tick {
			c.width = tickWidth
		} else {
			for _, s := range c.head {
				c.width = max(c.width, t.wide(s))
			}
		}
		var before, after float64 // the decimal point
		for i := 0; c.cells != nil && i < t.rows; i++ {
			for _, s := range c.cells(i) {
				w := t.wide(s)
				if c.kind == number {
					b, a := t.split(s)
					before, after = max(before, b), max(after, a)
					w = before + after + 2*cellPad
				}
				if c.most > 0 {
					w = min(w, c.most)
				}
				c.width = max(c.width, w)
			}
		}
		c.point = after + cellPad
		sum += c.width
	}
	return sum
}

// wide returns how wide a column must be to hold s.
func (t *table) wide(s string) float64 {
	return drawing.TextWidth(drawing.Lettered(s), t.size) + 2*cellPad
}

// split returns the widths of a number before its decimal point, and from it on.
func (t *table) split(s string) (before, after float64) {
	point := strings.IndexAny(s, ".,") // as the language has it
	if point < 0 {
		return drawing.TextWidth(s, t.size), 0
	}
	return drawing.TextWidth(s[:point], t.size), drawing.TextWidth(s[point:], t.size)
}

// spread deals out what is left over by the columns' shares; what is missing is
// taken from the names, which can be shortened.
func (t *table) spread(left float64) {
	share := func(c column) float64 {
		if left < 0 && c.kind != name {
			return 0
		}
		return c.share
	}
	var shares float64
	for _, c := range t.columns {
		shares += share(c)
	}
	for k := range t.columns {
		if shares > 0 {
			t.columns[k].width += left * share(t.columns[k]) / shares
		}
	}
}

// lines returns the lines of a row's tallest cell, at least the two of a number.
func (t *table) lines(i int) int {
	most := 2
	for k := range t.columns {
		if c := &t.columns[k]; c.kind == name {
			most = max(most, len(c.cells(i)))
		}
	}
	return most
}

// height returns how tall row i is, mm.
func (t *table) height(i int) float64 {
	return 2*rowPad + t.size + float64(t.lines(i)-1)*leading(t.size)
}

// heading draws the heading row with its upper edge at y, and returns its lower
// edge.
func (t *table) heading(b *board, y float64) float64 {
	left, right := b.left(), b.right()
	below := y - t.head
	b.shade(left, below, right, y)
	b.line(thick, left, below, right, below)
	x := left
	for _, c := range t.columns {
		if c.kind == tick {
			b.Add(thin, drawing.Text{
				At: geom.Point{X: x + c.width/2 + t.size/2, Y: below + headPad}, Size: t.size, Angle: 90, Text: c.head[0],
			})
		} else {
			base := below + headPad + float64(len(c.head)-1)*leading(t.size)
			t.cell(b, c, x, base, c.head)
		}
		x += c.width
	}
	return below
}

// row draws row i with its upper edge at y, and returns its lower edge.
func (t *table) row(b *board, i int, y float64) float64 {
	below := y - t.height(i)
	x := b.left()
	for _, c := range t.columns {
		switch {
		case c.kind == tick:
			mid := geom.Point{X: x + c.width/2, Y: (y + below) / 2}
			half := geom.Point{X: boxSide / 2, Y: boxSide / 2}
			b.Rect(thin, mid.Sub(half), mid.Add(half))
		case c.kind == number:
			t.figures(b, c, x, y-rowPad-t.size, c.cells(i))
		case c.cells != nil:
			t.cell(b, c, x, y-rowPad-t.size, c.cells(i))
		}
		x += c.width
	}
	return below
}

// cell letters the lines of a cell, the first on the base line given.
func (t *table) cell(b *board, c column, x, base float64, lines []string) {
	align, at := drawing.Left, x+cellPad
	if c.kind == right || c.kind == number {
		align, at = drawing.Right, x+c.width-cellPad
	}
	for k, s := range lines {
		b.text(at, base-float64(k)*leading(t.size), t.size, align, fit(s, t.size, c.width-2*cellPad+fitSlack))
	}
}

// figures letters the numbers of a cell. Figures of the drawing letter are not
// all of one width, so they are set by their decimal points.
func (t *table) figures(b *board, c column, x, base float64, lines []string) {
	for k, s := range lines {
		before, _ := t.split(s)
		b.text(x+c.width-c.point-before, base-float64(k)*leading(t.size), t.size, drawing.Left, s)
	}
}

// fitSlack keeps rounding from shortening what fits exactly, mm.
const fitSlack = 1e-6

// rules draws the thin upright rules between groups of columns.
func (t *table) rules(b *board, top, bottom float64) {
	x := b.left()
	for _, c := range t.columns {
		if c.apart {
			b.line(thin, x, bottom, x, top)
		}
		x += c.width
	}
}
