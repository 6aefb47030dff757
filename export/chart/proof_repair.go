package chart

import (
	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/export/drawing"
)

// The small drawing of a repair, mm on paper.
const (
	repairTall  = 52.0
	repairWide  = 62.0
	repairScale = 5.0 // times full size at most
)

// repairs shows each way to put a stop's seats right: a small drawing with its
// chart, or what is in the way; the whole pattern moves but once. It returns that
// move, whose chart is too long to stand beside its drawing; one that does not
// fit where there is none.
func (f *flow) repairs(r detent.Report, angle geom.Angle, stop int, move float64) (moved detent.Repair) {
	w := f.chart.Words
	seats := r.Plate.Stops[stop].Seats
	if len(seats) == 0 {
		return moved
	}
	f.heading(w.Text("repair.head", words.Args{"Angle": words.Deg(angle)}))
	f.say(w.Text("caution.unplug") + " " + w.Text("caution.clamp"))
	if len(seats) > 1 {
		f.say(w.Text("repair.each"))
	}
	for k, seat := range seats {
		if len(seats) > 1 {
			f.heading(w.Text("repair.seat", words.Args{"Seat": r.Plate.Seats[seat].Tag}))
		}
		for _, x := range r.RepairsOf(seat, move) {
			switch {
			case x.Kind != detent.Pattern:
				f.repair(r, x)
			case k == len(seats)-1:
				f.repair(r, x)
				moved = x
			}
		}
	}
	return moved
}

func (f *flow) repair(r detent.Report, x detent.Repair) {
	f.room(repairTall)
	b, w := f.board(), f.chart.Words
	left, top := b.left()+pad, f.y
	text := left + repairWide + pad
	f.y = b.panel(text-pad, top+pad, w.Text("repair."+string(x.Kind)))
	for _, line := range x.Say(r, w) {
		f.y = b.paragraph(line, text, b.right()-pad, f.y)
	}
	for _, h := range x.Holes(r.Plate) {
		depth := w.Text("chart.through")
		if h.Depth > 0 {
			depth = length(f.chart, h.Depth)
		}
		f.y = b.paragraph(w.Text("repair.hole."+h.Key, words.Args{
			"Diameter": short(f.chart, h.Diameter), "Depth": depth, "X": length(f.chart, h.At.X), "Y": length(f.chart, h.At.Y),
			"Radius": length(f.chart, h.Radius), "Azimuth": f.chart.Words.Decimal(measure.Fixed(h.Azimuth.Degrees(), sheetAngle)) + "°",
		}), text, b.right()-pad, f.y)
	}
	b.small(drawing.Repair(r.Plate, x), geom.Point{X: left, Y: top - repairTall + pad}, geom.Point{X: left + repairWide, Y: top})
	f.y = min(f.y, top-repairTall) - pad
	b.line(thin, b.left(), f.y+pad, b.right(), f.y+pad)
}

// small draws something true to shape, as large as a space lets it, in its
// middle.
func (b *board) small(d drawing.Drawing, lo, hi geom.Point) {
	bounds := d.Bounds()
	if bounds.Empty() {
		return
	}
	size := hi.Sub(lo)
	k := min(repairScale, size.X/bounds.Width(), size.Y/bounds.Height())
	middle := bounds.Min.Add(bounds.Max).Scale(k / 2)
	b.Place(d, drawing.Transform{Scale: k, Move: lo.Add(hi).Scale(0.5).Sub(middle)})
}
