package tile

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// overlap is how far a sheet lies over its neighbour, mm: room for the crosses,
// and for a hole that would else be cut in two.
const overlap = 10.0

// spare is left between the drawing and the edge of the outermost sheets, mm.
const spare = 2.0

// clearance is how far the pivot, which is measured from, stays from a join if
// it can, mm.
const clearance = 15.0

// mostSheets is how many sheets of paper one drawing is laid out on at most:
// beyond any that a maker would join.
const mostSheets = 400

// grid is how a drawing is shared out: cols by rows windows, each of the size
// that one sheet shows.
type grid struct {
	cols, rows int
	size       geom.Point // of a window
	lo         geom.Point // lower left corner of the lower left window, in the drawing
}

// newGrid shares out b over windows of a size.
func newGrid(b drawing.Bounds, size geom.Point) grid {
	g := grid{size: size}
	g.cols, g.lo.X = share(b.Min.X, b.Max.X, size.X)
	g.rows, g.lo.Y = share(b.Min.Y, b.Max.Y, size.Y)
	return g
}

// share returns how many windows cover a stretch, and where the first begins:
// the stretch in their middle, but for a shift that takes the joins away from 0.
func share(from, to, window float64) (n int, lo float64) {
	length := to - from + 2*spare
	step := window - overlap
	n = max(1, int(math.Ceil((length-overlap)/step-1e-9)))
	covered := float64(n)*step + overlap
	lo = (from+to)/2 - covered/2
	if n > 1 {
		lo += shift(lo, step, (covered-length)/2)
	}
	return n, lo
}

// shift returns how to move the windows, by no more than room either way, so
// that no join comes near 0.
func shift(lo, step, room float64) float64 {
	join := math.Remainder(lo+overlap/2, step) // the nearest to 0, as if they went on for ever
	switch {
	case math.Abs(join) >= clearance:
		return 0
	case join >= 0:
		return min(clearance-join, room)
	}
	return -min(clearance+join, room)
}

// sheets returns how many windows there are.
func (g grid) sheets() int { return g.cols * g.rows }

// number returns the number of a window, counted as one reads from the upper
// left, from 1; 0 beyond the edge.
func (g grid) number(col, row int) int {
	if col < 0 || row < 0 || col >= g.cols || row >= g.rows {
		return 0
	}
	return (g.rows-1-row)*g.cols + col + 1
}

// at returns the column and row, from the lower left, of the window of a number.
func (g grid) at(number int) (col, row int) {
	return (number - 1) % g.cols, g.rows - 1 - (number-1)/g.cols
}

// corner returns the lower left corner of a window, in the drawing.
func (g grid) corner(col, row int) geom.Point {
	return g.lo.Add(geom.Point{X: float64(col) * (g.size.X - overlap), Y: float64(row) * (g.size.Y - overlap)})
}
