package chart

import (
	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// pattern charts a pattern moved to clean ground, as the part lies at the drill:
// its new pockets, then its new seats, with boxes to tick at the machine.
func (f *flow) pattern(r detent.Report, info drawing.Info) {
	moved := New(r, info)
	seats, catches := moved.Sheets[0], moved.Sheets[1]
	w := f.chart.Words
	f.patternHead("pockets", catches)
	f.table(pocketColumns(moved, catches), len(catches.Pockets))
	f.patternHead("seats", seats)
	f.say(w.Text("proof.pattern.drill", words.Args{"Drill": drillText(moved, seats.Drill), "Depth": depthText(moved, seats.Drill)}))
	f.table(patternColumns(moved, seats), len(seats.Seats))
}

// patternHead names what is drilled, in which part, and how that part lies.
func (f *flow) patternHead(what string, s Sheet) {
	w := f.chart.Words
	f.heading(w.Text("proof.pattern." + what))
	f.say(w.Text("proof.pattern.view", words.Args{
		"Part": drawing.PartName(w, s.Part), "View": drawing.ViewName(w, s.Part),
	}))
}

// patternColumns are the columns of the chart of moved seats: which, where, and
// what is done.
func patternColumns(c Chart, s Sheet) []column {
	columns := []column{
		{kind: name, head: col(c, "seat"), most: tagMost, cells: func(i int) []string { return []string{tagText(s.Seats[i].Tag)} }},
		{kind: name, head: col(c, "stop", "label"), least: stopLeast, most: labelMost, cells: func(i int) []string { return stopText(c, s.Seats[i]) }},
	}
	columns = append(columns, placeColumns(c, func(i int) (at geom.Point, radius float64, az geom.Angle) {
		r := s.Seats[i]
		return r.At, r.Radius, r.Azimuth
	})...)
	return evenly(append(columns, handColumns(c)...))
}
