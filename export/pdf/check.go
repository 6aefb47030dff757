package pdf

import (
	"fmt"
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// check returns the first thing on a page that a PDF cannot hold.
func check(p drawing.Page) error {
	if !(p.Width > 0 && p.Height > 0) || !finite(p.Width, p.Height) {
		return fmt.Errorf("paper of %v by %v mm: both must be above 0", p.Width, p.Height)
	}
	for i, e := range p.Entities {
		if !drawable(e.Shape) {
			return fmt.Errorf("shape %d on layer %s: %+v holds what is no number, or no size above 0", i, e.Layer, e.Shape)
		}
	}
	return nil
}

// drawable reports whether every number of a shape is finite and every size
// above 0.
func drawable(s drawing.Shape) bool {
	switch s := s.(type) {
	case drawing.Line:
		return points(s.A, s.B)
	case drawing.Circle:
		return points(s.Centre) && above(s.Radius)
	case drawing.Arc:
		return points(s.Centre) && above(s.Radius) && finite(s.Start) && above(s.Sweep) && s.Sweep < 360
	case drawing.Polygon:
		return len(s.Points) > 2 && points(s.Points...)
	case drawing.Text:
		return points(s.At) && above(s.Size) && finite(s.Angle)
	}
	return false
}

func above(x float64) bool { return x > 0 && finite(x) }

func points(all ...geom.Point) bool {
	for _, p := range all {
		if !finite(p.X, p.Y) {
			return false
		}
	}
	return true
}

func finite(all ...float64) bool {
	for _, x := range all {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}
