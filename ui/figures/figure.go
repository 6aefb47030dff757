package figures

import (
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

// Figure is a drawing that explains a size.
type Figure struct {
	Drawing drawing.Drawing
	Bounds  drawing.Bounds // what must be seen, the same for every size of one kind of figure
}

// Of returns the figure that explains a value of the plan, named by its path
// with empty brackets ("seat.depth", "catches[].radius"), with figure lettered
// where the size is measured. It reports false where words are enough.
func Of(p plan.Plan, path, figure string) (Figure, bool) {
	d := &drafter{value: figure, below: p.Arrangement.CatchIn == plan.PartBase}
	switch {
	case home[path] != nil:
		drawHome(d, p.Seat, path)
		home[path](d)
	case alone[path] != nil:
		drawAlone(d, path)
		alone[path](d)
	case clearance[path] != nil:
		d.below = false // seen from above, not cut through
		drawClear(d)
		clearance[path](d)
	default:
		return Figure{}, false
	}
	return Figure{d.Drawing, d.bounds}, true
}
