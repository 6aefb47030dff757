package chart

import (
	"strconv"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// Pages lays the chart out on paper: first, for each part that holds seats or
// catches, a small true drawing with what to know and the order of work, and a
// table a ring with one row a hole, its heading repeated on every page; then the
// plan's notes, if they are too long to stand beside the drawings; then the
// operations on every part, one table each; last what to buy and saw. A chart of
// no part has no pages.
func Pages(c Chart, paper drawing.Paper) []drawing.Page {
	var all []numbered
	add := func(k footing, boards ...*board) {
		for _, b := range boards {
			all = append(all, numbered{b, k})
		}
	}
	long := "" // notes that do not fit beside a drawing
	for _, s := range c.Sheets {
		boards, scale := sheetPages(c, s, paper)
		if boards[0].cutNotes {
			long = s.Plate.Plan.Notes
		}
		add(footing{
			shown: partAndFace(c, s), sheet: c.Words.Text("chart.name"), scale: scale.String(),
			holes: strconv.Itoa(len(s.Seats) + len(s.Pockets)),
		}, boards...)
	}
	if long != "" {
		k, boards := notesPages(c, long, paper)
		add(k, boards...)
	}
	for from := 0; from < len(c.Work); {
		to := from + 1
		for to < len(c.Work) && c.Work[to].Part == c.Work[from].Part {
			to++
		}
		k, boards := workPages(c, c.Work[from:to], paper)
		add(k, boards...)
		from = to
	}
	k, boards := billPages(c, paper)
	add(k, boards...)
	pages := make([]drawing.Page, len(all))
	for i, p := range all {
		p.frame(c, p.footing, i+1, len(all))
		pages[i] = p.Page
	}
	return pages
}

// numbered is a page that has still to be given its border and number.
type numbered struct {
	*board
	footing
}

// sheetPages draws all of a part's pages but their borders and title blocks.
func sheetPages(c Chart, s Sheet, paper drawing.Paper) ([]*board, Scale) {
	b := newBoard(paper)
	y, scale := b.opening(c, s)
	columns, rows := seatColumns(c, s), len(s.Seats)
	if !s.HoldsSeats() {
		columns, rows = pocketColumns(c, s), len(s.Pockets)
	}
	boards := []*board{b}
	if rows == 0 {
		b.text(b.left()+pad, y-pad-headSize, headSize, drawing.Left, c.Words.Text("chart.none"))
		return boards, scale
	}
	t := layOut(columns, rows, b.right()-b.left())
	floor := b.bottom() + blockHeight
	for _, g := range ringTables(c, s, rows) {
		if y-g.titleHeight()-t.head-t.height(g.rows[0]) < floor {
			b = newBoard(paper)
			boards, y = append(boards, b), b.top()
		}
		var top float64
		top, y = g.heading(b, &t, y)
		for _, i := range g.rows {
			if y-t.height(i) < floor {
				t.rules(b, top, y)
				b = newBoard(paper)
				boards = append(boards, b)
				top, y = g.heading(b, &t, b.top())
			}
			y = t.row(b, i, y)
			if y > floor+fitSlack {
				b.line(thin, b.left(), y, b.right(), y)
			}
		}
		t.rules(b, top, y)
	}
	return boards, scale
}

// The parts of a sheet's first page.
const (
	pictureShare = 0.35 // of the page's height, at least
	pictureMost  = 0.5  // and at most, where notes want to stand beside it
	rulerLength  = 50.0 // mm, to check the printing with
	rulerTick    = 1.2
	factName     = 25.0 // width of a fact's name
	numberWidth  = 6.0  // of an operation's number
)

// opening draws the picture, the facts, the cautions and the order of work, and
// returns where they end and the scale of the picture.
func (b *board) opening(c Chart, s Sheet) (float64, Scale) {
	left, right, top := b.left(), b.right(), b.top()
	middle := (left + right) / 2
	y := b.panel(middle, top, c.Words.Text("chart.data.title"))
	for _, f := range facts(c, s) {
		y = b.fact(f, middle+pad, right-pad, y)
	}
	y -= pad
	b.line(thin, middle, y, right, y)
	y = b.panel(middle, y, c.Words.Text("chart.data.cautions"))
	for _, key := range [...]string{"unplug", "clamp", "eyes", "manual"} {
		y = b.paragraph(c.Words.Text("caution."+key), middle+pad, right-pad, y)
	}
	notes, under := s.Plate.Plan.Notes, y-pad/2
	end := min(under, top-pictureShare*b.Height)
	end = min(end, max(under-notesHeight(notes, right-middle), top-pictureMost*b.Height))
	b.cutNotes = !b.notes(c, notes, geom.Point{X: middle, Y: end}, geom.Point{X: right, Y: under})

	caption := b.panel(left, top, partAndFace(c, s))
	b.text(left+pad, caption-bodySize, bodySize, drawing.Left, c.Words.Text("chart.face.lies"))
	ruler := end + pad + rulerTick
	b.ruler(c, left+pad, ruler)
	scale := b.picture(s, geom.Point{X: left, Y: ruler + bodySize}, geom.Point{X: middle, Y: caption + headSize})
	b.line(thin, middle, end, middle, top)
	b.line(thick, left, end, right, end)
	steps := work(c, s)
	if len(steps) == 0 {
		return end, scale
	}
	return b.steps(c, steps, end), scale
}

// panel letters a heading below y and returns where its text may begin.
func (b *board) panel(left, y float64, title string) float64 {
	b.text(left+pad, y-pad-headSize, headSize, drawing.Left, title)
	return y - pad - headSize - pad*0.9
}

// fact letters a name and its value, wrapped, and returns where the next begins.
func (b *board) fact(f fact, left, right, y float64) float64 {
	b.text(left, y-bodySize, bodySize, drawing.Left, f.name)
	return b.paragraph(f.value, left+factName, right, y)
}

// paragraph letters a text, wrapped, below y and returns where the next begins.
func (b *board) paragraph(text string, left, right, y float64) float64 {
	for _, line := range wrap(text, bodySize, right-left) {
		b.text(left, y-bodySize, bodySize, drawing.Left, line)
		y -= leading(bodySize)
	}
	return y - 0.25*bodySize
}

// ruler draws a bar of known length: a printer that shrinks the sheet is found
// out with a rule.
func (b *board) ruler(c Chart, x, y float64) {
	b.line(thin, x, y, x+rulerLength, y)
	for d := 0.0; d <= rulerLength; d += 10 {
		up := rulerTick
		if d == 0 || d == rulerLength {
			up *= 1.8
		}
		b.line(thin, x+d, y, x+d, y+up)
	}
	text := c.Words.Text("chart.ruler", map[string]any{"Length": c.Words.Length(rulerLength)})
	b.text(x+rulerLength+pad/2, y, labelSize, drawing.Left, text)
}

// steps letters the order of work in two columns below y, closes it with a
// rule, and returns where that stands.
func (b *board) steps(c Chart, steps []string, y float64) float64 {
	start := b.panel(b.left(), y, c.Words.Text("chart.work.title"))
	middle := (b.left() + b.right()) / 2
	width := middle - b.left() - 2*pad - numberWidth
	tall := make([]float64, len(steps))
	var total float64
	for i, s := range steps {
		tall[i] = float64(len(wrap(s, bodySize, width)))*leading(bodySize) + 0.25*bodySize
		total += tall[i]
	}
	low, at, x := start, start, b.left()+pad
	for i, s := range steps {
		if x < middle && start-at+tall[i]/2 > total/2 {
			x, at = middle+pad, start
		}
		b.text(x, at-bodySize, bodySize, drawing.Left, strconv.Itoa(i+1))
		at = b.paragraph(s, x+numberWidth, x+numberWidth+width, at)
		low = min(low, at)
	}
	low -= pad / 2
	b.line(thick, b.left(), low, b.right(), low)
	return low
}
