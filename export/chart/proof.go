package chart

import (
	"strconv"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/export/drawing"
)

// ProofPages lays out the sheet that is kept with a proved plate: what tool and
// fence do, what the measured stops say, a table of both with room for the next
// readings, how to put right each seat that is out, and where the whole pattern
// is drilled if it is moved. A plan without tool and without readings gets the
// tables to fill in.
func ProofPages(r detent.Report, info drawing.Info, paper drawing.Paper) []drawing.Page {
	c := Chart{Title: drawing.Title(r.Plate.Plan, info.Words, info.Words.Text("proof.name")), Date: strings.TrimSpace(info.Date), Words: info.Words}
	f := &flow{chart: c, paper: paper}
	f.turnOver()
	cautions := []string{"caution.unplug", "caution.clamp", "caution.eyes", "caution.manual"}
	f.heading(c.Words.Text("chart.data.cautions"))
	for _, key := range cautions {
		f.say(c.Words.Text(key))
	}
	proving, proved := r.Proving()
	if proved || len(proving.Lost)+len(proving.Old) > 0 {
		f.heading(c.Words.Text("proof.head.stops"))
		f.say(proving.Say(r, c.Words)...)
	}
	cut, hasTool := r.CutLine()
	if hasTool {
		f.heading(c.Words.Text("proof.head.cut"))
		f.say(cut.Say(r, c.Words)...)
		f.heading(c.Words.Text("proof.head.marks"))
		f.say(cut.SayMarks(c.Words)...)
	}
	f.table(proofColumns(c, r, proving, cut), len(proofStops(r)))
	var moved detent.Repair
	for _, s := range proving.Seats {
		if s.Out {
			moved = f.repairs(r, proving.Stops[s.Stop], s.Stop, s.Move)
		}
	}
	if moved.Fits { // alike for every seat that is out, so it is charted once
		f.pattern(moved.Trial, info)
	}
	return f.finish(r)
}

// proofStops lists the stops of a proof sheet, ascending.
func proofStops(r detent.Report) []geom.Angle { return detent.StopAngles(r.Plate) }

// proofColumns are the columns of the table of stops: what was measured, where
// the cut crosses, and room for the next readings.
func proofColumns(c Chart, r detent.Report, v detent.Proving, cut detent.CutLine) []column {
	stops := proofStops(r)
	col := func(keys ...string) []string {
		out := make([]string, len(keys))
		for i, k := range keys {
			out[i] = c.Words.Text("proof.col." + k)
		}
		return out
	}
	proved := func(say func(i int) string) func(int) []string {
		return func(row int) []string {
			for i, s := range v.Seats {
				if v.Stops[s.Stop] == stops[row] {
					return []string{say(i)}
				}
			}
			return []string{dash}
		}
	}
	angle := func(x float64) string { return c.Words.Decimal(measure.Fixed(x, sheetAngle)) }
	columns := []column{
		{kind: number, head: col("stop"), cells: func(i int) []string { return []string{c.Words.Decimal(measure.Trim(stops[i].Degrees(), sheetAngle))} }},
		{kind: number, head: col("readings"), cells: proved(func(i int) string { return strconv.Itoa(v.Seats[i].Readings) }), apart: true},
		{kind: number, head: col("off"), cells: proved(func(i int) string { return angle(v.Seats[i].Difference) })},
		{kind: number, head: col("own"), cells: proved(func(i int) string { return angle(v.Seats[i].Own) })},
		{kind: number, head: col("move"), cells: proved(func(i int) string { return length(c, v.Seats[i].Move) })},
		{kind: name, head: col("verdict"), cells: proved(func(i int) string {
			if v.Seats[i].Out {
				return c.Words.Text("proof.out")
			}
			return ""
		})},
	}
	if len(cut.Crossings) > 0 { // by stop, ascending, as the rows are
		columns = append(columns, column{kind: number, head: col("crosses"), apart: true, cells: func(i int) []string {
			if !cut.Crossings[i].Meets {
				return []string{dash}
			}
			return []string{length(c, cut.Crossings[i].X)}
		}})
	}
	for _, key := range []string{"clockwise", "counterclockwise", "mark"} {
		columns = append(columns, column{kind: blank, head: col(key), least: writeLeast, apart: true, share: 1})
	}
	return columns
}

// flow fills one sheet after another from the top.
type flow struct {
	chart  Chart
	paper  drawing.Paper
	boards []*board
	y      float64
}

func (f *flow) board() *board { return f.boards[len(f.boards)-1] }

func (f *flow) turnOver() {
	f.boards = append(f.boards, newBoard(f.paper))
	f.y = f.board().top() - pad
}

// room turns over where less than a height is left.
func (f *flow) room(height float64) {
	if f.y-height < f.board().bottom()+blockHeight+pad {
		f.turnOver()
	}
}

func (f *flow) heading(text string) {
	f.room(headSize + 4*leading(bodySize)) // not alone at the foot of a page
	b := f.board()
	f.y = b.panel(b.left(), f.y, text)
}

// say letters paragraphs across the page.
func (f *flow) say(texts ...string) {
	for _, text := range texts {
		b := f.board()
		f.room(float64(len(wrap(text, bodySize, b.right()-b.left()-2*pad)))*leading(bodySize) + bodySize)
		b = f.board()
		f.y = b.paragraph(text, b.left()+pad, b.right()-pad, f.y) - 0.4*bodySize
	}
}

// table draws a table across the page, its heading anew on each.
func (f *flow) table(columns []column, rows int) {
	if rows == 0 {
		return
	}
	b := f.board()
	t := layOut(columns, rows, b.right()-b.left())
	begin := func() float64 {
		f.board().line(thick, f.board().left(), f.y, f.board().right(), f.y)
		top := f.y
		f.y = t.heading(f.board(), f.y)
		return top
	}
	f.y -= pad
	f.room(t.head + t.height(0))
	top := begin()
	for i := range rows {
		if f.y-t.height(i) < f.board().bottom()+blockHeight+pad {
			t.rules(f.board(), top, f.y)
			f.turnOver()
			top = begin()
		}
		f.y = t.row(f.board(), i, f.y)
		f.board().line(thin, f.board().left(), f.y, f.board().right(), f.y)
	}
	t.rules(f.board(), top, f.y)
	f.y -= pad
}

// finish draws borders and title blocks.
func (f *flow) finish(r detent.Report) []drawing.Page {
	w := f.chart.Words
	pages := make([]drawing.Page, len(f.boards))
	for i, b := range f.boards {
		b.block(f.chart.Title, w.Text("proof.shows"), [6]fact{
			{w.Text("proof.block.stops"), strconv.Itoa(len(proofStops(r)))},
			{w.Text("proof.block.readings"), strconv.Itoa(len(r.Plate.Plan.Readings))},
			{w.Text("chart.block.date"), f.chart.Date},
			{w.Text("chart.block.units"), w.Text("chart.block.mm")},
			{w.Text("chart.block.sheet"), w.Text("proof.name")},
			{w.Text("chart.block.page"), w.Text("chart.block.pages", words.Args{"N": i + 1, "Of": len(f.boards)})},
		})
		pages[i] = b.Page
	}
	return pages
}
