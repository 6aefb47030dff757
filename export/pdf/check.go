package pdf

import (
	"fmt"
	"math"

	"stopwright/export/drawing"
)

// check returns the first thing on a page that a PDF cannot hold.
func check(p drawing.Page) error {
	for _, side := range [2]float64{p.Width, p.Height} {
		if !(side > 0) || math.IsInf(side, 0) {
			return fmt.Errorf("paper of %v by %v mm: both must be above 0", p.Width, p.Height)
		}
	}
	if s := p.Stretch; !s.None() && !(s.X > 0 && s.Y > 0 && !math.IsInf(s.X+s.Y, 0)) {
		return fmt.Errorf("stretched by %v and %v: both must be above 0", s.X, s.Y)
	}
	for i, e := range p.Entities {
		if !drawing.Sound(e.Shape) {
			return fmt.Errorf("shape %d on layer %s: %+v holds what is no number, or no size above 0", i, e.Layer, e.Shape)
		}
	}
	return nil
}
