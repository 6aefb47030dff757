package drawing

import (
	"math"

	"stopwright/detent/geom"
)

// Sound reports whether a shape can be drawn at all: every number of it is
// finite, every size above 0, an arc turns by less than 360 degrees and a
// polygon has three corners. No shape is not sound.
func Sound(s Shape) bool {
	switch s := s.(type) {
	case Line:
		return finitePoints(s.A, s.B)
	case Circle:
		return finitePoints(s.Centre) && above(s.Radius)
	case Arc:
		return finitePoints(s.Centre) && above(s.Radius) && finite(s.Start) && above(s.Sweep) && s.Sweep < 360
	case Polygon:
		return len(s.Points) > 2 && finitePoints(s.Points...)
	case Text:
		return finitePoints(s.At) && above(s.Size) && finite(s.Angle)
	}
	return false
}

func above(x float64) bool { return x > 0 && finite(x) }

func finitePoints(all ...geom.Point) bool {
	for _, p := range all {
		if !finite(p.X) || !finite(p.Y) {
			return false
		}
	}
	return true
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
