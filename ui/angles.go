package ui

import (
	"cmp"
	"image/color"
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// letter is the height (px of layout) of capitals lettered on the plate.
const letter = 9

// angles letters each stop's angle outside its seat, else on the pivot's side,
// leaving out those that would run into another: what is selected first, then
// what is at fault, then the rest in turn.
func (sc scene) angles(c *ink.Canvas, v ink.View, p ink.Palette, angle func(float64) string, taken *spots) {
	order := make([]int, len(sc.plate.Seats))
	for i := range order {
		order[i] = i
	}
	rank := func(i int) int {
		switch {
		case sc.marks.Selected.Seats[i]:
			return 0
		case sc.marks.Faulty.Seats[i]:
			return 1
		}
		return 2
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(rank(a), rank(b)) })
	inks := [3]color.RGBA{p.Accent, p.Fault, p.Ink}
	d := density(v)
	size := letter * d
	for _, i := range order {
		s := sc.plate.Seats[i]
		text := angle(s.Angle.Degrees())
		w, h := c.TextWidth(text, size)/2+2*d, size/2+2*d
		dir := sc.fromPart(sc.plate.SeatsPart, geom.Polar(1, s.Azimuth))
		// Clear of the seat by the half height or width that lies in its way.
		away := sc.plate.Plan.Seat.Mouth()/2*v.Scale + 5*d + math.Abs(dir.X)*w + math.Abs(dir.Y)*h
		seat := v.Pixel(sc.fromPart(sc.plate.SeatsPart, s.Centre))
		for _, side := range [2]float64{away, -away} {
			at := ink.Px{X: seat.X + dir.X*side, Y: seat.Y - dir.Y*side}
			if taken.take(at, w, h) {
				c.Fill(ink.Px{X: at.X - w, Y: at.Y - h}, ink.Px{X: at.X + w, Y: at.Y + h}, ground(p))
				c.Text(at, size, 0, drawing.Centre, text, inks[rank(i)])
				break
			}
		}
	}
}

// ground is the paper let through under an angle, so that hatching and lines
// behind it do not make it hard to read.
func ground(p ink.Palette) color.RGBA { return alphaInk(p.Paper, 0.8) }

// spots are the places already lettered, by cells of a coarse grid.
type spots map[[2]int][]box

type box struct{ x, y, w, h float64 }

// cell is the size of the grid's cells, px: about that of a lettered angle.
const cell = 64

// take claims a box of half width w and half height h, and reports whether it
// was free.
func (s *spots) take(at ink.Px, w, h float64) bool {
	if *s == nil {
		*s = spots{}
	}
	i, j := int(math.Floor(at.X/cell)), int(math.Floor(at.Y/cell))
	reach := 1 + int(w/cell)
	for di := -reach; di <= reach; di++ {
		for dj := -1; dj <= 1; dj++ {
			for _, b := range (*s)[[2]int{i + di, j + dj}] {
				if math.Abs(b.x-at.X) < b.w+w && math.Abs(b.y-at.Y) < b.h+h {
					return false
				}
			}
		}
	}
	(*s)[[2]int{i, j}] = append((*s)[[2]int{i, j}], box{at.X, at.Y, w, h})
	return true
}
