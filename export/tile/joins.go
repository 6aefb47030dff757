package tile

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The crosses by which sheets are laid over each other, mm.
const (
	crossArm  = 4.0
	crossRing = 2.0
)

// joins marks where a page's neighbours lie over it: a line along the middle of
// each overlap, two crosses on it, and the neighbour's number beyond.
func (o outfit) joins(b *board, col, row int) {
	w := b.window
	for _, side := range [4]struct {
		col, row int
		x, y     float64 // of the line; the other one runs along the window
		upright  bool
		out      float64 // which way the neighbour lies
	}{
		{col - 1, row, w.Min.X + overlap/2, 0, true, -1},
		{col + 1, row, w.Max.X - overlap/2, 0, true, 1},
		{col, row - 1, 0, w.Min.Y + overlap/2, false, -1},
		{col, row + 1, 0, w.Max.Y - overlap/2, false, 1},
	} {
		n := o.grid.number(side.col, side.row)
		if n == 0 {
			continue
		}
		name := o.words.Text("tile.neighbour", words.Args{"N": n})
		if side.upright {
			b.line(drawing.Frame, side.x, w.Min.Y, side.x, w.Max.Y)
			for _, y := range quarters(w.Min.Y, w.Max.Y) {
				b.cross(geom.Point{X: side.x, Y: y})
			}
			b.turned(side.x+side.out*overlap/4, (w.Min.Y+w.Max.Y)/2, smallSize, 90, drawing.Centre, name)
			continue
		}
		b.line(drawing.Frame, w.Min.X, side.y, w.Max.X, side.y)
		for _, x := range quarters(w.Min.X, w.Max.X) {
			b.cross(geom.Point{X: x, Y: side.y})
		}
		b.text((w.Min.X+w.Max.X)/2, side.y+side.out*overlap/4, smallSize, drawing.Centre, name)
	}
}

// quarters returns the places a quarter in from either end.
func quarters(from, to float64) [2]float64 {
	return [2]float64{from + (to-from)/4, to - (to-from)/4}
}

// cross draws a ringed cross.
func (b *board) cross(at geom.Point) {
	b.Add(thin, drawing.Circle{Centre: at, Radius: crossRing})
	b.line(thin, at.X-crossArm, at.Y, at.X+crossArm, at.Y)
	b.line(thin, at.X, at.Y-crossArm, at.X, at.Y+crossArm)
}
