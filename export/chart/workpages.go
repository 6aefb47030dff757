package chart

import (
	"strconv"

	"stopwright/assets/words"
	"stopwright/export/drawing"
)

// workPages letters the operations on one part, one table each.
func workPages(c Chart, work []Operation, paper drawing.Paper) (footing, []*board) {
	part := newSheet(c.plate, work[0].Part)
	part.Face = c.faceUp(part.Part)
	k := footing{shown: partAndFace(c, part), sheet: c.Words.Text("operation.sheet"), scale: dash}
	f := newListing(paper)
	f.paragraph(c.Words.Text("operation.speed.note"))
	most := 0
	for i, done := range work {
		o := numberedWork{done, i + 1}
		f.head(o.head(c))
		f.paragraph(o.Say(c.Words))
		f.holes(c, o)
		most = max(most, len(o.Holes))
	}
	k.holes = strconv.Itoa(most)
	return k, f.boards
}

// numberedWork is an operation with its number on its part.
type numberedWork struct {
	Operation
	number int
}

func (o numberedWork) head(c Chart) string { return strconv.Itoa(o.number) + "  " + o.Name(c.Words) }

// holes letters an operation's holes row by row, each with a box to tick.
func (f *listing) holes(c Chart, o numberedWork) {
	if len(o.Holes) == 0 {
		y := f.take(rowStep)
		f.box(f.b.left()+pad, y, c.Ticks[o.Tick(Hole{})])
		f.b.text(f.b.left()+2*pad+boxSide, y, bodySize, drawing.Left, c.Words.Text("operation.done"))
		return
	}
	k := cellFor(c, o.Operation)
	width := f.b.right() - f.b.left() - 2*pad
	across := max(1, int(width/k.width()))
	var y float64
	for i, h := range o.Holes {
		if i%across == 0 {
			if !f.room(rowStep) {
				f.turn()
				f.head(c.Words.Text("operation.more", words.Args{"Operation": o.head(c)}))
			}
			y = f.take(rowStep)
		}
		f.hole(c, o.Operation, h, f.b.left()+pad+float64(i%across)*width/float64(across), y, k)
	}
}

// cell is how an operation's holes are lettered: the widths of their parts, mm.
type cell struct {
	tag, place float64
	reading    float64 // over pins, and the line to write on; 0: not gauged
}

// The most a hole's name takes, and the line to write a reading on, mm.
const (
	holeTagMost = 40.0
	writeOn     = 24.0
)

// cellFor returns a cell as wide as the widest of an operation's holes.
func cellFor(c Chart, o Operation) cell {
	var k cell
	for _, h := range o.Holes {
		k.tag = max(k.tag, min(holeTagMost, drawing.TextWidth(drawing.Lettered(h.Tag), bodySize)))
		k.place = max(k.place, drawing.TextWidth(placeText(c, h), bodySize))
		if o.Kind == GaugeSeats {
			k.reading = max(k.reading, drawing.TextWidth(overText(c, h), bodySize))
		}
	}
	return k
}

func (k cell) width() float64 {
	w := boxSide + pad/2 + k.tag + pad + k.place + pad
	if k.reading > 0 {
		w += k.reading + pad/2 + writeOn + pad
	}
	return w
}

func placeText(c Chart, h Hole) string { return length(c, h.At.X) + " / " + length(c, h.At.Y) }

// overText is what a seat measures over pins from the zero seat.
func overText(c Chart, h Hole) string {
	if h.Outside == 0 {
		return dash
	}
	return length(c, h.Outside)
}

// hole letters one hole: its box, tag, X and Y, and where it is gauged the
// reading and a line to write what came out.
func (f *listing) hole(c Chart, o Operation, h Hole, x, y float64, k cell) {
	f.box(x, y, c.Ticks[o.Tick(h)])
	x += boxSide + pad/2
	f.b.text(x, y, bodySize, drawing.Left, fitEnd(h.Tag, bodySize, k.tag+fitSlack))
	x += k.tag + pad + k.place
	f.b.text(x, y, bodySize, drawing.Right, placeText(c, h))
	if k.reading > 0 {
		x += pad + k.reading
		f.b.text(x, y, bodySize, drawing.Right, overText(c, h))
		f.b.line(thin, x+pad/2, y, x+pad/2+writeOn, y)
	}
}
