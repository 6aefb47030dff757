package chart

import (
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/export/drawing"
)

// The decimals of the printed table: a hundredth of a millimetre is what
// calipers read, a thousandth of a degree is less than that on any ring a
// person can reach across.
const (
	sheetLength = 2
	sheetAngle  = 3
)

// The widths of columns that hold a maker's words or pencil, mm.
const (
	tagMost    = 17.0
	stopLeast  = 20.0
	labelMost  = 34.0
	writeLeast = 15.0
	stopLines  = 8 // of the angles one seat serves
)

// dash stands where a number means nothing.
const dash = "–"

func length(c Chart, x float64) string { return c.Words.Decimal(measure.Fixed(x, sheetLength)) }
func short(c Chart, x float64) string  { return c.Words.Decimal(measure.Trim(x, sheetLength)) }

// seatColumns are the columns of the table of seats. Each row is two lines: X
// and Y over ring and azimuth, the zero seat's gauging over the neighbour's.
func seatColumns(c Chart, s Sheet) []column {
	gauge := func(say func(g Gauge) string) func(int) []string {
		return func(i int) []string { return []string{say(s.Seats[i].FromZero), say(s.Seats[i].FromNeighbour)} }
	}
	overPins := func(reading func(g Gauge) float64) func(int) []string {
		return gauge(func(g Gauge) string {
			if g.From < 0 || !g.Fits {
				return dash
			}
			return length(c, reading(g))
		})
	}
	zero := c.Words.Text("chart.zero")
	columns := []column{
		{kind: name, head: col(c, "seat"), cells: func(i int) []string {
			lines := []string{tagText(s.Seats[i].Tag)}
			if i == s.Datum {
				lines = append(lines, zero)
			}
			return lines
		}, most: tagMost},
		{
			kind: name, head: col(c, "stop", "label"), cells: func(i int) []string { return stopText(c, s.Seats[i]) },
			least: stopLeast, most: labelMost, share: 1,
		},
	}
	columns = append(columns, placeColumns(c, func(i int) (at geom.Point, radius float64, az geom.Angle) {
		r := s.Seats[i]
		return r.At, r.Radius, r.Azimuth
	})...)
	columns = append(columns,
		column{kind: name, head: col(c, "from", "neighbour"), cells: gauge(func(g Gauge) string {
			if g.From < 0 {
				return dash
			}
			return tagText(g.Tag)
		}), most: tagMost, apart: true},
		column{kind: number, head: col(c, "chord"), cells: gauge(func(g Gauge) string {
			if g.From < 0 {
				return dash
			}
			return length(c, g.Chord)
		})},
		column{kind: number, head: col(c, "outside", "pins"), cells: overPins(func(g Gauge) float64 { return g.Outside })},
		column{kind: number, head: col(c, "inside", "pins"), cells: overPins(func(g Gauge) float64 { return g.Inside })},
	)
	drill := []string{"⌀" + short(c, s.Drill.Diameter), short(c, s.Drill.Depth)}
	stop := []string{short(c, s.Drill.Stop)}
	if s.Drill.Depth == 0 {
		drill[1], stop[0] = c.Words.Text("chart.through"), dash
	}
	columns = append(columns,
		column{kind: right, head: col(c, "drill", "depth"), cells: func(int) []string { return drill }, apart: true},
		column{kind: right, head: col(c, "depth-stop", "stop-at"), cells: func(int) []string { return stop }},
	)
	return append(columns, handColumns(c)...)
}

// pocketColumns are the columns of the table of catches.
func pocketColumns(c Chart, s Sheet) []column {
	columns := []column{{kind: name, head: col(c, "catch"), cells: func(i int) []string {
		return []string{tagText(s.Pockets[i].Tag)}
	}, most: tagMost}}
	columns = append(columns, placeColumns(c, func(i int) (at geom.Point, radius float64, az geom.Angle) {
		p := s.Pockets[i]
		return p.At, p.Radius, p.Azimuth
	})...)
	hole := func(diameter, depth float64) []string {
		if diameter == 0 {
			return []string{dash, dash}
		}
		return []string{"⌀" + short(c, diameter), short(c, depth)}
	}
	columns = append(columns,
		column{
			kind: right, head: col(c, "recess", "deep"), apart: true,
			cells: func(i int) []string { return hole(s.Pockets[i].Rim, s.Pockets[i].RimDepth) },
		},
		column{
			kind: right, head: col(c, "bore", "deep"),
			cells: func(i int) []string { return hole(s.Pockets[i].Body, s.Pockets[i].BodyDepth) },
		},
	)
	return evenly(append(columns, handColumns(c)...))
}

// evenly spreads few columns over the width that is left.
func evenly(columns []column) []column {
	for k := range columns {
		if columns[k].kind != tick {
			columns[k].share = 1
		}
	}
	return columns
}

// placeColumns say where a hole is, both ways.
func placeColumns(c Chart, place func(i int) (geom.Point, float64, geom.Angle)) []column {
	return []column{
		{kind: number, head: col(c, "x", "ring"), apart: true, cells: func(i int) []string {
			at, radius, _ := place(i)
			return []string{length(c, at.X), length(c, radius)}
		}},
		{kind: number, head: col(c, "y", "azimuth"), cells: func(i int) []string {
			at, _, az := place(i)
			return []string{length(c, at.Y), c.Words.Decimal(measure.Fixed(az.Degrees(), sheetAngle)) + "°"}
		}},
	}
}

// handColumns are filled in at the machine.
func handColumns(c Chart) []column {
	var columns []column
	for i, key := range [...]string{"marked", "spotted", "drilled", "gauged"} {
		columns = append(columns, column{kind: tick, head: col(c, key), apart: i == 0})
	}
	return append(columns, column{kind: blank, head: col(c, "actual", "reading"), least: writeLeast, apart: true, share: 0.6})
}

func col(c Chart, keys ...string) []string {
	out := make([]string, len(keys))
	for i, k := range keys {
		out[i] = c.Words.Text("chart.col." + k)
	}
	return out
}

func tagText(tag string) string { return fitEnd(tag, bodySize, tagMost-2*cellPad) }

// stopText lists the angles a seat serves, over its label.
func stopText(c Chart, r Seat) []string {
	width := labelMost - 2*cellPad
	all := ""
	for i, a := range r.Stops {
		if i > 0 {
			all += ", "
		}
		all += c.Words.Angle(a.Degrees())
	}
	lines := wrap(all, bodySize, stopLeast-2*cellPad)
	if len(lines) > stopLines {
		lines = append(lines[:stopLines], drawing.Dots)
	}
	if drawing.Lettered(r.Label) != "" {
		lines = append(lines, fit(r.Label, bodySize, width))
	}
	return lines
}
