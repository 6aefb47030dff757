package template

import (
	"stopwright/detent/geom"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// The holes' names, mm.
const (
	tagSize = 2.5
	tagGap  = 1.2 // from the arms of the cross
)

// tags writes the holes' names on the pivot side of them or else outside, clear
// of the crosses and the flag. Every hole has its short name before any has its
// angle too, which is written where there is room for it. Where there is none for
// the short name it is left out: it is in the drilling chart.
func tags(d *drawing.Drawing, all []mark, o plate.Outline) {
	full := drawing.Crowd{}
	for _, e := range d.Entities {
		if e.Layer == drawing.Witness {
			full.AddBox(drawing.Drawing{Entities: []drawing.Entity{e}}.Bounds())
		}
	}
	for _, m := range all {
		full.AddHole(m.at, m.radius+overhang)
	}
	var placed []placedTag
	for _, m := range all {
		if len(m.names) == 0 {
			continue
		}
		if t, ok := place(full, m, m.names[len(m.names)-1:], o); ok {
			placed = append(placed, t)
		}
	}
	for _, t := range placed {
		full.RemoveBox(t.box)
		if better, ok := place(full, t.mark, t.names, o); ok {
			t = better
		}
		at := t.box.Min.Add(t.box.Max).Scale(0.5)
		d.Add(drawing.Lettering, drawing.Text{At: at, Size: tagSize, Align: drawing.Centre, Text: t.text})
	}
}

// placedTag is a mark's name where it has room.
type placedTag struct {
	mark
	text string
	box  drawing.Bounds
}

// place takes room for the first of a mark's names that has some, on either side
// of it, and reports whether there was any.
func place(full drawing.Crowd, m mark, names []string, o plate.Outline) (placedTag, bool) {
	away := geom.Polar(1, m.at.Azimuth())
	for _, name := range names {
		name = drawing.Fit(name, tagSize, 12*tagSize)
		half := geom.Point{X: drawing.TextWidth(name, tagSize) / 2, Y: tagSize / 2}
		off := away.Scale(m.radius + overhang + tagGap + half.Y).Add(geom.Point{X: away.X * half.X})
		for _, at := range [2]geom.Point{m.at.Sub(off), m.at.Add(off)} {
			box := drawing.Bounds{Min: at.Sub(half), Max: at.Add(half)}
			if full.Room(box) && inside(o, box) {
				full.AddBox(box)
				return placedTag{m, name, box}, true
			}
		}
	}
	return placedTag{}, false
}

// inside reports whether a box lies within a part's edge.
func inside(o plate.Outline, box drawing.Bounds) bool {
	for _, corner := range [4]geom.Point{box.Min, box.Max, {X: box.Min.X, Y: box.Max.Y}, {X: box.Max.X, Y: box.Min.Y}} {
		if o.Inside(corner) < drawing.CrowdApart {
			return false
		}
	}
	return true
}
