package tile

import (
	"math"
	"strconv"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// stepNumber is the width of a step's number, mm.
const stepNumber = 6.0

// all returns the steps of printing and joining, and then the sheet's own.
func (o outfit) all() []string {
	t := o.words.Text
	if o.tooMany() {
		return []string{t("tile.toomany", words.Args{"N": o.grid.sheets(), "Most": mostSheets})}
	}
	bars := words.Args{"X": words.MM(BarX), "Y": words.MM(BarY)}
	list := []string{t("tile.step.print"), t("tile.step.measure", bars)}
	if o.grid.sheets() > 1 {
		list = append(list, t("tile.step.join"))
	}
	return append(list, o.sheet.Steps...)
}

// stepsHeight returns how much room the steps take in a column of a width, mm.
func (o outfit) stepsHeight(width float64) float64 {
	var h float64
	for _, s := range o.all() {
		h += (float64(len(drawing.Wrap(s, bodySize, width-stepNumber))) + 0.25) * bodySize * lineStep
	}
	return h
}

// steps letters the steps below y.
func (o outfit) steps(b *board, x, y, width float64) {
	for i, s := range o.all() {
		b.text(x, y-bodySize, bodySize, drawing.Left, strconv.Itoa(i+1))
		for _, line := range drawing.Wrap(s, bodySize, width-stepNumber) {
			b.text(x+stepNumber, y-bodySize, bodySize, drawing.Left, line)
			y -= bodySize * lineStep
		}
		y -= 0.25 * bodySize * lineStep
	}
}

// first draws the page that comes before the numbered ones.
func (o outfit) first() *board {
	b := o.newBoard()
	w := b.window
	width := w.Width() - 2*pad
	x, y := w.Min.X+pad, w.Max.Y-pad-titleSize
	b.text(x, y, titleSize, drawing.Left, drawing.Fit(o.sheet.Title, titleSize, width))
	y -= headSize * lineStep
	b.text(x, y, headSize, drawing.Left, drawing.Fit(o.sheet.What, headSize, width))
	y -= headSize * lineStep
	if !o.tooMany() {
		b.text(x, y, headSize, drawing.Left, o.words.Text("tile.map", words.Args{"N": o.grid.sheets()}))
	}
	low := w.Min.Y + pad + o.stepsHeight(width)
	o.steps(b, x, low, width)
	o.pageMap(b, geom.Point{X: x, Y: low + pad}, geom.Point{X: x + width, Y: y - pad})
	b.border()
	o.foot(b, "")
	return b
}

// pageMap draws the drawing small, in the middle of a space, and over it what
// each page shows and its number.
func (o outfit) pageMap(b *board, lo, hi geom.Point) {
	g := o.grid
	far := g.corner(g.cols-1, g.rows-1).Add(g.size)
	size := far.Sub(g.lo)
	k := math.Min((hi.X-lo.X)/size.X, (hi.Y-lo.Y)/size.Y)
	move := lo.Add(hi).Sub(g.lo.Add(far).Scale(k)).Scale(0.5)
	place := func(p geom.Point) geom.Point { return p.Scale(k).Add(move) }
	b.Place(mapped(o.sheet.Drawing), drawing.Transform{Scale: k, Move: move})

	if o.tooMany() {
		return
	}
	xs, ys := g.cuts()
	for _, x := range xs {
		a, z := place(geom.Point{X: x, Y: g.lo.Y}), place(geom.Point{X: x, Y: far.Y})
		b.line(drawing.Frame, a.X, a.Y, z.X, z.Y)
	}
	for _, y := range ys {
		a, z := place(geom.Point{X: g.lo.X, Y: y}), place(geom.Point{X: far.X, Y: y})
		b.line(drawing.Frame, a.X, a.Y, z.X, z.Y)
	}
	for n := range g.sheets() {
		col, row := g.at(n + 1)
		mid := place(geom.Point{X: (xs[col] + xs[col+1]) / 2, Y: (ys[row] + ys[row+1]) / 2})
		b.text(mid.X, mid.Y, min(titleSize, k*g.size.X/6), drawing.Centre, strconv.Itoa(n+1))
	}
}

// cuts returns where the pages end in the drawing: in the middle of each
// overlap, and at the outer edges.
func (g grid) cuts() (xs, ys []float64) {
	along := func(lo, window float64, n int) []float64 {
		out := []float64{lo}
		for i := 1; i < n; i++ {
			out = append(out, lo+float64(i)*(window-overlap)+overlap/2)
		}
		return append(out, lo+float64(n)*(window-overlap)+overlap)
	}
	return along(g.lo.X, g.size.X, g.cols), along(g.lo.Y, g.size.Y, g.rows)
}

// mapped returns what a small drawing shows: no letters, which keep their size,
// and no centre marks.
func mapped(d drawing.Drawing) drawing.Drawing {
	var out drawing.Drawing
	for _, e := range d.Entities {
		_, letters := e.Shape.(drawing.Text)
		if !letters && e.Layer != drawing.Centres {
			out.Entities = append(out.Entities, e)
		}
	}
	return out
}
