package tile

import (
	"strings"

	"stopwright/assets/words"
	"stopwright/export/drawing"
)

// foot draws what every page says below and beside its window: the two bars,
// what is shown, which side is up, the page's own name and the cautions.
func (o outfit) foot(b *board, name string) {
	o.bars(b)
	left, right := edge, b.window.Max.X
	y := b.window.Min.Y - 2*pad - bodySize - headSize
	up := o.words.Text("tile.up")
	b.text(right, y, headSize, drawing.Right, up)
	width := right - left - drawing.TextWidth(up, headSize) - pad
	b.text(left, y, headSize, drawing.Left, drawing.Fit(o.sheet.What, headSize, width))

	y -= headSize * lineStep
	about := []string{o.words.Text("tile.full")}
	if o.sheet.Date != "" {
		about = append(about, o.sheet.Date)
	}
	if !o.correction.None() {
		about = append(about, o.corrected())
	}
	if name != "" {
		about = append(about, name)
	}
	says := strings.Join(about, " · ")
	b.text(right, y, bodySize, drawing.Right, says)
	width = right - left - drawing.TextWidth(says, bodySize) - pad
	b.text(left, y, bodySize, drawing.Left, drawing.Fit(o.sheet.Title, bodySize, width))

	var cautions []string
	for _, key := range [...]string{"unplug", "clamp", "eyes", "manual"} {
		cautions = append(cautions, o.words.Text("caution."+key))
	}
	for _, line := range drawing.Wrap(strings.Join(cautions, " "), smallSize, right-left) {
		y -= smallSize * lineStep
		b.text(left, y, smallSize, drawing.Left, line)
	}
}

// corrected says what the pages were corrected for.
func (o outfit) corrected() string {
	measured := func(length, bar float64) words.MM {
		if length == 0 {
			length = bar
		}
		return words.MM(length)
	}
	return o.words.Text("tile.corrected", words.Args{
		"X": measured(o.correction.X, BarX), "Y": measured(o.correction.Y, BarY),
	})
}

// The marks of a bar, mm.
const (
	barStep = 10.0
	barTick = 1.2
	barEnd  = 2.5 // at its two ends, which are measured
)

// bars draws the two bars of known length.
func (o outfit) bars(b *board) {
	x, y := b.window.Min.X, b.window.Min.Y-pad
	b.line(thin, x, y, x+BarX, y)
	b.line(thin, x-pad, y+pad, x-pad, y+pad+BarY)
	for d := 0.0; d <= BarX; d += barStep {
		b.line(thin, x+d, y, x+d, y-tick(d, BarX))
	}
	for d := 0.0; d <= BarY; d += barStep {
		b.line(thin, x-pad, y+pad+d, x-pad-tick(d, BarY), y+pad+d)
	}
	label := func(length float64) string { return o.words.Text("tile.bar", words.Args{"Length": words.MM(length)}) }
	b.text(x+BarX+pad, y-barEnd, bodySize, drawing.Left, label(BarX))
	b.turned(x-pad-barTick-pad/2, y+pad+BarY/2, bodySize, 90, drawing.Bottom, label(BarY))
}

// tick returns the length of the mark at a place on a bar.
func tick(at, length float64) float64 {
	if at == 0 || at == length {
		return barEnd
	}
	return barTick
}
