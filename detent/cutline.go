package detent

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/cutline"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// CutLine is where the tool's line crosses the fence as the table turns, and
// what the maker's marks say about it. Lengths are mm, in the frame of
// [cutline].
type CutLine struct {
	cutline.Line
	Body      cutline.Body
	Crossings []Crossing // one for each different angle, ascending
	Travel    cutline.Travel

	BestFence  Best // where the fence lies best with the tool as it is
	BestOffset Best // where the tool lies best with the fence as it is
	Answer     cutline.Sensitivity

	KeepsLeft, KeepsRight float64 // how far each edge of the cut wanders

	SlotLeft, SlotRight float64 // the opening that the tool sweeps in the fence
	HasSlot             bool

	Marks *MarkFit // nil: too few marks
	Next  *geom.Angle
}

// Crossing is one stop's.
type Crossing struct {
	Angle geom.Angle
	Lean  geom.Angle
	X     float64
	Meets bool    // else the lean is too steep and X means nothing
	Past  float64 // how far the tool cuts across the fence's face, where its reach is given
}

// Best is where something lies best, and how far the crossing wanders then.
type Best struct {
	At, Wander float64
	Known      bool // else any place serves
}

// MarkFit is where the marks say that tool and fence really are.
type MarkFit struct {
	cutline.Found
	Before, After float64 // how far the crossing wanders as found; and with the fence at its best for the tool as found
	Best          Best    // that best
	ToolSlot      float64 // length of a slotted hole that lets the tool be moved onto the pivot
	FenceSlot     float64 // the same for the fence, onto its best
}

// CutLine returns what follows from the plan's tool and fence; false where they
// are not given.
func (r Report) CutLine() (CutLine, bool) {
	t := r.Plate.Plan.Tool
	if t == nil {
		return CutLine{}, false
	}
	c := CutLine{Line: plate.ToolLine(*t), Body: plate.FenceBody(*t)}
	for _, a := range StopAngles(r.Plate) {
		x := Crossing{Angle: a, Lean: plate.Lean(r.Plate.Plan, a)}
		x.X, x.Meets = c.Crossing(x.Lean)
		x.Past = c.Past(t.Reach, x.Lean)
		c.Crossings = append(c.Crossings, x)
	}
	leans := c.Leans()
	c.Travel = c.Line.Travel(leans)
	c.BestFence = bestFence(c.Line, leans)
	if at, ok := c.Line.BestOffset(leans); ok {
		c.BestOffset = Best{at, cutline.Line{Offset: at, Fence: c.Fence}.Travel(leans).Wander(), true}
	}
	c.Answer = c.Sensitivity(leans)
	c.KeepsLeft, c.KeepsRight = c.Sides(t.Kerf, leans)
	c.SlotLeft, c.SlotRight, c.HasSlot = c.Slot(t.Kerf, t.FenceThickness, leans)
	r.findMarks(&c, leans)
	return c, true
}

// Leans returns the lean at every crossing.
func (c CutLine) Leans() []geom.Angle {
	out := make([]geom.Angle, len(c.Crossings))
	for i, x := range c.Crossings {
		out[i] = x.Lean
	}
	return out
}

func bestFence(l cutline.Line, leans []geom.Angle) Best {
	at, ok := l.BestFence(leans)
	if !ok {
		return Best{}
	}
	return Best{at, cutline.Line{Offset: l.Offset, Fence: at}.Travel(leans).Wander(), true}
}

// findMarks fits the plan's marks, and says which stop to mark next where they
// are too few or too close together.
func (r Report) findMarks(c *CutLine, leans []geom.Angle) {
	t := r.Plate.Plan.Tool
	marks := make([]cutline.Mark, len(t.Marks))
	for i, m := range t.Marks {
		marks[i] = cutline.Mark{Lean: plate.Lean(r.Plate.Plan, geom.Angle(m.Angle)), X: m.X}
	}
	found, ok := cutline.Find(marks)
	if !ok || found.Weak() {
		if i, ok := cutline.MarkNext(marks, leans); ok {
			c.Next = &c.Crossings[i].Angle
		}
	}
	if !ok {
		return
	}
	f := &MarkFit{Found: found, Before: found.Travel(leans).Wander(), Best: bestFence(found.Line, leans)}
	f.After = f.Best.Wander
	if !f.Best.Known {
		f.Best.At, f.After = found.Fence, f.Before
	}
	f.ToolSlot = cutline.Adjust(t.FenceScrew, found.Offset, found.OffsetStd)
	f.FenceSlot = cutline.Adjust(t.FenceScrew, f.Best.At-found.Fence, found.FenceStd)
	c.Marks = f
}

// StopAngles returns the plate's stops, each angle once, ascending.
func StopAngles(pl *plate.Plate) []geom.Angle {
	out := make([]geom.Angle, len(pl.Stops))
	for i, s := range pl.Stops {
		out[i] = s.Angle
	}
	slices.SortFunc(out, func(a, b geom.Angle) int { return cmp.Compare(a, b) })
	return slices.Compact(out)
}

// KeepsItsStop returns the side of the cut whose edge wanders less, so that a
// stop block on the fence there holds lengths best. It is 0 where they are
// alike, else -1 for the left and 1 for the right.
func (c CutLine) KeepsItsStop() int {
	const alike = 1e-6 // mm: rounding
	switch d := c.KeepsLeft - c.KeepsRight; {
	case math.Abs(d) <= alike:
		return 0
	case d < 0:
		return -1
	}
	return 1
}
