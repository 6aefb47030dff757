package cutline

import (
	"math"

	"stopwright/detent/geom"
)

// Steepest is the lean beyond which tool and fence are so near to parallel that
// their crossing means nothing.
const Steepest geom.Angle = 85

// Line is where the tool's line and the fence's face lie.
type Line struct {
	Offset float64 // of the tool's line from the pivot, + right, mm
	Fence  float64 // of the fence's face from the pivot, + away from the operator, mm
}

// Crossing returns where along the fence (mm, + right of the pivot) the tool's
// line meets its face: (offset + fence·sin lean)/cos lean. It is false beyond
// [Steepest].
func (l Line) Crossing(lean geom.Angle) (float64, bool) {
	if !Crosses(lean) {
		return 0, false
	}
	s, c := lean.SinCos()
	return (l.Offset+l.Fence*s)/c + 0, true
}

// Crosses reports whether at a lean tool and fence have a crossing worth
// reckoning with.
func Crosses(lean geom.Angle) bool { return lean.Abs() <= Steepest }

// Travel is how far the crossing wanders over a list of leans.
type Travel struct {
	Least, Most     float64 // the crossings farthest left and right, mm
	AtLeast, AtMost int     // into the leans
	Leans           int     // that have a crossing
}

// Wander returns how far apart the outermost crossings are, mm.
func (t Travel) Wander() float64 { return t.Most - t.Least }

// Travel returns how far the crossing wanders. Leans without a crossing do not
// count; where none has one, nothing wanders and Leans is 0.
func (l Line) Travel(leans []geom.Angle) Travel {
	var t Travel
	for i, a := range leans {
		x, ok := l.Crossing(a)
		if !ok {
			continue
		}
		if t.Leans == 0 || x < t.Least {
			t.Least, t.AtLeast = x, i
		}
		if t.Leans == 0 || x > t.Most {
			t.Most, t.AtMost = x, i
		}
		t.Leans++
	}
	return t
}

// law returns what an offset of 1 mm and a fence distance of 1 mm each add to
// the crossing.
func law(lean geom.Angle) (offset, fence float64) {
	s, c := lean.SinCos()
	return 1 / c, s / c
}

// Past returns how far (mm) a tool that cuts to reach mm beyond the pivot, along
// its own line, cuts across the fence's face: its far end's distance behind the
// face, negative where it stops short.
func (l Line) Past(reach float64, lean geom.Angle) float64 {
	s, c := lean.SinCos()
	return reach*c - l.Offset*s - l.Fence
}

// Slot returns the opening (mm, left and right of the pivot) that a tool cuts
// into a fence of a thickness behind its face, over the leans: where its two
// edges, half a kerf to either side of its line, enter and leave. It is false
// where no lean has a crossing.
func (l Line) Slot(kerf, thickness float64, leans []geom.Angle) (left, right float64, ok bool) {
	left, right = math.Inf(1), math.Inf(-1)
	for _, side := range [2]float64{-kerf / 2, kerf / 2} {
		for _, depth := range [2]float64{0, thickness} {
			t := Line{l.Offset + side, l.Fence + depth}.Travel(leans)
			if t.Leans == 0 {
				return 0, 0, false
			}
			left, right = math.Min(left, t.Least), math.Max(right, t.Most)
		}
	}
	return left, right, true
}

// Side is one side of a cut.
type Side int

// The sides, seen by the operator.
const (
	Left Side = iota
	Right
)

// Sides returns how far (mm) the cut's left and right edges wander along the
// fence. The side that wanders less keeps its length stop better: a stop block
// clamped there need not be set anew at every angle.
func (l Line) Sides(kerf float64, leans []geom.Angle) (left, right float64) {
	edge := func(by float64) float64 { return Line{l.Offset + by, l.Fence}.Travel(leans).Wander() }
	return edge(-kerf / 2), edge(kerf / 2)
}
