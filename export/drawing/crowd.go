package drawing

import (
	"math"
	"slices"

	"stopwright/detent/geom"
)

// Crowd holds what already stands on a page, by the squares of a grid it
// touches, so that the next text is compared only with what is near it.
type Crowd map[[2]int][]taken

// taken is a box that a text fills, or a hole when its radius is above 0.
type taken struct {
	box    Bounds
	radius float64
}

const (
	crowdSquare = 5.0 // mm
	// crowdMost is how many squares a thing may touch to be kept by them. What is
	// wider, a hole of ten metres, would fill the memory with squares.
	crowdMost = 1000
	// CrowdApart is how far things are apart that are still told apart, mm.
	CrowdApart = 0.3
)

// wide is where things are kept that touch too many squares: no square, and with
// what comes near every box.
var wide = [2]int{math.MaxInt, math.MaxInt}

// squares calls yield with every square of the grid that a box touches.
func squares(box Bounds, yield func(square [2]int)) {
	lo, hi := squareOf(box.Min, -CrowdApart), squareOf(box.Max, CrowdApart)
	for i := lo[0]; i <= hi[0]; i++ {
		for j := lo[1]; j <= hi[1]; j++ {
			yield([2]int{i, j})
		}
	}
}

// squareOf returns the square in which a place lies, moved by so many mm in x
// and in y.
func squareOf(p geom.Point, by float64) [2]int {
	index := func(x float64) int { return int(math.Floor((x + by) / crowdSquare)) }
	return [2]int{index(p.X), index(p.Y)}
}

func (c Crowd) add(t taken) {
	kept(t.box, func(q [2]int) { c[q] = append(c[q], t) })
}

// kept calls yield with every square by which a box is kept.
func kept(box Bounds, yield func(square [2]int)) {
	lo, hi := squareOf(box.Min, -CrowdApart), squareOf(box.Max, CrowdApart)
	if (hi[0]-lo[0]+1)*(hi[1]-lo[1]+1) > crowdMost {
		yield(wide)
		return
	}
	squares(box, yield)
}

// AddBox takes the place of a box, mm.
func (c Crowd) AddBox(box Bounds) { c.add(taken{box: box}) }

// RemoveBox gives up the place that [Crowd.AddBox] took, every one that is equal.
func (c Crowd) RemoveBox(box Bounds) {
	kept(box, func(q [2]int) {
		c[q] = slices.DeleteFunc(c[q], func(t taken) bool { return t == taken{box: box} })
	})
}

// AddHole takes the place of a hole, mm; nothing may be written into it.
func (c Crowd) AddHole(at geom.Point, radius float64) {
	r := geom.Point{X: radius, Y: radius}
	c.add(taken{Bounds{Min: at.Sub(r), Max: at.Add(r)}, radius})
}

// Room reports whether a box keeps clear of all that is taken.
func (c Crowd) Room(box Bounds) bool {
	free := true
	look := func(q [2]int) {
		for _, t := range c[q] {
			free = free && t.clear(box)
		}
	}
	look(wide)
	squares(box, look)
	return free
}

// clear reports whether a box keeps apart from what is taken.
func (t taken) clear(box Bounds) bool {
	if t.radius > 0 {
		at := t.box.Min.Add(t.box.Max).Scale(0.5)
		nearest := geom.Point{X: clamp(at.X, box.Min.X, box.Max.X), Y: clamp(at.Y, box.Min.Y, box.Max.Y)}
		return at.Distance(nearest) >= t.radius+CrowdApart
	}
	return box.Min.X >= t.box.Max.X+CrowdApart || t.box.Min.X >= box.Max.X+CrowdApart ||
		box.Min.Y >= t.box.Max.Y+CrowdApart || t.box.Min.Y >= box.Max.Y+CrowdApart
}

func clamp(x, lo, hi float64) float64 { return max(lo, min(x, hi)) }
