package chart

import (
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// noteRule is from one ruled line for the pencil to the next, mm.
const noteRule = 6.5

// notesHeight returns the height (mm) of a panel of the given width that holds
// notes whole; 0 where there are none.
func notesHeight(notes string, width float64) float64 {
	lines := wrap(notes, bodySize, width-2*pad)
	if len(lines) == 0 {
		return 0
	}
	return pad + headSize + pad*0.9 + float64(len(lines))*leading(bodySize) + pad
}

// notes letters the plan's notes in a space of the page, and rules lines to
// write more on; nothing where there is no room for a line. Notes that are too
// long for the space end by saying where they stand whole. It reports whether
// all is lettered here.
func (b *board) notes(c Chart, notes string, lo, hi geom.Point) (whole bool) {
	lines := wrap(notes, bodySize, hi.X-lo.X-2*pad)
	if hi.Y-lo.Y < 2*pad+headSize+noteRule {
		return len(lines) == 0
	}
	b.line(thin, lo.X, hi.Y, hi.X, hi.Y)
	y := b.panel(lo.X, hi.Y, c.Words.Text("chart.notes"))
	room := max(1, int((y-lo.Y-pad)/leading(bodySize)+fitSlack))
	if whole = len(lines) <= room; !whole {
		lines = append(lines[:room-1:room-1], fit(c.Words.Text("chart.notes.more"), bodySize, hi.X-lo.X-2*pad))
	}
	for _, line := range lines {
		b.text(lo.X+pad, y-bodySize, bodySize, drawing.Left, line)
		y -= leading(bodySize)
	}
	for y -= noteRule - pad/2; whole && y > lo.Y+pad/2; y -= noteRule {
		b.line(thin, lo.X+pad, y, hi.X-pad, y)
	}
	return whole
}

// notesPages letters the plan's notes on sheets of their own.
func notesPages(c Chart, notes string, paper drawing.Paper) (footing, []*board) {
	k := footing{shown: c.Words.Text("chart.notes"), sheet: c.Words.Text("chart.notes"), scale: dash, holes: dash}
	f := newListing(paper)
	f.head(c.Words.Text("chart.notes"))
	f.paragraph(notes)
	return k, f.boards
}
