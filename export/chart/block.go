package chart

import (
	"strings"

	"stopwright/assets/words"
	"stopwright/export/drawing"
)

// blockHeight is the height of the title block at the foot of every page, mm.
const blockHeight = 21.0

// footing is what the title block of a page says of it besides the chart's own.
type footing struct {
	shown string // part and face, or what else
	sheet string // kind of sheet
	scale string
	holes string
}

// frame draws the border and the title block of page n of m. The block says
// what ISO 7200 asks of one, as far as a workshop needs it.
func (b *board) frame(c Chart, k footing, n, of int) {
	text := func(key string, args ...words.Args) string { return c.Words.Text("chart."+key, args...) }
	b.block(c.Title, k.shown, [6]fact{
		{text("block.scale"), k.scale},
		{text("block.holes"), k.holes},
		{text("block.date"), c.Date},
		{text("block.units"), text("block.mm")},
		{text("block.sheet"), k.sheet},
		{text("block.page"), text("block.pages", words.Args{"N": n, "Of": of})},
	})
}

// block draws the border and a title block: the plan's title over what the
// sheet shows, and six cells. A cell without a value has a line to fill in.
func (b *board) block(title, shows string, values [6]fact) {
	left, right, bottom, top := b.left(), b.right(), b.bottom(), b.top()
	for _, l := range [4][4]float64{
		{left, bottom, right, bottom}, {right, bottom, right, top}, {right, top, left, top}, {left, top, left, bottom},
	} {
		b.line(thick, l[0], l[1], l[2], l[3])
	}
	blockTop, middle := bottom+blockHeight, bottom+blockHeight/2
	b.line(thick, left, blockTop, right, blockTop)

	const cell = 26.0
	cells := right - 3*cell
	b.line(thin, cells, bottom, cells, blockTop)
	b.line(thin, cells, middle, right, middle)
	for i, k := range values {
		x, y := cells+float64(i%3)*cell, middle
		if i >= 3 {
			y = bottom
		}
		if i%3 > 0 {
			b.line(thin, x, y, x, y+blockHeight/2)
		}
		b.text(x+pad/2, y+blockHeight/2-labelSize-pad/2, labelSize, drawing.Left, k.name)
		if k.value == "" {
			b.line(thin, x+pad/2, y+pad*2/3, x+cell-pad/2, y+pad*2/3) // to fill in by hand
			continue
		}
		b.text(x+pad/2, y+pad*2/3, valueSize, drawing.Left, fit(k.value, valueSize, cell-pad))
	}

	width := cells - left - 2*pad
	b.title(title, left+pad, middle+1, width)
	b.text(left+pad, bottom+pad, headSize, drawing.Left, fit(shows, headSize, width))
}

// title letters the plan's title on one line, or smaller on two where it is
// long.
func (b *board) title(title string, x, y, width float64) {
	const small, step = 3.5, 5.2
	if drawing.TextWidth(drawing.Lettered(title), titleSize) <= width {
		b.text(x, y, titleSize, drawing.Left, title)
		return
	}
	lines := wrap(title, small, width)
	if len(lines) > 2 {
		lines = append(lines[:1], fit(strings.Join(lines[1:], " "), small, width))
	}
	y += titleSize - small + step/4
	for _, line := range lines {
		b.text(x, y, small, drawing.Left, line)
		y -= step
	}
}

// partAndFace names what is shown: "Base, top face up".
func partAndFace(c Chart, s Sheet) string {
	return drawing.PartName(c.Words, s.Part) + ", " + c.Words.Text("chart.face."+string(s.Face))
}
