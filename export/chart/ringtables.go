package chart

import (
	"slices"
	"strings"

	"stopwright/assets/words"
	"stopwright/export/drawing"
)

// rowGroup is the rows of one table and its title; none where there is only one
// table.
type rowGroup struct {
	title string
	rows  []int
}

// ringTables shares out the rows of a sheet into one table a ring: a trammel is
// set once for each. Rings come in the order of their first seats.
func ringTables(c Chart, s Sheet, rows int) []rowGroup {
	if !s.HoldsSeats() || len(s.rings()) < 2 {
		return []rowGroup{{rows: upTo(rows)}}
	}
	var out []rowGroup
	var radii []float64
	for i, seat := range s.Seats {
		k := slices.Index(radii, seat.Radius)
		if k < 0 {
			k = len(out)
			radii = append(radii, seat.Radius)
			out = append(out, rowGroup{title: ringTitle(c, s, seat.Radius)})
		}
		out[k].rows = append(out[k].rows, i)
	}
	return out
}

// ringTitle names a ring and the catches whose balls run on it.
func ringTitle(c Chart, s Sheet, radius float64) string {
	var names []string
	for _, k := range s.Plate.Plan.Catches {
		if k.Radius == radius {
			names = append(names, k.Name)
		}
	}
	return c.Words.Text("chart.ring.title", words.Args{"Radius": words.MM(radius), "Catches": strings.Join(names, ", ")})
}

func upTo(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return out
}

// titleHeight returns how much a group's title takes above its table, mm.
func (g rowGroup) titleHeight() float64 {
	if g.title == "" {
		return 0
	}
	return 2*pad + headSize
}

// heading letters the group's title, if it has one, with its upper edge at y, and
// the table's heading below it. It returns where the table begins and where its
// rows do.
func (g rowGroup) heading(b *board, t *table, y float64) (top, rows float64) {
	if g.title != "" {
		b.text(b.left()+pad, y-pad-headSize, headSize, drawing.Left, fit(g.title, headSize, b.right()-b.left()-2*pad))
		y -= g.titleHeight()
		b.line(thick, b.left(), y, b.right(), y)
	}
	return y, t.heading(b, y)
}
