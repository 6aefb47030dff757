package chart

import (
	"slices"
	"strconv"

	"stopwright/detent/measure"
	"stopwright/export/drawing"
)

// csvBill returns the bill as rows: for each section its heading and one row a
// piece.
func csvBill(c Chart) [][]string {
	if c.Bill.empty() {
		return nil
	}
	rows := [][]string{nil, {guard(c.Words.Text("bill.title"))}, nil}
	for _, k := range billColumns {
		rows[2] = append(rows[2], guard(c.Words.Text("bill.col."+k)))
	}
	for _, s := range c.Bill.sections(c.Words) {
		rows = append(rows, []string{guard(s.head)})
		for _, p := range s.pieces {
			rows = append(rows, []string{strconv.Itoa(p.Count), guard(p.Name), guard(p.Size), guard(p.Note)})
		}
	}
	return rows
}

// csvOperations returns the operations as rows: one a hole, with what it is done
// with, and whether it is done; the last cell is to be filled in.
func csvOperations(c Chart) [][]string {
	if len(c.Work) == 0 {
		return nil
	}
	rows := [][]string{nil, {guard(c.Words.Text("operation.title"))}, nil}
	for _, k := range [...]string{"part", "name", "hole", "x", "y", "tool", "depth", "depth-stop", "rpm", "outside", "done", "actual"} {
		rows[2] = append(rows[2], guard(c.Words.Text("operation.csv."+k)))
	}
	for _, o := range c.Work {
		tool := csvTool(o)
		row := func(hole, x, y, over, tick string) {
			done := ""
			if c.Ticks[tick] {
				done = "x"
			}
			rows = append(rows, slices.Concat(
				[]string{guard(drawing.PartName(c.Words, o.Part)), guard(o.Name(c.Words)), guard(hole), x, y},
				tool, []string{over, done, ""},
			))
		}
		if len(o.Holes) == 0 {
			row("", "", "", "", o.Tick(Hole{}))
		}
		for _, h := range o.Holes {
			over := ""
			if h.Outside > 0 {
				over = mm(h.Outside)
			}
			row(h.Tag, mm(h.At.X), mm(h.At.Y), over, o.Tick(h))
		}
	}
	return rows
}

// csvTool returns the cells of an operation's tool: diameter, depth, depth-stop
// setting, speed.
func csvTool(o Operation) []string {
	cells := make([]string, 4)
	t := o.Tool
	if t.Diameter > 0 {
		cells[0], cells[1] = mm(t.Diameter), mm(t.Depth)
	}
	if t.Stop > 0 {
		cells[2] = mm(t.Stop)
	}
	if o.Speed.RPM > 0 {
		cells[3] = measure.Fixed(o.Speed.RPM, 0)
	}
	return cells
}
