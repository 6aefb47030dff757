package chart

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// crowd holds what already stands on a page, by the squares of a grid it
// touches, so that the next text is compared only with what is near it.
type crowd map[[2]int][]taken

// taken is a box that a text fills, or a hole when its radius is above 0.
type taken struct {
	box    drawing.Bounds
	radius float64
}

const (
	crowdSquare = 5.0 // mm
	crowdApart  = 0.3 // mm between things that are still told apart
)

// squares calls yield with every square of the grid that a box touches.
func squares(box drawing.Bounds, yield func(square [2]int)) {
	index := func(x float64) int { return int(math.Floor(x / crowdSquare)) }
	for i := index(box.Min.X - crowdApart); i <= index(box.Max.X+crowdApart); i++ {
		for j := index(box.Min.Y - crowdApart); j <= index(box.Max.Y+crowdApart); j++ {
			yield([2]int{i, j})
		}
	}
}

func (c crowd) add(t taken) {
	squares(t.box, func(q [2]int) { c[q] = append(c[q], t) })
}

func (c crowd) addHole(at geom.Point, radius float64) {
	r := geom.Point{X: radius, Y: radius}
	c.add(taken{drawing.Bounds{Min: at.Sub(r), Max: at.Add(r)}, radius})
}

// room reports whether a box keeps clear of all that is taken.
func (c crowd) room(box drawing.Bounds) bool {
	free := true
	squares(box, func(q [2]int) {
		for _, t := range c[q] {
			free = free && t.clear(box)
		}
	})
	return free
}

// clear reports whether a box keeps apart from what is taken.
func (t taken) clear(box drawing.Bounds) bool {
	if t.radius > 0 {
		at := t.box.Min.Add(t.box.Max).Scale(0.5)
		nearest := geom.Point{X: clamp(at.X, box.Min.X, box.Max.X), Y: clamp(at.Y, box.Min.Y, box.Max.Y)}
		return at.Distance(nearest) >= t.radius+crowdApart
	}
	return box.Min.X >= t.box.Max.X+crowdApart || t.box.Min.X >= box.Max.X+crowdApart ||
		box.Min.Y >= t.box.Max.Y+crowdApart || t.box.Min.Y >= box.Max.Y+crowdApart
}

func clamp(x, lo, hi float64) float64 { return max(lo, min(x, hi)) }
